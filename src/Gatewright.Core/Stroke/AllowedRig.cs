namespace Gatewright.Core.Stroke;

/// <summary>A seat's rig at values of the measures that may be set.</summary>
internal static class AllowedRig
{
    /// <summary>What the measures are now, in centimetres, in the order of those allowed.</summary>
    public static double[] Now(SeatRig rig, IReadOnlyList<AllowedStep> allowed)
    {
        double[] values = new double[allowed.Count];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = rig.Get(allowed[i].Measure).Centimetres;
        }

        return values;
    }

    /// <summary>The stroke of the same rower with the measures at such values; null where there is none, or the rig does not hold together.</summary>
    public static StrokeGeometry? At(StrokeGeometry from, IReadOnlyList<AllowedStep> allowed, double[] values)
    {
        SeatRig rig = from.Rig;
        (double width, double inboard, double length, double through) =
            (rig.Width.Centimetres, rig.Inboard.Centimetres, rig.OarLength.Centimetres, rig.WorkThrough.Centimetres);
        for (int i = 0; i < values.Length; i++)
        {
            switch (allowed[i].Measure)
            {
                case Core.Rig.RigMeasure.Inboard:
                    inboard = values[i];
                    break;
                case Core.Rig.RigMeasure.OarLength:
                    length = values[i];
                    break;
                case Core.Rig.RigMeasure.WorkThrough:
                    through = values[i];
                    break;
                default:
                    width = values[i];
                    break;
            }
        }

        return width > 0 && inboard > 0 && length > inboard
            ? StrokeGeometry.Of(SeatRig.FromCentimetres(rig.Rowing, width, inboard, length, through), from.Reach, from.Points)
            : null;
    }
}
