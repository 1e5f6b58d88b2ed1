using Gatewright.Core.Rig;

namespace Gatewright.Core.Stroke;

/// <summary>A measure that may be set anew: how far, and what work it is.</summary>
/// <param name="Measure">One of <see cref="SeatRig.Measures"/>.</param>
/// <param name="Least">The least it may be set to.</param>
/// <param name="Most">The most it may be set to.</param>
/// <param name="Minutes">What it takes at one seat.</param>
public sealed record AllowedStep(RigMeasure Measure, Length Least, Length Most, int Minutes)
{
    // Tenths of a centimetre are not exact in binary.
    private const double CloseEnough = 1e-4;

    /// <summary>
    /// What may be set at a seat, the least work first. The ranges are those of clubs' guides (scull span 154 to 162, inboard
    /// 83 to 92, length 281 to 302; sweep 83 to 89, 112 to 118, 366 to 385) and the work-through of the 2017 survey, 13.5 to
    /// 18, with room for clubs; the minutes are ours. A seat that stands outside already may stay.
    /// </summary>
    public static IReadOnlyList<AllowedStep> Usual(SeatRig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        bool isScull = rig.Rowing == Rowing.Scull;
        return
        [
            Of(rig, RigMeasure.WorkThrough, 5, 25, 2),
            isScull ? Of(rig, RigMeasure.Inboard, 83, 92, 6) : Of(rig, RigMeasure.Inboard, 112, 118, 3),
            isScull ? Of(rig, RigMeasure.OarLength, 281, 302, 10) : Of(rig, RigMeasure.OarLength, 366, 385, 5),
            isScull ? Of(rig, RigMeasure.Span, 154, 162, 20) : Of(rig, RigMeasure.Spread, 83, 89, 15),
        ];
    }

    /// <summary>The same step within other bounds, in centimetres. A seat that stands outside may stay.</summary>
    public AllowedStep Within(SeatRig rig, double least, double most)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return Of(rig, Measure, least, most, Minutes);
    }

    /// <summary>
    /// By how many centimetres a measure is set that is to come from one value to another, both within the bounds: to the nearest millimetre from where it is
    /// that lies within them.
    /// </summary>
    internal double ToMillimetre(double from, double to)
    {
        double by = Math.Round(to - from, 1);
        double within = from + by > Most.Centimetres + CloseEnough ? by - 0.1
            : from + by < Least.Centimetres - CloseEnough ? by + 0.1
            : by;
        return Math.Round(within, 1);
    }

    private static AllowedStep Of(SeatRig rig, RigMeasure measure, double least, double most, int minutes)
    {
        double now = rig.Get(measure).Centimetres;
        return new(measure, Length.FromCentimetres(Math.Min(least, now)), Length.FromCentimetres(Math.Max(most, now)), minutes);
    }
}
