using Gatewright.Core.Judging;
using Gatewright.Core.Rig;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Rigging;

/// <summary>How a boat's rig stands: what is on record of it and how it was judged.</summary>
/// <param name="View">What is on record.</param>
/// <param name="Verdict">How it was judged; null while nothing was measured, or its class is not known.</param>
public sealed record BoatRig(RigView View, RigVerdict? Verdict)
{
    /// <summary>Its verdict as a word: "good", "unsure", "adjust", or "not-measured".</summary>
    public string Word => Verdict?.Verdict.Word() ?? "not-measured";

    /// <summary>The day on which something of it was last measured.</summary>
    public DateOnly? LastMeasured => View.Taken.Select(t => t.Day).Concat(View.OfOars.Select(o => o.Day)).Cast<DateOnly?>().Max();

    /// <summary>The rig of a boat.</summary>
    public static BoatRig Of(Club club, string boat) => Of(club, new BoatView(club, boat));

    /// <summary>The rig of a boat that was looked at before.</summary>
    public static BoatRig Of(Club club, BoatView boat)
    {
        return Of(new RigView(club, boat));
    }

    /// <summary>The same for another crew than the one that rows it.</summary>
    public static BoatRig Of(Club club, BoatView boat, Crew crew) => Of(new RigView(club, boat, crew));

    private static BoatRig Of(RigView view)
    {
        return new(view, view.Targets is { } targets && view.Readings.Count > 0
            ? RigJudge.Of(RigFigures.Of(view.Readings), targets, DecisionRule.Default)
            : null);
    }
}
