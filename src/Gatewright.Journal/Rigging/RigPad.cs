using Gatewright.Core.Rig;

namespace Gatewright.Journal.Rigging;

/// <summary>
/// The figures that one tap enters for a measure of the rig: four rows of six about what is looked for, always in the same
/// steps, beginning with a whole one, in millimetres with a whole step.
/// </summary>
/// <param name="Unit">The unit they are in.</param>
/// <param name="Lowest">The first.</param>
public sealed record RigPad(RigUnit Unit, decimal Lowest)
{
    /// <summary>Figures in a row.</summary>
    public const int Columns = 6;

    /// <summary>Rows.</summary>
    public const int Rows = 4;

    /// <summary>From one figure to the next: 0.5 cm, 5 mm, 0.25 in, 1°.</summary>
    public decimal Step => StepOf(Unit);

    /// <summary>The figures, row by row.</summary>
    public IReadOnlyList<decimal> Values { get; } = Row(Unit, Lowest);

    /// <summary>
    /// The pad for a place: about its target, so that it stays where it is along the boat; about what was measured there
    /// last, where that lies off it.
    /// </summary>
    /// <param name="measure">The measure.</param>
    /// <param name="unit">The unit, one that the measure takes.</param>
    /// <param name="target">The target; null for none. In the measure's own unit, as the next.</param>
    /// <param name="last">What was measured there last; null for nothing.</param>
    public static RigPad For(RigMeasure measure, RigUnit unit, double? target, double? last)
    {
        (double least, double most) = measure.Plausible();
        RigPad pad = About(unit, target ?? last ?? ((least + most) / 2));
        return last is { } before && pad.Nearest(before) is null ? About(unit, before) : pad;
    }

    /// <summary>The figure nearest to one in the measure's own unit; null where that lies off the pad.</summary>
    public decimal? Nearest(double? own) =>
        own is { } value && Math.Round((decimal)Unit.FromOwn(value) / Step, MidpointRounding.AwayFromZero) * Step is var near
            && near >= Values[0] && near <= Values[^1]
            ? near
            : null;

    private static RigPad About(RigUnit unit, double own)
    {
        decimal whole = Math.Max(1, StepOf(unit));
        return new(unit, (Math.Round((decimal)unit.FromOwn(own) / whole, MidpointRounding.AwayFromZero) * whole) - (2 * Columns * StepOf(unit)));
    }

    private static decimal StepOf(RigUnit unit) => unit switch
    {
        RigUnit.Millimetres => 5,
        RigUnit.Inches => 0.25m,
        RigUnit.Degrees => 1,
        _ => 0.5m,
    };

    private static decimal[] Row(RigUnit unit, decimal lowest)
    {
        var values = new decimal[Columns * Rows];
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = lowest + (i * StepOf(unit));
        }

        return values;
    }
}
