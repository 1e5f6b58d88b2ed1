using FsCheck;
using FsCheck.Fluent;
using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;

namespace Gatewright.Core.Tests.Stroke;

/// <summary>Rigs and rowers as the tests need them.</summary>
internal static class Strokes
{
    /// <summary>M2-, medians of the 2017 survey.</summary>
    public static SeatRig Pair { get; } = SeatRig.FromCentimetres(Rowing.Sweep, 86, 116, 375.5, 15);

    /// <summary>M1x, medians of the 2017 survey.</summary>
    public static SeatRig Single { get; } = SeatRig.FromCentimetres(Rowing.Scull, 160, 88.5, 288.5, 15);

    public static MeasuredStroke Measured(SeatRig rig) =>
        MeasuredStroke.Of(MeasuredSeat.Typed(rig), Reach.Usual(rig.Rowing), OarPoints.Usual(rig.Rowing))!;

    public static Length Cm(double centimetres) => Length.FromCentimetres(centimetres);

    /// <summary>Rigs as clubs have them, and reaches about the usual.</summary>
    public static Arbitrary<(SeatRig Rig, Reach Reach)> Usual { get; } = Arb.From(
        from isScull in Gen.Elements(true, false)
        from numbers in Gen.ArrayOf(Gen.Choose(-1000, 1000), 6)
        select Of(isScull ? Rowing.Scull : Rowing.Sweep, Array.ConvertAll(numbers, n => n / 1000.0)));

    private static (SeatRig Rig, Reach Reach) Of(Rowing rowing, double[] by)
    {
        Reach reach = Reach.Usual(rowing);
        return (
            rowing == Rowing.Scull
                ? SeatRig.FromCentimetres(rowing, 159 + (3 * by[0]), 87.5 + (3 * by[1]), 288 + (5 * by[2]), 15 + (5 * by[3]))
                : SeatRig.FromCentimetres(rowing, 86 + (3 * by[0]), 115 + (3 * by[1]), 374 + (6 * by[2]), 15 + (5 * by[3])),
            reach with { AtCatch = reach.AtCatch + Cm(4 * by[4]), Arms = reach.Arms + Cm(8 * by[5]) });
    }
}
