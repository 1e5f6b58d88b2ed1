namespace Gatewright.Core.Rig;

/// <summary>
/// How far off a measure of the rig usually is, part by part, each a standard uncertainty in the measure's own unit. All
/// numbers are this project's judgement; none is published.
/// </summary>
/// <remarks>
/// What several places share drops out of their difference: that is why two seats are told apart better than either is
/// known. A tape's zero is shared by every length of a day; the bar's or the boat's level by all heights, with opposite
/// signs on the two sides.
/// </remarks>
/// <param name="Own">Of one place alone: the tape laid on, the middle of the pin met, the figure read.</param>
/// <param name="OfSeat">Of all that is taken at one seat: where the lowest point of that seat is.</param>
/// <param name="OfBoat">Of every place of the boat alike: how the measure was taken that day.</param>
/// <param name="Tape">The tape's zero: of all lengths of the day alike.</param>
/// <param name="Tilt">The bar or the boat not level across: up on the starboard side, down on the port side, or the reverse.</param>
public readonly record struct RigErrors(double Own, double OfSeat = 0, double OfBoat = 0, double Tape = 0, double Tilt = 0)
{
    private const double TapeZero = 0.05;

    /// <summary>What one figure taken once is uncertain by: the root of the sum of squares (JCGM 100:2008, equation 10).</summary>
    public double Once => Math.Sqrt((Own * Own) + (OfSeat * OfSeat) + (OfBoat * OfBoat) + (Tape * Tape) + (Tilt * Tilt));

    /// <summary>The usual errors of a measure: of a spread taken once 0.29 cm, of a height 0.36 cm, of a stretcher's angle 1°.</summary>
    public static RigErrors Usual(RigMeasure measure) => measure switch
    {
        // The keel line is found anew at each seat, as the middle of the boat: it belongs to the place.
        RigMeasure.Spread => new(0.25, OfBoat: 0.15, Tape: TapeZero),
        RigMeasure.Span => new(0.2, Tape: TapeZero),
        RigMeasure.Height => new(0.15, OfSeat: 0.2, OfBoat: 0.1, Tape: TapeZero, Tilt: 0.25),
        RigMeasure.Inboard => new(0.1, Tape: TapeZero),
        RigMeasure.OarLength => new(0.2, Tape: TapeZero),
        RigMeasure.Overlap => new(0.5, Tape: TapeZero),
        RigMeasure.StretcherAngle => new(0.7, OfBoat: 0.7),
        RigMeasure.HeelDepth => new(0.3, Tape: TapeZero),
        RigMeasure.WorkThrough => new(0.5, OfBoat: 0.2, Tape: TapeZero),
        _ => new(0.3, OfBoat: 0.1, Tape: TapeZero),
    };
}
