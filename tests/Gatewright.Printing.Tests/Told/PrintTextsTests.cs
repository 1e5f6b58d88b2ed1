using System.Collections;
using System.Globalization;
using System.Resources;
using System.Text.RegularExpressions;
using Gatewright.Printing.Told;

namespace Gatewright.Printing.Tests.Told;

/// <summary>What holds of every text on paper, in both languages.</summary>
public partial class PrintTextsTests
{
    private static readonly Dictionary<string, string> English = Of("Gatewright.Printing.PrintTexts");
    private static readonly Dictionary<string, string> German = Of("Gatewright.Printing.PrintTexts.de");

    public static TheoryData<string> Keys => [.. English.Keys.Order(StringComparer.Ordinal)];

    [Fact]
    public void Both_languages_have_the_same() =>
        Assert.Equal(English.Keys.Order(StringComparer.Ordinal), German.Keys.Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Keys))]
    public void A_text_has_the_same_places_and_other_words(string key)
    {
        Assert.Equal(Places(English[key]), Places(German[key]));
        bool hasWords = Letters().IsMatch(Place().Replace(English[key], string.Empty));
        Assert.True(!hasWords || English[key] != German[key], key);
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void None_promises_that_anything_is_safe(string key)
    {
        Assert.DoesNotMatch(@"(?i)\bsafe(ly)?\b", English[key]);
        Assert.DoesNotMatch(@"(?i)\b(un)?(sicher(e[mnrs]?)?|gefahrlos|unbedenklich)\b", German[key]);
    }

    [Fact]
    public void Each_is_asked_for_somewhere()
    {
        string source = string.Concat(typeof(PrintTextsTests).Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith("source/", StringComparison.Ordinal))
            .Select(Embedded));
        Assert.DoesNotContain(English.Keys, key => !source.Contains($"\"{key}\"", StringComparison.Ordinal));
    }

    private static string Embedded(string name)
    {
        using var reader = new StreamReader(typeof(PrintTextsTests).Assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }

    private static IEnumerable<string> Places(string text) => Place().Matches(text).Select(m => m.Value).Distinct().Order();

    private static Dictionary<string, string> Of(string name) => new ResourceManager(name, typeof(PrintTexts).Assembly)
        .GetResourceSet(CultureInfo.InvariantCulture, true, false)!.Cast<DictionaryEntry>()
        .ToDictionary(e => (string)e.Key, e => (string)e.Value!);

    [GeneratedRegex(@"\{[0-9]\}")]
    private static partial Regex Place();

    [GeneratedRegex(@"\p{L}")]
    private static partial Regex Letters();
}
