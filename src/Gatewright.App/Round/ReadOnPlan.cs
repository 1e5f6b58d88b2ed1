using Gatewright.App.Frame;
using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Drawings.Plan;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rounds;
using Gatewright.Words;

namespace Gatewright.App.Round;

/// <summary>What the boat's plan shows while it is read: at each gate what was read there of what is read now.</summary>
internal sealed class ReadOnPlan(Texts<RoundTexts> texts, Wording say, ReadingWords words)
{
    /// <summary>The gates, from the bow.</summary>
    /// <param name="desk">The boat being read.</param>
    /// <param name="now">What is read now; null where what came of it is told: then each gate shows the face that was read last, wherever that was.</param>
    /// <param name="judged">The verdict on a gate; null for none yet.</param>
    public List<PlanGate> Of(ReadingDesk desk, ReadingStep? now, Func<GatePlace, GateVerdict?> judged) =>
        [.. desk.Gates.Select(gate => Of(desk, now, gate, judged(gate)))];

    private PlanGate Of(ReadingDesk desk, ReadingStep? now, GatePlace gate, GateVerdict? judged)
    {
        string name = words.Short(gate);
        ReadingTaken? taken = desk.Walk.Boat.Readings.Select(r => (ReadingTaken)r.Fact)
            .LastOrDefault(t => t.Seat == gate.Seat && t.Side == gate.Side && IsShown(t, now));
        if (taken is null)
        {
            return new(gate, $"{name}: {texts["NotRead"]}");
        }

        string value = Figures.Shown(taken.Value) + "°";
        string? sure = taken.Station is { } station && judged?.At(station) is { Read: true } pitch
            ? "± " + say.Figures.Degrees(pitch.Pitch.U.Degrees)
            : null;
        string verdict = judged is null ? string.Empty : ", " + say.Names.Verdict(judged.Verdict);
        return new(gate, $"{name}: {value}{verdict}", judged?.Verdict, value, sure, IsRead: true);
    }

    /// <summary>Whether a reading is of what is read now, so that its number belongs on the plan.</summary>
    private static bool IsShown(ReadingTaken taken, ReadingStep? now) => now is null
        ? taken.Item == ReadItem.Gate
        : taken.Item == now.Item && (taken.Station ?? Station.Abeam) == (now.Station ?? Station.Abeam);
}
