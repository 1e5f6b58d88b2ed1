using Gatewright.Core;
using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Entries;

/// <summary>The rules for setting fields of a thing: those that are known are checked by their type.</summary>
internal static class ThingRules
{
    private const int LargestNumber = 1_000_000;

    public static void Check(ThingSet set, RuleBook book)
    {
        book.Key("thing", set.Thing);
        Key(set, book);
        book.Items("fields", set.Fields.Count);
        if (set.Thing == Things.Target && !book.IsOfBefore)
        {
            MeasureRules.Check(set, book);
        }

        Things.Fields.TryGetValue(set.Thing, out IReadOnlyDictionary<string, FieldType>? known);
        foreach ((string field, string? value) in set.Fields.Take(EntryRules.MostItems))
        {
            book.Key("fields", field);
            if (value is not null)
            {
                Value($"fields.{Exchange.ShownText.Of(field)}", value, known is not null && known.TryGetValue(field, out FieldType type) ? type : null, book);
            }
        }
    }

    private static void Value(string field, string value, FieldType? type, RuleBook book)
    {
        book.Text(field, value, EntryRules.LongestText);
        if (type?.Problem(value) is { } expected)
        {
            book.Say(field, value, $"give {expected}");
        }
        else if (type == FieldType.Key)
        {
            book.Key(field, value);
        }
        else if (type == FieldType.Number)
        {
            book.Within(field, decimal.Parse(value, System.Globalization.CultureInfo.InvariantCulture), -LargestNumber, LargestNumber);
        }
    }

    /// <summary>"boat", "boat/3" for a seat, "boat/3/port" for a gate.</summary>
    private static void Key(ThingSet set, RuleBook book)
    {
        book.Key("key", set.Key);
        string[] parts = set.Key.Split('/');
        bool isRight = set.Thing switch
        {
            Things.Boat => parts.Length == 1,
            Things.Seat => parts.Length == 2 && IsSeat(parts[1]),
            Things.Gate => parts.Length == 3 && IsSeat(parts[1]) && (parts[2] == Side.Port.Word() || parts[2] == Side.Starboard.Word()),
            _ => true,
        };
        if (!isRight)
        {
            book.Say("key", set.Key, set.Thing switch
            {
                Things.Boat => "give the boat's key without a slash",
                Things.Seat => "give the boat's key, a slash and the seat's number",
                _ => "give the boat's key, the seat's number and port or starboard, with slashes between",
            });
        }
    }

    private static bool IsSeat(string text) => text is [>= '1' and <= '8'];
}
