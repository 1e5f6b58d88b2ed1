using Gatewright.Core.Rig;

namespace Gatewright.Core.Stroke;

/// <summary>How far a rower reaches, told from the heels of the stretcher; seen from above.</summary>
/// <remarks>
/// At the catch the hands lie on a circle of <paramref name="Arms"/> about the shoulder: straight ahead of it they are
/// <paramref name="AtCatch"/> to the stern of the heels, further out they are less far. At the finish the handle comes to
/// the body, a plane <paramref name="AtFinish"/> to the bow of the heels, wherever across the boat it lies. The usual
/// figures are ours: they put the medians of published rigs at the published catch and finish angles, and no rower was
/// measured for them.
/// </remarks>
/// <param name="AtCatch">From the heels to the middle of the hands, straight ahead, positive to the stern.</param>
/// <param name="AtFinish">From the heels to the middle of the hands at the finish, positive to the bow.</param>
/// <param name="Arms">From the shoulder to the middle of the hands, above 0.</param>
/// <param name="Shoulder">
/// From the keel line to the shoulder that the hand is reached from: half the shoulders' width in sculling; in sweep 0,
/// since the trunk turns and both hands hold one handle.
/// </param>
/// <param name="SeatToHeels">From the front edge of the seat at full slide to the heels, to the stern.</param>
public sealed record Reach(Length AtCatch, Length AtFinish, Length Arms, Length Shoulder, Length SeatToHeels)
{
    private static readonly Reach Sweep = Of(37.5, 112.5, 75, 0, 40);
    private static readonly Reach Scull = Of(27, 112.5, 75, 20, 40);

    /// <summary>
    /// The usual reach: a sweep rower's 37.5 cm beyond the heels and back to 112.5, a sculler's 27 and 112.5.
    /// </summary>
    public static Reach Usual(Rowing rowing) => rowing == Rowing.Sweep ? Sweep : Scull;

    private static Reach Of(double atCatch, double atFinish, double arms, double shoulder, double seatToHeels) => new(
        Length.FromCentimetres(atCatch),
        Length.FromCentimetres(atFinish),
        Length.FromCentimetres(arms),
        Length.FromCentimetres(shoulder),
        Length.FromCentimetres(seatToHeels));
}
