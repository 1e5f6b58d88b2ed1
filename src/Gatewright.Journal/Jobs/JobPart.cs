using Gatewright.Core.Mending;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Jobs;

/// <summary>A part that a job takes, and how it stands with the shelf.</summary>
/// <param name="Used">The part and how many.</param>
/// <param name="Taken">The entries that took it from the shelf for this job.</param>
/// <param name="OnShelf">How many lie on the shelf now, what was taken already gone; 0 where the shelf's count has gone below nothing.</param>
/// <param name="Promised">How many of it other open jobs still wait for.</param>
public sealed record JobPart(PartUsed Used, IReadOnlyList<Recorded> Taken, int OnShelf, int Promised)
{
    /// <summary>The part as the core knows it.</summary>
    public Part Part => PartOf(Used);

    /// <summary>How many have been taken for the job.</summary>
    public int Count => -Taken.Sum(r => ((StockChanged)r.Fact).Change);

    /// <summary>How many are still to be taken.</summary>
    public int StillNeeded => Math.Max(0, Used.Count - Count);

    /// <summary>How many of these the shelf has not.</summary>
    public int ShortBy => Math.Max(0, StillNeeded - OnShelf);

    /// <summary>Whether the shelf has enough for this job, but not for the other open ones beside it.</summary>
    public bool IsContested => ShortBy == 0 && StillNeeded > 0 && StillNeeded + Promised > OnShelf;

    /// <summary>What is recorded when the parts still needed are taken; null when none are, or the shelf has too few.</summary>
    public StockChanged? Take(string job) =>
        StillNeeded == 0 || ShortBy > 0 ? null : new(Used.Part, Used.Size, -StillNeeded, job);

    /// <summary>The parts of a job.</summary>
    public static IReadOnlyList<JobPart> Of(Club club, JobView job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return Of(club, job.Plan.Parts, job.Plan.Job);
    }

    /// <summary>Parts that a job would take, were it planned.</summary>
    /// <param name="club">The club.</param>
    /// <param name="parts">The parts.</param>
    /// <param name="job">The job; null for one that is not planned yet.</param>
    public static IReadOnlyList<JobPart> Of(Club club, IReadOnlyList<PartUsed> parts, string? job = null)
    {
        ArgumentNullException.ThrowIfNull(club);
        ArgumentNullException.ThrowIfNull(parts);
        if (parts.Count == 0)
        {
            return [];
        }

        IReadOnlyDictionary<(string Part, decimal Size), int> shelf = StoresView.Of(club);
        ILookup<string, Recorded> taken = club.About(Subject.Stores)
            .Where(r => r.Fact is StockChanged { Job: not null })
            .ToLookup(r => ((StockChanged)r.Fact).Job!);
        List<(string Job, string Part, decimal Size, int Count)> others = [.. PromisedParts.Of(club).Where(p => p.Job != job)];
        return [.. parts.Select(part => new JobPart(
            part,
            job is null ? [] : [.. TakenOf(part, taken[job])],
            Math.Max(0, shelf.GetValueOrDefault((part.Part, part.Size))),
            others.Where(o => o.Part == part.Part && o.Size == part.Size).Sum(o => o.Count)))];
    }

    /// <summary>A part of a job as the core knows it.</summary>
    public static Part PartOf(PartUsed used)
    {
        ArgumentNullException.ThrowIfNull(used);
        return new(PartKinds.All.FirstOrDefault(kind => kind.Word() == used.Part), (double)used.Size);
    }

    private static IEnumerable<Recorded> TakenOf(PartUsed part, IEnumerable<Recorded> taken) =>
        taken.Where(r => r.Fact is StockChanged changed && changed.Part == part.Part && changed.Size == part.Size);
}
