using System.Globalization;
using Gatewright.Core.Rig;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rigging;

namespace Gatewright.Journal.Entries;

/// <summary>
/// The rules for measures of the rig and their targets. They hold for what enters: entries of before, of any word and unit,
/// stay readable and are passed over where they are not understood.
/// </summary>
internal static class MeasureRules
{
    private const int LongestUnit = 20;
    private const int LargestOfBefore = 100_000;

    public static void Check(MeasureTaken taken, RuleBook book)
    {
        if (book.IsOfBefore)
        {
            book.Key("measure", taken.Measure);
            book.Within("value", taken.Value, -LargestOfBefore, LargestOfBefore);
            book.Text("unit", taken.Unit, LongestUnit);
            return;
        }

        if (RigMeasures.OfWord(taken.Measure) is not { } measure || measure.Word() != taken.Measure)
        {
            book.Say("measure", taken.Measure, $"give one of {string.Join(", ", RigMeasures.All.Select(m => m.Word()))}");
            return;
        }

        if (measure.HasSide() && taken.Side is null)
        {
            book.Say("side", null, $"give port or starboard: a boat has {measure.Word()} on each side of a seat, or on the one that is rowed");
        }

        if (Unit(measure, taken.Unit, "unit", book) is { } unit)
        {
            Plausible(measure, taken.Value, unit, "value", book);
        }
    }

    public static void Check(MeasureSet set, RuleBook book)
    {
        book.Within("u", set.U, 0, LargestOfBefore);
        Check(new MeasureTaken(set.Boat, set.Measure, set.Seat, set.Value, set.Unit, set.Side), book);
    }

    public static void Check(ThingSet target, RuleBook book)
    {
        if (TargetKey.Parse(target.Key) is not { } key)
        {
            book.Say("key", target.Key, "give " + TargetKey.Form);
            return;
        }

        RigUnit unit = UnitOf(target, key, book);
        if (key.Aspect == RigAspect.Value && Number(target, "value") is { } value)
        {
            Plausible(key.Measure, value, unit, "fields.value", book, $" ({key})");
        }

        if (key.Aspect == RigAspect.Seats && Number(target, "value") is not (null or 0))
        {
            book.Say("fields.value", target.Fields["value"], "give 0: the range across the boat is limited by its tolerance alone");
        }

        if (Number(target, "tolerance") is < 0)
        {
            book.Say("fields.tolerance", target.Fields["tolerance"], "give how far off the value is still good, 0 or more");
        }
    }

    /// <summary>
    /// The unit of a target's figures. It goes with the value: set by itself either would make something else of what was set
    /// before, 380 cm of an oar into 380 inches.
    /// </summary>
    private static RigUnit UnitOf(ThingSet target, TargetKey key, RuleBook book)
    {
        string? word = target.Fields.GetValueOrDefault("unit");
        bool hasValue = target.Fields.GetValueOrDefault("value") is not null;
        if (word is null && hasValue && key.Aspect != RigAspect.Seats)
        {
            book.Say("fields.unit", null, $"give the unit of the value ({key}), {Units(key.Measure)}");
        }
        else if (word is not null && !hasValue)
        {
            book.Say("fields.value", null, $"give the value that is in {word} ({key})");
        }

        return word is null ? key.Measure.Unit() : Unit(key.Measure, word, "fields.unit", book) ?? key.Measure.Unit();
    }

    private static RigUnit? Unit(RigMeasure measure, string word, string field, RuleBook book)
    {
        if (RigUnits.OfWord(word) is { } unit && measure.Takes(unit))
        {
            return unit;
        }

        book.Say(field, word, "give " + Units(measure));
        return null;
    }

    private static string Units(RigMeasure measure) => measure.IsAngle() ? "deg" : "cm, mm or in";

    private static void Plausible(RigMeasure measure, decimal value, RigUnit unit, string field, RuleBook book, string place = "")
    {
        (double least, double most) = measure.Plausible();
        double own = unit.InOwn((double)value);
        if (own < least || own > most)
        {
            book.Say(field, value.ToString(CultureInfo.InvariantCulture), FormattableString.Invariant(
                $"no {measure.Word()} is that{place}: give {unit.FromOwn(least):0.#} to {unit.FromOwn(most):0.#} {unit.Word()}"));
        }
    }

    private static decimal? Number(ThingSet target, string field) =>
        decimal.TryParse(target.Fields.GetValueOrDefault(field), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value)
            ? value
            : null;
}
