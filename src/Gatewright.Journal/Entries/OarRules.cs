using System.Globalization;
using Gatewright.Core.Oars;
using Gatewright.Core.Rig;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Entries;

/// <summary>The rules for what is read of an oar.</summary>
internal static class OarRules
{
    public static void Check(OarRead read, RuleBook book)
    {
        book.Key("oar", read.Oar);
        book.Key("session", read.Session);
        book.Key("rack", read.Rack);
        book.Key("gauge", read.Gauge);
        book.Date(read.Date);
        if (read.Boat is { } boat)
        {
            book.Boat("boat", boat);
        }

        book.Degrees("bowHigh", read.BowHigh, ReadingsFormat.MostOfALevel);
        book.Degrees("portLow", read.PortLow, ReadingsFormat.MostOfALevel);
        Plausible(read, book);
        if (read.Item != OarItem.Sleeve)
        {
            OfSleevesOnly(read, book);
            return;
        }

        if (read.Session is null)
        {
            book.Say("session", null, "name the occasion: its readings share the boat's level");
        }

        if (read.Level == LevelBasis.Rack && read.Rack is null)
        {
            book.Say("rack", null, "name the rack whose level is meant");
        }

        if (read.Level == LevelBasis.Read && read.BowHigh is null)
        {
            book.Say("bowHigh", null, "give the level that was read");
        }
    }

    private static void Plausible(OarRead read, RuleBook book)
    {
        RigUnit unit = RigUnit.Centimetres;
        if (read.Item is OarItem.Sleeve or OarItem.Weight)
        {
            if (read.Unit is not null)
            {
                book.Say("unit", read.Unit, "leave it out: a sleeve is in degrees, a weight in kilograms");
            }
        }
        else if (read.Unit is { } word)
        {
            if (RigUnits.OfWord(word) is not { } known || known == RigUnit.Degrees)
            {
                book.Say("unit", word, "give cm, mm or in");
                return;
            }

            unit = known;
        }

        (double least, double most) = read.Item.Plausible();
        double own = unit.InOwn((double)read.Value);
        if (own < least || own > most)
        {
            book.Say("value", read.Value.ToString(CultureInfo.InvariantCulture), FormattableString.Invariant(
                $"no {read.Item.Word()} is that: give {unit.FromOwn(least):0.#} to {unit.FromOwn(most):0.#}"));
        }
    }

    private static void OfSleevesOnly(OarRead read, RuleBook book)
    {
        if (read is not { Lie: null, Level: null, BowHigh: null, PortLow: null, Rack: null, Laid: null, Gauge: null, Boat: null })
        {
            book.Say("item", read.Item.Word(), "only a sleeve is read on a boat with a gauge: leave boat, lie, level, rack, laid and gauge out");
        }
    }
}
