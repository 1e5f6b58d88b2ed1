using System.Collections;
using System.Globalization;
using System.Resources;
using Gatewright.App.Frame;

namespace Gatewright.App.Tests.Frame;

public class TextsTests
{
    /// <summary>The classes that name texts: each stands beside its resource files.</summary>
    public static TheoryData<Type> All =>
        [.. typeof(FrameTexts).Assembly.GetTypes().Where(t => t.Name.EndsWith("Texts", StringComparison.Ordinal) && t.IsClass && !t.IsGenericType)];

    [Theory]
    [MemberData(nameof(All))]
    public void Each_text_is_there_in_both_languages_with_the_same_places(Type texts)
    {
        Dictionary<string, string> english = Of(texts, CultureInfo.InvariantCulture);
        Dictionary<string, string> german = Of(texts, CultureInfo.GetCultureInfo("de"));

        Assert.NotEmpty(english);
        Assert.Equal(english.Keys.Order(StringComparer.Ordinal), german.Keys.Order(StringComparer.Ordinal));
        Assert.All(english, text => Assert.Equal(Places(text.Value), Places(german[text.Key])));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void No_two_names_differ_by_capitals_alone(Type texts) =>
        Assert.Equal(
            Of(texts, CultureInfo.InvariantCulture).Count,
            Of(texts, CultureInfo.InvariantCulture).Keys.Distinct(StringComparer.OrdinalIgnoreCase).Count());

    private static Dictionary<string, string> Of(Type texts, CultureInfo culture) =>
        new ResourceManager(texts).GetResourceSet(culture, true, false)!
            .Cast<DictionaryEntry>().ToDictionary(e => (string)e.Key, e => (string)e.Value!);

    private static IEnumerable<string> Places(string text) =>
        System.Text.RegularExpressions.Regex.Matches(text, @"\{\d").Select(m => m.Value).Distinct().Order(StringComparer.Ordinal);
}
