using Gatewright.Core.Judging;

namespace Gatewright.Cli.Drawing;

/// <summary>A verdict's mark, word and ink. The shapes differ, so that colour is never needed to tell them apart.</summary>
/// <remarks>
/// Terminals' fonts seldom have an octagon, so the sign for stop is the word in a box; where one cell is all there
/// is, a filled square.
/// </remarks>
internal static class VerdictMark
{
    /// <summary>Mark and word: "● good", "[STOP]".</summary>
    public static string Sign(this Verdict verdict) => verdict == Verdict.Stop ? "[STOP]" : $"{verdict.Mark()} {verdict.Word()}";

    /// <summary>The mark alone, one cell; a word stands near wherever it is used.</summary>
    public static char Mark(this Verdict verdict) => verdict switch
    {
        Verdict.Good => '●',
        Verdict.Unsure => '○',
        Verdict.Adjust => '◆',
        _ => '■',
    };

    public static Ink Ink(this Verdict verdict) => verdict switch
    {
        Verdict.Good => Drawing.Ink.Good,
        Verdict.Unsure => Drawing.Ink.Unsure,
        Verdict.Adjust => Drawing.Ink.Adjust,
        _ => Drawing.Ink.Stop,
    };
}
