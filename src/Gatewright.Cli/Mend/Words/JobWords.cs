using Gatewright.Cli.Drawing;
using Gatewright.Core.Judging;
using Gatewright.Planning;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Mend.Words;

/// <summary>A job in words.</summary>
internal static class JobWords
{
    /// <summary>"insert 4°, shim 0.5 mm", or null when it takes nothing from the shelf.</summary>
    public static string? Takes(MendingJob job) =>
        English.Remedies.Parts(job.Option.Parts);

    /// <summary>"catch 3.0 to 5.0, abeam 3.1 to 5.0, finish 3.1 to 5.0": where 95 of 100 readings of the mended gate fall.</summary>
    public static string Expect(MendingJob job) => English.Remedies.Expected(job.Expected)!;

    /// <summary>What has to be known about it beside what is done, a sentence each.</summary>
    public static IEnumerable<string> Notes(MendingJob job, Standard standard)
    {
        if (job.IsProbablySound)
        {
            yield return "Probably nothing is wrong with this gate: read it again before you take a spanner to it.";
        }

        if (job.IsForRange)
        {
            yield return $"Good by itself: it is moved so that the boat's gates stand within {Figures.Short(standard.LargestRange)}° of one another.";
        }

        if (job.Option.MakesUpFor is { } cause)
        {
            yield return $"Most likely it is {English.Causes.SomeHere(new(cause))}: this makes up for it in what gauge and blade show, and does not set it right.";
        }
    }

    /// <summary>The cautions of some jobs, each once, without what is said under every plan.</summary>
    public static string Mind(IEnumerable<MendingJob> jobs) =>
        English.Cautions.Mind(jobs.SelectMany(job => job.Option.Cautions));
}
