using Gatewright.Journal.Changing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Jobs;

/// <summary>What open work still waits to take from stores: of jobs what they have not taken, of changes what steps that are not done take.</summary>
internal static class PromisedParts
{
    /// <summary>The parts, job by job.</summary>
    public static IEnumerable<(string Job, string Part, decimal Size, int Count)> Of(Club club)
    {
        ILookup<string, StockChanged> taken = club.About(Subject.Stores).Select(r => r.Fact).OfType<StockChanged>()
            .Where(s => s.Job is not null).ToLookup(s => s.Job!);
        foreach (JobView job in ClubJobs.Of(club).Open)
        {
            foreach (IGrouping<(string Part, decimal Size), PartUsed> part in job.Plan.Parts.GroupBy(p => (p.Part, p.Size)))
            {
                int gone = taken[job.Plan.Job].Where(s => (s.Part, s.Size) == part.Key).Sum(s => -s.Change);
                if (part.Sum(p => p.Count) - gone is > 0 and int left)
                {
                    yield return (job.Plan.Job, part.Key.Part, part.Key.Size, left);
                }
            }
        }

        foreach (RigChange change in RigChanges.Of(club).Where(c => !c.IsEnded))
        {
            foreach (PartUsed part in change.PartsWanted)
            {
                yield return (change.Plan.Job, part.Part, part.Size, part.Count);
            }
        }
    }
}
