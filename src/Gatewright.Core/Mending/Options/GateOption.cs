using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Mending.Options;

/// <summary>One thing that can be done about a gate, or nothing, and what the gate is then.</summary>
/// <remarks>
/// Left as it is, a gate is what was read on it. Mended, it is what is believed of it over all stories, changed by the
/// work: the belief, not the likeliest story, since the work has to be right whichever story is true.
/// </remarks>
public sealed class GateOption
{
    private readonly IReadOnlyList<MendingStep> _steps;

    internal GateOption(
        GatePlace gate, IReadOnlyList<MendingStep> steps, IReadOnlyList<PredictedPitch> pitches, OptionVerdict verdict)
    {
        _steps = steps;
        Gate = gate;
        Pitches = pitches;
        Verdict = verdict;
        Parts = [.. steps.SelectMany(s => s.Parts).Order()];
        Minutes = steps.Sum(s => s.Minutes);
    }

    /// <summary>The gate.</summary>
    public GatePlace Gate { get; }

    /// <summary>Whether nothing is done.</summary>
    public bool IsLeft => _steps.Count == 0;

    /// <summary>What is done, in the order of the work; nothing for a gate that is left.</summary>
    public IReadOnlyList<RemedyKind> Kinds => [.. _steps.Select(s => s.Kind)];

    /// <summary>What it takes from stores, by kind and size.</summary>
    public IReadOnlyList<Part> Parts { get; }

    /// <summary>How long it takes, roughly.</summary>
    public int Minutes { get; }

    /// <summary>The gate at catch, abeam and finish.</summary>
    public IReadOnlyList<PredictedPitch> Pitches { get; }

    /// <summary>How the gate then stands against its standard.</summary>
    public OptionVerdict Verdict { get; }

    /// <summary>What to do, with amounts and directions, in the order of the work; empty for a gate that is left.</summary>
    public IReadOnlyList<Work> Steps => [.. _steps.Select(s => s.Work)];

    /// <summary>What to mind while doing it.</summary>
    public IReadOnlyList<Caution> Cautions => [.. _steps.SelectMany(s => Mending.Cautions.For(s.Kind)).Distinct()];

    /// <summary>What the gate is to become; null for one that is left.</summary>
    public GateBelief? After { get; internal init; }

    /// <summary>
    /// What is probably wrong with the gate, where the work makes up for it elsewhere and does not set it right; else null.
    /// </summary>
    public Cause? MakesUpFor { get; internal init; }

    /// <summary>The pitch at a station in whole thousandths of a degree where range asks about it, else null.</summary>
    /// <remarks>Whole, so that every comparison of a range is exact and the same wherever it is made.</remarks>
    public int? Thousandths(Station station) =>
        Pitches[(int)station] is { IsJudged: true } pitch ? InThousandths(pitch.Pitch) : null;

    /// <summary>What the gauge should show afterwards; empty for a gate that is left.</summary>
    public IReadOnlyList<ExpectedReading> Expected(BoatCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return After is { } after ? ExpectedReadings.Of(after, check) : [];
    }

    private static int InThousandths(Estimate pitch) => (int)Math.Round(1000 * pitch.Value.Degrees);
}
