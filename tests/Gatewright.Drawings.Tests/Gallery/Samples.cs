using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Mending;
using Gatewright.Core.Numerics;
using Gatewright.Drawings.History;
using Gatewright.Drawings.Plan;
using Gatewright.Drawings.Stroke;
using Gatewright.Drawings.Teaching;

namespace Gatewright.Drawings.Tests.Gallery;

/// <summary>Invented readings, to have something to draw.</summary>
internal static class Samples
{
    private static readonly (Verdict? Verdict, string? Value)[] Kinds =
        [(Verdict.Good, "4.0°"), (Verdict.Good, "4.5°"), (Verdict.Adjust, "6.5°"), (Verdict.Unsure, "3.0°"), (Verdict.Stop, "−0.5°"), (null, null), (null, null)];

    public static DrawingLabels Labels { get; } = new()
    {
        Port = "port", Starboard = "starboard", Bow = "bow", Stern = "stern", Hull = "hull", Away = "away",
        Catch = "catch", Abeam = "abeam", Finish = "finish",
    };

    public static IReadOnlyList<PlanGate> Gates(BoatClass boatClass) =>
        [.. UsualSides.Of(boatClass).Select((place, i) =>
        {
            (Verdict? verdict, string? value) = Kinds[i % Kinds.Length];
            return new PlanGate(place, $"{place}, {verdict?.Word() ?? "not read"}, {value}", verdict, value, value is null ? null : "± 0.4", verdict is not null);
        })];

    public static StationAngles Sweep { get; } =
        new(OarAngle.FromDegrees(55), OarAngle.FromDegrees(0), OarAngle.FromDegrees(-35));

    public static IReadOnlyList<CurvePoint> Curve { get; } = StrokeCurve.Of(
        GateState.FromDegrees(4, 0.2, 2.4), new(3, [0.06, -0.03, 0, -0.03, 0.09, 0, 0, 0, 0.12]), Side.Port, Sweep);

    public static IReadOnlyList<CurvePoint> ReadPoints { get; } =
    [
        new(Sweep.Catch, Estimate.FromDegrees(6, 0.35), Verdict.Adjust),
        new(Sweep.Finish, Estimate.FromDegrees(2.8, 0.35), Verdict.Good),
    ];

    public static IReadOnlyList<(RemedyKind Kind, Side Side, GateState Change, string Amount)> Remedies { get; } =
    [
        (RemedyKind.PinFootShim, Side.Port, GateState.FromDegrees(0, 0, -2.9), "3.0 mm"),
        (RemedyKind.PinFootShim, Side.Port, GateState.FromDegrees(0, 0, 1.9), "2.0 mm"),
        (RemedyKind.PinFootShim, Side.Starboard, GateState.FromDegrees(0, 2.4, 0), "2.5 mm"),
        (RemedyKind.PlateWasher, Side.Starboard, GateState.FromDegrees(0, 0, 2), "2.0 mm"),
        (RemedyKind.PlateWasher, Side.Port, GateState.FromDegrees(0, 0, -2), "2.0 mm"),
        (RemedyKind.Backstay, Side.Port, GateState.FromDegrees(0, -1.5, 0), "4.0 mm"),
        (RemedyKind.ReplacePin, Side.Starboard, GateState.FromDegrees(0, 3, 0), "8 mm"),
        (RemedyKind.InsertSwap, Side.Port, GateState.FromDegrees(2, 0, 0), "2 → 4"),
        (RemedyKind.InsertSwap, Side.Starboard, GateState.FromDegrees(-2, 0, 0), "6 → 4"),
        (RemedyKind.TurnSleeve, Side.Port, default, "2.0 mm"),
        (RemedyKind.LevelAgain, Side.Port, default, ""),
        (RemedyKind.CheckGauge, Side.Port, default, ""),
        (RemedyKind.RefitRigger, Side.Port, default, ""),
        (RemedyKind.ExchangeRiggers, Side.Port, default, "3 ↔ 5"),
    ];

    public static IReadOnlyList<HistoryReading> History(int count, int days) =>
        [.. Enumerable.Range(0, count).Select(i =>
        {
            double value = 4.3 + (0.3 * Math.Sin(i * 1.7)) - (i % ((count + 1) / 2) * 2.4 / count);
            return new HistoryReading(new DateOnly(2026, 3, 1).AddDays(i * days), Estimate.FromDegrees(value, 0.3), value < 3 ? Verdict.Unsure : Verdict.Good);
        })];

    public static SceneText Scene { get; } = new(
        "The oar from above", "The gate, along the shaft", "The blade in the water", "From astern", "The gauge, boat upright", "The gauge, boat upside down");

    public static CovarianceMatrix Covariance(double first, double second, double correlation) =>
        new(2, [first * first, correlation * first * second, correlation * first * second, second * second]);

    public static GatePlace Lit(BoatClass boatClass)
    {
        IReadOnlyList<GatePlace> places = UsualSides.Of(boatClass);
        return places[Math.Min(5, places.Count - 1)];
    }
}
