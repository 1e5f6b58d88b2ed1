using Gatewright.Cli.Drawing;
using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

namespace Gatewright.Cli.CheckShed.ForPeople;

/// <summary>A pitch as a figure: what was not read stands in brackets, so that it is never taken for a reading.</summary>
internal static class PitchFigure
{
    /// <summary>"4.0±0.4", "(3.6±0.7)".</summary>
    public static string Of(StationPitch pitch) =>
        pitch.Read ? Figures.Tight(pitch.Pitch) : $"({Figures.Tight(pitch.Pitch)})";

    /// <summary>The worst verdict that a gate's figure at a station gave.</summary>
    public static Verdict WorstAt(this GateVerdict gate, Station station) =>
        gate.Reasons
            .Where(reason => reason.Station == station && reason.Item == ReadItem.Gate)
            .Aggregate(Verdict.Good, (worst, reason) => Verdicts.Worse(worst, reason.Verdict));
}
