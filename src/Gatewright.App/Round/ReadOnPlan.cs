using Gatewright.App.Frame;
using Gatewright.Core;
using Gatewright.Core.Geometry;
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
    private readonly Dictionary<GatePlace, string> _names = [];

    /// <summary>The gates, from the bow.</summary>
    /// <param name="gates">All of the boat.</param>
    /// <param name="boat">What the round has of it.</param>
    /// <param name="now">What is read now; null where what came of it is told: then each gate shows the face that was read last, wherever that was.</param>
    /// <param name="judged">The verdict on a gate; null for none yet.</param>
    public List<PlanGate> Of(IReadOnlyList<GatePlace> gates, BoatInRound boat, ReadingStep? now, Func<GatePlace, GateVerdict?> judged) =>
        [.. gates.Select(gate => Of(boat, now, gate, judged(gate)))];

    /// <summary>Where in the stroke the oar lies at what is read now; null where that is no face.</summary>
    public static OarAngle? OarAt(BoatClass boatClass, ReadingStep? now) => now is { Station: { } station }
        ? MeasuringSettings.Default.Angles(boatClass.Rowing).At(station)
        : null;

    private PlanGate Of(BoatInRound boat, ReadingStep? now, GatePlace gate, GateVerdict? judged)
    {
        if (!_names.TryGetValue(gate, out string? name))
        {
            _names.Add(gate, name = words.Short(gate));
        }

        ReadingTaken? taken = boat.Readings.Select(r => (ReadingTaken)r.Fact)
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
