namespace Gatewright.Core.Geometry;

/// <summary>The exact pitch of a gate or blade anywhere in the stroke, however the boat lies.</summary>
public static class PitchGeometry
{
    /// <summary>
    /// What a perfect gauge would show on the working face (with a sleeve error: on the blade).
    /// </summary>
    /// <remarks>
    /// Pitch = asin(−n·u) upright, asin(+n·u) inverted, with n the face's normal and
    /// u = (sin β, −sin ρ, ±√(1 − sin² β − sin² ρ)) the world's up as the hull sees it, minus when inverted. So a
    /// level error changes sign when the boat is turned over, and the gate's own pitch does not.
    /// Example: 4° in the gate, the pin 1° out, 60° towards the catch → 4.87°.
    /// </remarks>
    /// <param name="at">Oar angle, 0 abeam, positive to the catch.</param>
    /// <param name="gate">Gate pitch and the pin's leans, each within ±45°.</param>
    /// <param name="side">The side the gate stands on.</param>
    /// <param name="hull">How the hull lies against plumb, each way within ±45°.</param>
    /// <param name="lie">Upright or inverted.</param>
    /// <param name="sleeve">The oar's sleeve error, 0 to read the gate alone.</param>
    /// <returns>Within ±90°, positive when the top leans to the stern.</returns>
    public static Pitch At(
        OarAngle at, GateState gate, Side side, HullAttitude hull = default, Lie lie = Lie.Upright, SleeveError sleeve = default)
    {
        Vector3 normal = WorkingFace.Normal(at, gate, side, sleeve);
        double sine = -lie.Sign() * normal.Dot(Up(hull, lie));
        return new(Angle.FromRadians(Math.Asin(Math.Clamp(sine, -1, 1))));
    }

    /// <summary>
    /// The pitch the same face would show on a level hull, given what it shows on this one.
    /// </summary>
    /// <remarks>
    /// Exact for a face that stands square to the drive, as on an upright pin: with the face at pitch P,
    /// sin y = A sin P − B cos P where A = |u_z| and B = ±d·u, whence P. The pin's leans are not known here and need
    /// not be: at 3° of lean and 1° of tilt the difference they make is under 0.01° for gate pitches within 5°, and under
    /// 0.014° within 7°.
    /// </remarks>
    /// <returns>The pitch with the hull's attitude taken out; <paramref name="shown"/> itself when the hull is level.</returns>
    public static Pitch OnLevelHull(Pitch shown, OarAngle at, Side side, HullAttitude hull, Lie lie)
    {
        if (hull == HullAttitude.Level)
        {
            return shown;
        }

        (double sinAt, double cosAt) = Math.SinCos(at.Angle.Radians);
        Vector3 up = Up(hull, lie);
        double along = lie.Sign() * new Vector3(-cosAt, side.Sign() * sinAt, 0).Dot(up);
        double upright = Math.Abs(up.Z);
        double length = Math.Sqrt((along * along) + (upright * upright));
        double sine = Math.Clamp(Math.Sin(shown.Angle.Radians) / length, -1, 1);
        return new(Angle.FromRadians(Math.Asin(sine) + Math.Atan2(along, upright)));
    }

    /// <summary>u: the world's up as seen in the hull's frame.</summary>
    private static Vector3 Up(HullAttitude hull, Lie lie)
    {
        double x = Math.Sin(hull.BowHigh.Angle.Radians);
        double y = -Math.Sin(hull.PortLow.Angle.Radians);
        return new(x, y, lie.Sign() * Math.Sqrt(Math.Max(0, 1 - (x * x) - (y * y))));
    }
}
