using Gatewright.Core;
using Gatewright.Core.Rig;

namespace Gatewright.Journal.Exchange;

/// <summary>What there is to say about the cells of a row that measures the rig.</summary>
internal static class MeasureMessages
{
    public static void BlankMeasure(this Reporter report, RigMeasure measure) => report.Error(
        Column.Reading, default, $"blank: expected {Kind(measure)}; leave the row out if it was not measured.");

    public static void NoMeasure(this Reporter report, ReadOnlySpan<char> value, RigMeasure measure) => report.Error(
        Column.Reading, value, $"is not a number: expected {Kind(measure)}, its unit in the column unit.");

    public static void MeasureNotPossible(
        this Reporter report, ReadOnlySpan<char> value, RigMeasure measure, RigUnit unit, double written)
    {
        (double least, double most) = measure.Plausible();
        report.Error(Column.Reading, value, $"is not a possible {measure.Word()}: expected {unit.FromOwn(least):0.#} to {unit.FromOwn(most):0.#} {unit.Word()}.{InAnother(measure, unit, written)}");
    }

    public static void NoUnit(this Reporter report, ReadOnlySpan<char> value, RigMeasure measure) => report.Error(
        Column.Unit, value, $"is not a unit of {measure.Word()}: expected {(measure.IsAngle() ? "deg" : "cm, mm or in")}; blank is {measure.Unit().Word()}.");

    public static void UnitOfAReading(this Reporter report, ReadOnlySpan<char> value) => report.Error(
        Column.Unit, value, $"does not go with a reading of the gauge, which is in degrees: leave it blank, or name the measure of the rig in the column item.");

    public static void NotOfAMeasure(this Reporter report, Column column, ReadOnlySpan<char> value, RigMeasure measure) => report.Error(
        column, value, $"does not go with {measure.Word()}, which is measured with no gauge at a gate: leave it blank. If a decimal comma was split, write the number with a point.");

    public static void MeasureOfOther(this Reporter report, RigMeasure measure, BoatClass boatClass) => report.Error(
        Column.Item, measure.Word(), $"is no measure of a {boatClass}: expected {(boatClass.Rowing == Rowing.Scull ? RigMeasure.Span : RigMeasure.Spread).Word()}.");

    private static string Named(RigUnit unit) => unit switch
    {
        RigUnit.Centimetres => "centimetres",
        RigUnit.Millimetres => "millimetres",
        _ => "inches",
    };

    private static string Kind(RigMeasure measure) => measure.IsAngle() ? "degrees, such as 42" : "a length, such as 86.5";

    /// <summary>The unit in which the figure would be possible, where there is one.</summary>
    private static string InAnother(RigMeasure measure, RigUnit unit, double written)
    {
        (double least, double most) = measure.Plausible();
        foreach (RigUnit other in RigUnits.All)
        {
            double own = other.InOwn(written);
            if (other != unit && measure.Takes(other) && own >= least && own <= most)
            {
                return $" If it is {Named(other)}, write {other.Word()} into the column unit.";
            }
        }

        return "";
    }
}
