using Gatewright.Core.Diagnosing;

namespace Gatewright.Journal.Learning;

/// <summary>A club's table of chances: what it started from, and the finished jobs that taught it.</summary>
/// <remarks>
/// The chances in use are worked out from both whenever they are asked for. So a job told twice counts once, a job taken
/// off the record is unlearnt, and nothing that was known before is overwritten.
/// </remarks>
public sealed record ClubChances
{
    /// <summary>The defaults, and no job.</summary>
    public static ClubChances Default { get; } = new();

    /// <summary>The chances before any job, and how much they weigh.</summary>
    public PriorChances Before { get; init; } = PriorChances.Default;

    /// <summary>How likely each report is. Jobs do not teach these: who reports what, and of how many, is not told in them.</summary>
    public ReportLikelihoods Reports { get; init; } = ReportLikelihoods.Default;

    /// <summary>The jobs that taught it.</summary>
    public JobRecord Jobs { get; init; } = JobRecord.Empty;

    /// <summary>The chances in use.</summary>
    public PriorChances Now => Before.After(Jobs.Found);

    /// <summary>Settings with these chances and likelihoods in them.</summary>
    public DiagnosingSettings In(DiagnosingSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return settings with { Chances = Now, Reports = Reports };
    }
}
