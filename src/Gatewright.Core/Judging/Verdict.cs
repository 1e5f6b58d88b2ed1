namespace Gatewright.Core.Judging;

/// <summary>What is to be done about a gate or a boat. The worst stands last, so the greater is the worse.</summary>
/// <remarks>None of them says "safe": each says what was read, by which limits.</remarks>
public enum Verdict
{
    /// <summary>As the standard asks, as far as it was read.</summary>
    Good,

    /// <summary>This reading cannot tell: read again, or better.</summary>
    Unsure,

    /// <summary>Out of limits, not dangerous: mend when convenient.</summary>
    Adjust,

    /// <summary>Pitch so low that the blade may dive: not out on the water until mended and read again.</summary>
    Stop,
}

/// <summary>Verdicts and their words.</summary>
public static class Verdicts
{
    /// <summary>Best first.</summary>
    public static IReadOnlyList<Verdict> All { get; } = [Verdict.Good, Verdict.Unsure, Verdict.Adjust, Verdict.Stop];

    /// <summary>"good", "unsure", "adjust" or "stop".</summary>
    public static string Word(this Verdict verdict) => verdict switch
    {
        Verdict.Good => "good",
        Verdict.Unsure => "unsure",
        Verdict.Adjust => "adjust",
        _ => "stop",
    };

    /// <summary>The worse of two.</summary>
    public static Verdict Worse(Verdict first, Verdict second) => first > second ? first : second;
}
