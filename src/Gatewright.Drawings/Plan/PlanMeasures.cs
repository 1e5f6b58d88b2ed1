using Gatewright.Core;

namespace Gatewright.Drawings.Plan;

/// <summary>The lengths a plan is drawn by, in its own units: a unit is a CSS pixel where the plan is as wide as itself.</summary>
/// <param name="Width">How wide the drawing is.</param>
/// <param name="Row">From one seat to the next.</param>
/// <param name="End">From the hull's tip to the first seat's row, and from the last's to the other tip.</param>
/// <param name="Cox">What the cox's place adds to its end.</param>
/// <param name="Beam">Half the hull's width where it is widest.</param>
/// <param name="Reach">From the keel to the pin.</param>
/// <param name="Clear">Half the strip along the keel that belongs to no gate's place.</param>
/// <param name="MarkSize">The square a verdict's mark stands in.</param>
internal sealed record PlanMeasures(
    double Width, double Row, double End, double Cox, double Beam, double Reach, double Clear, double MarkSize)
{
    /// <summary>
    /// The lowest row whose place is still 48 px high where the page leaves the plan 328 of a phone's 360 px: 53 · 328 / 360 = 48.3.
    /// </summary>
    public const double LeastRow = 53;

    private const double PlanWidth = 360;

    /// <summary>The measures for a class at a size.</summary>
    public static PlanMeasures Of(BoatClass boatClass, PlanSize size) => size switch
    {
        PlanSize.Small => Small(boatClass),
        PlanSize.Compact => Touchable(boatClass, LeastRow, 12 + (24.0 / boatClass.Seats)),
        _ => Touchable(boatClass, LeastRow + Spare(boatClass.Seats), 30 + (1.5 * Spare(boatClass.Seats))),
    };

    /// <summary>What a shorter boat's rows gain over an eight's: its plan need not be as low.</summary>
    private static double Spare(int seats) => seats switch { 8 => 0, 4 => 16, 2 => 34, _ => 50 };

    private static PlanMeasures Touchable(BoatClass boatClass, double row, double end) =>
        new(PlanWidth, row, end, 26, HalfBeam(boatClass), 50, 22, 24);

    private static PlanMeasures Small(BoatClass boatClass)
    {
        double length = LongestSmall * TrueLength(boatClass) / TrueLength(BoatClass.Parse("8+"));
        double row = 0.7 * length / boatClass.Seats;
        double cox = boatClass.IsCoxed ? 5 : 0;
        return new(34, row, (length - (boatClass.Seats * row) - cox) / 2, cox, 0.2 * HalfBeam(boatClass), 9.5, 5, 8.5);
    }

    /// <summary>An eight's length as a thumbnail.</summary>
    public const double LongestSmall = 92;

    // Metres, from memory of hulls in use; only their proportion is drawn.
    private static double TrueLength(BoatClass boatClass) => boatClass.Seats switch { 8 => 17.5, 4 => 13, 2 => 10.2, _ => 8.2 };

    // The spread or half the span is near 84 cm for all; half the beam goes from 28 cm in an eight to 14 in a single.
    private static double HalfBeam(BoatClass boatClass) => boatClass.Seats switch { 8 => 16, 4 => 14, 2 => 12, _ => 10.5 };
}
