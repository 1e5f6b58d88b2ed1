using System.Collections;
using System.Globalization;
using System.Resources;
using System.Text.RegularExpressions;

namespace Gatewright.Words.Tests.Texts;

/// <summary>The texts of a language as they stand in the assembly.</summary>
internal static partial class TextTable
{
    public static IReadOnlyDictionary<string, string> English { get; } = Of("Gatewright.Words.Texts");

    public static IReadOnlyDictionary<string, string> German { get; } = Of("Gatewright.Words.Texts.de");

    /// <summary>The places of a text, each once: "{0} {1}, {0}" → {0}, {1}.</summary>
    public static IEnumerable<string> Places(string text) => Place().Matches(text).Select(m => m.Value).Distinct().Order();

    private static Dictionary<string, string> Of(string name) =>
        new ResourceManager(name, typeof(Wording).Assembly)
            .GetResourceSet(CultureInfo.InvariantCulture, createIfNotExists: true, tryParents: false)!
            .Cast<DictionaryEntry>()
            .ToDictionary(entry => (string)entry.Key, entry => (string)entry.Value!);

    [GeneratedRegex(@"\{[^}]*\}")]
    private static partial Regex Place();
}
