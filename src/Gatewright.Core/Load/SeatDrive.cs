using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;

namespace Gatewright.Core.Load;

/// <summary>Writes the figures of an oar about its pin that goes from one angle to another.</summary>
internal delegate void FiguresOfDrive(OarCircle oar, StationAngles drive, double[] into);

/// <summary>A seat's drive: its oar's levers and its arc, and what both may be off by.</summary>
internal abstract class SeatDrive
{
    protected SeatDrive(OarCircle oar, StationAngles drive) => (Oar, Drive) = (oar, drive);

    /// <summary>The levers, at the best values.</summary>
    public OarCircle Oar { get; }

    /// <summary>Catch and finish, at the best values.</summary>
    public StationAngles Drive { get; }

    /// <summary>Whether the arc follows from what was measured at the seat.</summary>
    public abstract bool IsOwn { get; }

    /// <summary>
    /// A seat's drive. Where anything was measured there that moves the arc, it is the usual rower's stroke at the seat's rig;
    /// else, and where such a rig could not be rowed, it goes through the stations' angles.
    /// </summary>
    /// <param name="seat">The rig as it is known.</param>
    /// <param name="usual">The stations' angles.</param>
    /// <param name="usualU">The standard uncertainty of either end of an arc that nobody measured.</param>
    public static SeatDrive Of(MeasuredSeat seat, StationAngles usual, Angle usualU)
    {
        Rowing rowing = seat.Rig.Rowing;
        bool isMeasured = !(seat.Assumed.Contains(SeatRig.WidthOf(rowing))
            && seat.Assumed.Contains(RigMeasure.Inboard)
            && seat.Assumed.Contains(RigMeasure.WorkThrough));
        return (isMeasured ? OwnArc.Of(seat) : null) ?? (SeatDrive)new UsualArc(seat, usual, usualU);
    }

    /// <summary>How figures follow each thing the drive rests on: a row a figure.</summary>
    public abstract double[][] Slopes(int figures, FiguresOfDrive of);

    /// <summary>The variance of a figure that follows those things so.</summary>
    public abstract double Variance(ReadOnlySpan<double> slopes);

    /// <summary>How well catch and finish are known, in degrees.</summary>
    public (Estimate Catch, Estimate Finish) Ends()
    {
        double[][] slopes = Slopes(2, (_, drive, into) => (into[0], into[1]) = (drive.Catch.Degrees, drive.Finish.Degrees));
        return (
            Estimate.FromDegrees(Drive.Catch.Degrees, Math.Sqrt(Variance(slopes[0]))),
            Estimate.FromDegrees(Drive.Finish.Degrees, Math.Sqrt(Variance(slopes[1]))));
    }
}
