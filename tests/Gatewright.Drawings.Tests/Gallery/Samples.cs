using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Numerics;
using Gatewright.Drawings.Plan;

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

    public static CovarianceMatrix Covariance(double first, double second, double correlation) =>
        new(2, [first * first, correlation * first * second, correlation * first * second, second * second]);

    public static GatePlace Lit(BoatClass boatClass)
    {
        IReadOnlyList<GatePlace> places = UsualSides.Of(boatClass);
        return places[Math.Min(5, places.Count - 1)];
    }
}
