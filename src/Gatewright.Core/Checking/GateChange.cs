namespace Gatewright.Core.Checking;

/// <summary>What was last done to a gate: what was read of it before no longer speaks of it.</summary>
/// <param name="Gate">Which.</param>
/// <param name="On">The day.</param>
/// <param name="By">What was done.</param>
public sealed record GateChange(GatePlace Gate, DateOnly On, GateChangedBy By);

/// <summary>What a gate was changed by.</summary>
public enum GateChangedBy
{
    /// <summary>It was knocked.</summary>
    Knock,

    /// <summary>Its rigger was off and on again.</summary>
    Refitting,

    /// <summary>It was mended, without a job here.</summary>
    Mending,

    /// <summary>A job on it was finished, or its re-check begun.</summary>
    FinishedJob,

    /// <summary>Steps of a job were done on it, and the job was given up.</summary>
    JobGivenUp,

    /// <summary>Steps of a job were done on it, and the job is open.</summary>
    JobUnderWay,
}

/// <summary>What changes are called where programs read them.</summary>
public static class GateChangedByWords
{
    /// <summary>Its word: "knock", "job-given-up".</summary>
    public static string Word(this GateChangedBy by) => by switch
    {
        GateChangedBy.Knock => "knock",
        GateChangedBy.Refitting => "refitting",
        GateChangedBy.Mending => "mending",
        GateChangedBy.FinishedJob => "finished-job",
        GateChangedBy.JobGivenUp => "job-given-up",
        _ => "job-under-way",
    };
}
