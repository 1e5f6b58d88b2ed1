using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Stroke;

namespace Gatewright.Core.Load;

/// <summary>
/// What the pitch of one blade makes of the pull on its handle, by statics: a model, for differences and directions only.
/// </summary>
/// <remarks>
/// The water pushes against the blade along the working face's normal: N along the drive and N sin(pitch) upward, for a face whose
/// top leans to the stern looks down as it drives. About the pin the blade's lift is held by a lift at the handle, o/h times as
/// much. Boat, oar and rower together are pushed up at the blade alone, S + o cos θ from the keel line: that is the roll
/// moment. Positive about the bow's axis, it lifts port and rolls the boat down to starboard; docs/method-load.md derives the
/// signs.
/// </remarks>
public sealed class OarLoad
{
    private const double RadiansPerDegree = Math.PI / 180;

    private readonly OarCircle _oar;
    private readonly DriveProfile _profile;
    private readonly double _hands;

    /// <summary>The oar of a seat.</summary>
    /// <param name="rig">The seat's rig.</param>
    /// <param name="side">The oar's side.</param>
    /// <param name="profile">The pull of the rower; in sculling each oar has half of it.</param>
    /// <param name="drive">Where the drive begins and ends.</param>
    public OarLoad(SeatRig rig, Side side, DriveProfile profile, StationAngles drive)
        : this(CircleOf(rig), rig.Rowing, side, profile, drive)
    {
    }

    /// <summary>An oar by its levers.</summary>
    internal OarLoad(OarCircle oar, Rowing rowing, Side side, DriveProfile profile, StationAngles drive)
    {
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(drive);
        (_oar, _profile, Side, Drive) = (oar, profile, side, drive);
        _hands = rowing == Rowing.Scull ? 0.5 : 1;
    }

    /// <summary>The oar's side.</summary>
    public Side Side { get; }

    /// <summary>Where the drive begins and ends.</summary>
    public StationAngles Drive { get; }

    /// <summary>From the pin to the blade over from the pin to the hands: what a lift of the blade is at the handle.</summary>
    public double HandleShare => _oar.ToBlade / _oar.ToHands;

    /// <summary>N: the blade's push against the water, in newtons.</summary>
    public double BladeNewtons(OarAngle at) => _hands * _profile.PullNewtons(at, Drive.Catch, Drive.Finish) / HandleShare;

    /// <summary>
    /// How far from the keel line the blade is lifted, in metres, with the sign of its side: newton metres of roll for a newton of
    /// lift. Positive lifts port and rolls the boat down to starboard.
    /// </summary>
    public double RollLeverMetres(OarAngle at) => Side.Sign() * (_oar.ToPin + (_oar.ToBlade * Math.Cos(at.Angle.Radians))) / 100;

    /// <summary>The water's lift of the blade, in newtons, positive upward.</summary>
    public double LiftNewtons(OarAngle at, Pitch pitch) => BladeNewtons(at) * Math.Sin(pitch.Angle.Radians);

    /// <summary>How the lift follows the pitch, in newtons a degree, at a pitch.</summary>
    internal double LiftPerDegree(OarAngle at, Pitch pitch) => BladeNewtons(at) * Math.Cos(pitch.Angle.Radians) * RadiansPerDegree;

    private static OarCircle CircleOf(SeatRig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return OarCircle.Of(rig, OarPoints.Usual(rig.Rowing));
    }
}
