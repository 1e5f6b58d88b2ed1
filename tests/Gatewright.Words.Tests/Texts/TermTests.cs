using System.Text.RegularExpressions;

namespace Gatewright.Words.Tests.Texts;

/// <summary>German keeps to the terms of docs/words.md.</summary>
public class TermTests
{
    private static readonly IReadOnlyList<(string English, string[] German)> Terms = [.. ExampleShed.Embedded("words.md")
        .Split('\n')
        .Where(line => line.StartsWith("| ", StringComparison.Ordinal))
        .Select(line => line.Split('|', StringSplitOptions.TrimEntries))
        .Where(cells => cells[1] != "English")
        .Select(cells => (cells[1], cells[2].Split(", ")))];

    public static TheoryData<string> Names => [.. Terms.Select(term => term.English)];

    [Fact]
    public void There_are_terms_to_keep_to() => Assert.True(Terms.Count >= 30);

    [Theory]
    [MemberData(nameof(Names))]
    public void A_term_is_one_word_throughout(string english)
    {
        string[] german = Terms.Single(term => term.English == english).German;
        List<string> keys = [.. TextTable.English.Where(text => Uses(text.Value, english)).Select(text => text.Key)];

        Assert.NotEmpty(keys);
        Assert.Empty(keys.Where(key => !german.Any(term => TextTable.German[key].Contains(term, StringComparison.OrdinalIgnoreCase)))
            .Select(key => $"{key}: {TextTable.German[key]}"));
    }

    [Theory]
    [InlineData("the gates of a boat", "gate", true)]
    [InlineData("a gateway", "gate", false)]
    public void A_term_is_a_whole_word(string text, string term, bool uses) => Assert.Equal(uses, Uses(text, term));

    private static bool Uses(string text, string term) => Regex.IsMatch(text, $@"(?i)\b{term}s?\b");
}
