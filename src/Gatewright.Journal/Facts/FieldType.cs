using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Rig;

namespace Gatewright.Journal.Facts;

/// <summary>What a field may hold. Every value is text in the journal, as it was entered.</summary>
public enum FieldType
{
    /// <summary>Words, at most 200 characters.</summary>
    Text,

    /// <summary>The key of another thing.</summary>
    Key,

    /// <summary>A decimal number with a point.</summary>
    Number,

    /// <summary>"yes" or "no".</summary>
    YesNo,

    /// <summary>A class of boat.</summary>
    Class,

    /// <summary>"port" or "starboard".</summary>
    Side,

    /// <summary>"upright" or "inverted".</summary>
    Lie,

    /// <summary>"firm" or "soft".</summary>
    Bedding,

    /// <summary>Who rows a boat: the word of a crew.</summary>
    Crew,
}

/// <summary>Checks of field values.</summary>
public static class FieldTypes
{
    /// <summary>Characters in a text.</summary>
    public const int LongestText = 200;

    /// <summary>What is expected of a value, or null when it is as expected.</summary>
    public static string? Problem(this FieldType type, string value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return type switch
        {
            FieldType.Text => Unless(value.Length <= LongestText, $"at most {LongestText} characters"),
            FieldType.Key => Unless(value.Length is > 0 and <= LongestText, $"a key of 1 to {LongestText} characters"),
            FieldType.Number => Unless(
                decimal.TryParse(value, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _),
                "a number with a decimal point"),
            FieldType.YesNo => Unless(value is "yes" or "no", "yes or no"),
            FieldType.Class => Unless(
                BoatClass.TryParse(value) is not null, "one of " + string.Join(' ', BoatClass.All.Select(c => c.Name))),
            FieldType.Side => Unless(value is "port" or "starboard", "port or starboard"),
            FieldType.Lie => Unless(value is "upright" or "inverted", "upright or inverted"),
            FieldType.Crew => Unless(Crews.OfWord(value)?.Word() == value, Crews.Choice),
            _ => Unless(value is "firm" or "soft", "firm or soft"),
        };
    }

    private static string? Unless(bool holds, string expected) => holds ? null : expected;
}
