namespace Gatewright.Journal.Rounds;

/// <summary>Whether a value looks like a slip of the gauge or the finger. It is recorded all the same, and asked about.</summary>
public static class Slip
{
    /// <summary>More than this many degrees either way no gate in use reads: 15 (this project's judgement).</summary>
    public const decimal Most = 15;

    /// <summary>Further than this many degrees from the last reading of the same thing: 4 (this project's judgement).</summary>
    public const decimal MostFromLast = 4;

    /// <summary>A second reading no further than this many degrees from the first says the same: 1, two steps of the pad (this project's judgement).</summary>
    public const decimal MostBetweenSame = 1;

    /// <summary>Whether it may be one.</summary>
    /// <param name="value">What the gauge showed, degrees.</param>
    /// <param name="last">What it showed there last, degrees; null for never.</param>
    /// <param name="expected">What work on the gate was to make of it since then, degrees; null where none was done.</param>
    public static bool May(decimal value, decimal? last, decimal? expected = null) =>
        Math.Abs(value) > Most || ((last ?? expected) is not null && IsFar(value, last) && IsFar(value, expected));

    /// <summary>Whether a value that was asked about is none, since it was read once more and found so.</summary>
    /// <param name="asked">What was asked about, degrees.</param>
    /// <param name="again">What the gauge showed then, degrees.</param>
    public static bool IsFoundAgain(decimal asked, decimal again) => Math.Abs(again - asked) <= MostBetweenSame;

    private static bool IsFar(decimal value, decimal? from) => from is not { } known || Math.Abs(value - known) > MostFromLast;
}
