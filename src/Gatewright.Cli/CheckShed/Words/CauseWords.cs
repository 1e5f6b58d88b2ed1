using Gatewright.Cli.Drawing;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Cli.CheckShed.Words;

/// <summary>What is probably wrong, in plain words with probabilities.</summary>
internal static class CauseWords
{
    /// <summary>Less probable causes are not told: a person acts on the first two or three.</summary>
    public const double WorthTelling = 0.05;

    /// <summary>
    /// A gate that reads well and probably is not: it is told of, though it has no reason against it.
    /// </summary>
    public const double ProbablyWrong = 0.5;

    /// <summary>The gates of which a cause is told: those that are not good, and those that probably are not.</summary>
    public static IEnumerable<GateDiagnosis> WorthTellingOf(BoatCheck check) =>
        check.Diagnosis.Gates.Where(gate => gate.Wrong >= ProbablyWrong
            || check.Verdict.Gates.Any(g => g.Gate == gate.Gate && g.Verdict != Verdict.Good));

    /// <summary>Whether what is told of a gate is that it is probably as it should be.</summary>
    public static bool IsProbablyRight(GateDiagnosis gate) => gate.Wrong < ProbablyWrong;

    /// <summary>The causes worth telling of a gate, most probable first, each in words.</summary>
    public static IEnumerable<(string Words, double Probability)> Of(GateDiagnosis gate) =>
        gate.Causes
            .Where((cause, rank) => rank == 0 || cause.Probability >= WorthTelling)
            .Select(cause => (Of(cause.Cause, gate), cause.Probability));

    /// <summary>"Probably 4.1° ± 0.4 is built into gate and insert, and the pin leans 2.9° ± 0.4 out and 0.2° ± 0.4 aft."</summary>
    public static string ProbablyIs(GateDiagnosis gate) =>
        $"Probably {Figures.Loose(gate.GatePitch)} is built into gate and insert, and the pin leans "
        + $"{Lean(gate.LeanOut, "out", "in")} and {Lean(gate.LeanAft, "aft", "forward")}.";

    private static string Of(Cause? cause, GateDiagnosis gate) => cause switch
    {
        Cause.GatePitch => "wrong or worn insert",
        Cause.PinAft => gate.LeanAft.Value.Degrees >= 0
            ? "pin leans aft (its top to the stern)"
            : "pin leans forward (its top to the bow)",
        Cause.PinOut => gate.LeanOut.Value.Degrees >= 0
            ? "pin leans out (its top away from the hull)"
            : "pin leans in (its top towards the hull)",
        Cause.Rigger => $"rigger knocked or mounted wrong{PinTop(gate)}",
        Cause.WrongSeat => "rigger on another's place",
        Cause.Sleeve => "sleeve slipped on its oar",
        null => "nothing wrong with this gate",
        _ => cause.Value.Code(),
    };

    /// <summary>Which way a rigger took the pin's top, as far as it is known: " (its pin's top away from the hull and to the bow)".</summary>
    private static string PinTop(GateDiagnosis gate)
    {
        List<string> ways = [];
        if (IsKnown(gate.LeanOut))
        {
            ways.Add(gate.LeanOut.Value.Degrees > 0 ? "away from the hull" : "towards the hull");
        }

        if (IsKnown(gate.LeanAft))
        {
            ways.Add(gate.LeanAft.Value.Degrees > 0 ? "to the stern" : "to the bow");
        }

        return ways.Count == 0 ? string.Empty : $" (its pin's top {string.Join(" and ", ways)})";
    }

    /// <summary>A lean of less than two u may be the other way.</summary>
    private static bool IsKnown(Estimate lean) => Math.Abs(lean.Value.Degrees) >= 2 * lean.U.Degrees;

    /// <summary>"2.9° ± 0.4 out".</summary>
    public static string Lean(Estimate lean, string positive, string negative) =>
        Math.Abs(lean.Value.Degrees) < Figures.ShownStep / 2 ? $"{Figures.Loose(lean)} {positive} or {negative}"
        : lean.Value.Degrees > 0 ? $"{Figures.Loose(lean)} {positive}"
        : $"{Figures.Loose(lean with { Value = -lean.Value })} {negative}";
}
