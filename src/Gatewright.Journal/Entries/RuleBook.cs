using System.Globalization;
using Gatewright.Core;
using Gatewright.Journal.Exchange;

namespace Gatewright.Journal.Entries;

/// <summary>Checks single values of an entry's body and collects what is wrong: field, value, remedy.</summary>
internal sealed class RuleBook
{
    /// <summary>More languages than are spoken here, for those to come.</summary>
    private const int MostLanguages = 10;

    private static readonly DateOnly Earliest = new(1900, 1, 1);
    private static readonly DateOnly Latest = new(2199, 12, 31);

    private readonly List<string> _problems = [];

    public IReadOnlyList<string> Problems => _problems;

    /// <summary>Whether the entry was let into a journal before: rules that came later do not hold for it.</summary>
    public bool IsOfBefore { get; init; }

    public void Say(string field, string? value, string remedy) =>
        _problems.Add($"\"{field}\" is {(value is null ? "missing" : $"'{ShownText.Of(value)}'")}: {remedy}");

    public void Key(string field, string? key)
    {
        if (key is null)
        {
            return;
        }

        if (key.Length is 0 or > EntryRules.LongestKey || key != key.Trim() || NameText.HasHiddenCharacters(key) || key.Any(char.IsControl))
        {
            Say(field, key, $"give a key of 1 to {EntryRules.LongestKey} visible characters, without a space at either end");
        }
    }

    /// <summary>The key of a boat, from which the keys of its seats and gates are made with slashes.</summary>
    public void Boat(string field, string boat)
    {
        Key(field, boat);
        if (boat.Contains('/', StringComparison.Ordinal))
        {
            Say(field, boat, "give the boat's key without a slash");
        }
    }

    /// <summary>People's words: lines and tabs, and no other character that cannot be seen.</summary>
    public void Text(string field, string? text, int most)
    {
        if (text?.Length > most)
        {
            Say(field, text, FormattableString.Invariant($"it has {text.Length} characters; give at most {most}"));
        }

        if (text?.Any(c => char.IsControl(c) && c is not ('\n' or '\r' or '\t')) == true)
        {
            Say(field, text, "leave out the characters that cannot be seen");
        }
    }

    /// <summary>The same words in further languages, by tag.</summary>
    public void Languages(string field, IReadOnlyDictionary<string, string>? texts, int most)
    {
        Items(field, texts?.Count ?? 0, MostLanguages);
        foreach ((string tag, string text) in (texts ?? new Dictionary<string, string>()).Take(MostLanguages))
        {
            Key(field, tag);
            Text(field, text, most);
        }
    }

    public void Seat(int? seat, string field = "seat") => Within(field, seat, 1, BoatClass.All.Max(c => c.Seats));

    public void Degrees(string field, decimal? value, int most) => Within(field, value, -most, most);

    public void Within(string field, decimal? value, decimal least, decimal most)
    {
        if (value < least || value > most)
        {
            Say(field, value?.ToString(CultureInfo.InvariantCulture), FormattableString.Invariant($"give a number from {least} to {most}"));
        }
    }

    public void Date(DateOnly? date)
    {
        if (date < Earliest || date > Latest)
        {
            Say("date", date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), "give a day from 1900 to 2199");
        }
    }

    public void Items(string field, int count, int most = EntryRules.MostItems)
    {
        if (count > most)
        {
            Say(field, FormattableString.Invariant($"{count} items"), FormattableString.Invariant($"give at most {most}"));
        }
    }

    /// <summary>A seat and a side name a gate together.</summary>
    public void Gate(int? seat, Side? side, string seatField = "seat", string sideField = "side")
    {
        Seat(seat, seatField);
        if (seat is null != side is null)
        {
            Say(seat is null ? seatField : sideField, null, $"give {seatField} and {sideField} together, or neither");
        }
    }
}
