using System.Globalization;
using System.Resources;
using Gatewright.Words;

namespace Gatewright.Printing.Told;

/// <summary>What stands on paper and is said nowhere else, in one language.</summary>
internal sealed class PrintTexts
{
    private static readonly PrintTexts English = new(Wording.OnScreen(Language.English).Language, "Gatewright.Printing.PrintTexts");
    private static readonly PrintTexts German = new(Wording.OnScreen(Language.German).Language, "Gatewright.Printing.PrintTexts.de");

    private readonly Language _language;
    private readonly ResourceManager _texts;

    private PrintTexts(Language language, string name) =>
        (_language, _texts) = (language, new(name, typeof(PrintTexts).Assembly));

    /// <summary>Those of a language.</summary>
    public static PrintTexts In(Language language) => language.Tag == Language.German.Tag ? German : English;

    /// <summary>A text.</summary>
    /// <exception cref="MissingManifestResourceException">There is none of that name.</exception>
    public string this[string key] => _texts.GetString(key, CultureInfo.InvariantCulture)
        ?? throw new MissingManifestResourceException($"There is no text '{key}' in {_language.Name}.");

    /// <summary>A text with its places filled; numbers are written as the language does.</summary>
    public string this[string key, params ReadOnlySpan<object?> places] => string.Format(_language.Numbers, this[key], places);
}
