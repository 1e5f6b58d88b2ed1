using System.Globalization;
using System.Resources;

namespace Gatewright.Words;

/// <summary>A language: its sentences, and how it writes numbers and days.</summary>
/// <remarks>
/// Sentences are looked up by this object alone, never by the thread's culture. Both languages lie in this assembly, and
/// the decimal comma is set here: so a browser without culture data tells German as a terminal does.
/// </remarks>
public sealed class Language
{
    private const string Hyphen = "-";
    private const string Minus = "\u2212";
    private readonly ResourceManager _texts;

    private Language(string tag, string name, ResourceManager texts, string decimalPoint, string minus)
    {
        Tag = tag;
        Name = name;
        _texts = texts;
        var numbers = (NumberFormatInfo)NumberFormatInfo.InvariantInfo.Clone();
        numbers.NumberDecimalSeparator = decimalPoint;
        numbers.NegativeSign = minus;
        Numbers = NumberFormatInfo.ReadOnly(numbers);
    }

    /// <summary>English, with a decimal point and days as 2026-03-14.</summary>
    public static Language English { get; } = new("en", "English", TextsOf("Gatewright.Words.Texts"), ".", Hyphen);

    /// <summary>German, with a decimal comma and days as 14.03.2026.</summary>
    public static Language German { get; } = new("de", "Deutsch", TextsOf("Gatewright.Words.Texts.de"), ",", Hyphen);

    /// <summary>Every language there is.</summary>
    public static IReadOnlyList<Language> All { get; } = [English, German];

    /// <summary>What browsers call it: "en", "de".</summary>
    public string Tag { get; }

    /// <summary>What it calls itself: "English", "Deutsch".</summary>
    public string Name { get; }

    /// <summary>How it writes numbers.</summary>
    public NumberFormatInfo Numbers { get; }

    /// <summary>How it writes days, as a pattern for a culture: "yyyy-MM-dd".</summary>
    public string DayPattern => Text("Figure.Date");

    /// <summary>The language that a browser's tag asks for: "de-AT" → German; English for one that is not spoken here.</summary>
    public static Language Of(string? tag)
    {
        string first = tag?.Split('-')[0] ?? string.Empty;
        return All.FirstOrDefault(language => language.Tag.Equals(first, StringComparison.OrdinalIgnoreCase)) ?? English;
    }

    /// <summary>The same language for a screen, with the minus that people read; terminals and files have a hyphen in its place.</summary>
    internal Language OnScreen() => new(Tag, Name, _texts, Numbers.NumberDecimalSeparator, Minus);

    /// <summary>A day: "2026-03-14", "14.03.2026".</summary>
    public string Day(DateOnly day) => day.ToString(DayPattern, CultureInfo.InvariantCulture);

    /// <summary>The text of a key as it stands.</summary>
    /// <exception cref="MissingManifestResourceException">There is none.</exception>
    internal string Text(string key) => _texts.GetString(key, CultureInfo.InvariantCulture)
        ?? throw new MissingManifestResourceException($"There is no text '{key}' in {Name}.");

    /// <summary>The text of a key with its places filled; whole numbers are written as the language does.</summary>
    internal string Text(string key, params ReadOnlySpan<object?> places) => string.Format(Numbers, Text(key), places);

    /// <summary>A text that is one for 1 and another for any other number: "1 boat", "3 boats". The number fills the first place.</summary>
    internal string Counted(string key, int count, params ReadOnlySpan<object?> places) =>
        Text(count == 1 ? $"{key}.One" : $"{key}.Many", [count, .. places]);

    private static ResourceManager TextsOf(string name) => new(name, typeof(Language).Assembly);
}
