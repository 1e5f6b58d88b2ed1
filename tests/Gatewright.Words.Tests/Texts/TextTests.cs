using System.Text.RegularExpressions;

namespace Gatewright.Words.Tests.Texts;

/// <summary>What holds of every text, whatever it says.</summary>
public partial class TextTests
{
    private static readonly IReadOnlyDictionary<string, string> English = TextTable.English;
    private static readonly IReadOnlyDictionary<string, string> German = TextTable.German;

    public static TheoryData<string> Keys => [.. English.Keys.Order(StringComparer.Ordinal)];

    [Fact]
    public void Both_languages_have_the_same_keys() =>
        Assert.Equal(English.Keys.Order(StringComparer.Ordinal), German.Keys.Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Keys))]
    public void A_text_has_the_same_places_in_both(string key) =>
        Assert.Equal(TextTable.Places(English[key]), TextTable.Places(German[key]));

    [Theory]
    [MemberData(nameof(Keys))]
    public void Places_are_numbers_and_nothing_else(string key) =>
        Assert.All(TextTable.Places(English[key]), place => Assert.Matches(@"^\{[0-9]\}$", place));

    [Theory]
    [MemberData(nameof(Keys))]
    public void A_text_ends_in_both_as_a_sentence_or_in_neither(string key) =>
        Assert.Equal(End().Match(English[key]).Value, End().Match(German[key]).Value);

    [Theory]
    [MemberData(nameof(Keys))]
    public void A_text_that_has_words_is_another_in_German(string key)
    {
        Assert.Equal(English[key].Trim(), English[key]);
        Assert.Equal(German[key].Trim(), German[key]);
        Assert.NotEmpty(German[key]);
        Assert.Equal(HasWords(English[key]), English[key] != German[key]);
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void No_text_promises_that_anything_is_safe(string key)
    {
        Assert.DoesNotMatch(@"(?i)\bsafe(ly)?\b", English[key]);
        Assert.DoesNotMatch(@"(?i)\b(un)?(sicher(e[mnrs]?)?|gefahrlos|unbedenklich)\b", German[key]);
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void Where_things_are_counted_there_is_one_and_there_are_many(string key)
    {
        if (key.EndsWith(".One", StringComparison.Ordinal))
        {
            Assert.Contains(key[..^3] + "Many", English.Keys);
            Assert.NotEqual(German[key], German[key[..^3] + "Many"]);
        }
        else if (key.EndsWith(".Many", StringComparison.Ordinal))
        {
            Assert.Contains(key[..^4] + "One", English.Keys);
        }
    }

    [Theory]
    [InlineData("{0}° ± {1}", false)]
    [InlineData("{0} mm", false)]
    [InlineData("{0} out", true)]
    public void Units_and_signs_are_no_words(string text, bool has) => Assert.Equal(has, HasWords(text));

    /// <summary>Letters beyond the unit that both languages share.</summary>
    private static bool HasWords(string text) => Letters().IsMatch(Unit().Replace(text, string.Empty));

    [GeneratedRegex(@"\p{L}")]
    private static partial Regex Letters();

    [GeneratedRegex(@"\{[0-9]\}|\bmm\b")]
    private static partial Regex Unit();

    [GeneratedRegex(@"[.:;,]?$")]
    private static partial Regex End();
}
