using Gatewright.Core.Rig;

namespace Gatewright.Core.Stroke;

/// <summary>The gearing of a seat, by the definitions of the World Championships' rigging survey of 2017, and what it is not.</summary>
/// <remarks>
/// Gearing divides by the spread, but the oar is a lever about the pin and knows nothing of the keel line: its lever is
/// outboard to inboard (Kleshnev, Rowing Biomechanics Newsletter, January 2007). Gearing and lever agree only where inboard
/// follows spread, as by habit it does.
/// </remarks>
public static class Gearing
{
    /// <summary>Sweep outboard/spread, scull outboard/(half the span). 288.5, 88.5 and a span of 160 → 2.5.</summary>
    public static double Plain(SeatRig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return Of(rig.Rowing, rig.Outboard, rig.Width);
    }

    /// <summary>The same of an outboard, in sculling the mean of both, and a spread or span.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A spread or span not above 0.</exception>
    public static double Of(Rowing rowing, Length outboard, Length width) => width > Length.Zero
        ? outboard / SeatRig.ToPinOf(rowing, width)
        : throw new ArgumentOutOfRangeException(nameof(width), width, "It must be above 0.");

    /// <summary>
    /// Sweep outboard/(spread − w/2), scull outboard/(half of (span − w)), w the gate's width. The same with 4 cm → 2.564.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The gate is as wide as what it stands on.</exception>
    public static double WithGate(SeatRig rig, Length gateWidth)
    {
        ArgumentNullException.ThrowIfNull(rig);
        Length toCheek = rig.ToPin - (0.5 * gateWidth);
        return toCheek > Length.Zero
            ? rig.Outboard / toCheek
            : throw new ArgumentOutOfRangeException(nameof(gateWidth), gateWidth, "A gate must be narrower than twice the way to its pin.");
    }

    /// <summary>Outboard to inboard, the true lever: the same → 2.260.</summary>
    public static double Lever(SeatRig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return rig.Outboard / rig.Inboard;
    }

    /// <summary>How far the handles overlap, in sweep how far the handle reaches beyond the keel line, both abeam.</summary>
    public static Length OverlapOf(SeatRig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return Length.FromCentimetres(rig.Rowing == Rowing.Sweep
            ? Overlap.OfSweep(rig.Inboard.Centimetres, rig.Width.Centimetres)
            : Overlap.OfScull(2 * rig.Inboard.Centimetres, rig.Width.Centimetres));
    }
}
