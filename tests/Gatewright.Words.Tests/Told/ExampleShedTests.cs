using System.Globalization;
using System.Text.RegularExpressions;
using Gatewright.Core.Judging;

namespace Gatewright.Words.Tests.Told;

/// <summary>The example shed told in both languages.</summary>
public partial class ExampleShedTests
{
    private static readonly IReadOnlyList<string> English = ExampleShed.Everything(Wording.English);
    private static readonly IReadOnlyList<string> German = ExampleShed.Everything(Wording.German);

    /// <summary>English words that are no German ones; names of boats and racks are none of them.</summary>
    private static readonly string[] EnglishWords =
    [
        "the", "of", "and", "is", "it", "to", "at", "read", "reads", "reading", "readings", "not", "seat", "port", "starboard", "catch", "abeam",
        "finish", "good", "unsure", "adjust", "stop", "gate", "gates", "boat", "boats", "pin", "rigger", "insert", "probably", "with", "from",
        "than", "degrees", "inverted", "upright", "next", "about", "if", "shim", "washer", "level", "bow", "stern", "hull", "nothing",
    ];

    [Fact]
    public void The_shed_has_something_of_everything()
    {
        Assert.True(English.Count > 500, $"{English.Count} statements");
        Assert.Equal(Verdicts.All, ExampleShed.Shed.Boats.Select(boat => boat.Verdict.Verdict).Distinct().Order());
    }

    [Fact]
    public void Every_statement_is_told_in_German_as_well()
    {
        Assert.Equal(English.Count, German.Count);
        Assert.All(English.Zip(German), pair => Assert.Equal(pair.First.Length == 0, pair.Second.Length == 0));
        Assert.DoesNotContain(English.Zip(German), pair => pair.First.Length > 0 && pair.First == pair.Second);
    }

    [Fact]
    public void No_English_word_is_left_in_German() => Assert.All(
        German, statement => Assert.Empty(Words().Matches(statement).Select(m => m.Value).Intersect(EnglishWords)));

    [Fact]
    public void German_writes_a_decimal_comma() =>
        Assert.All(German, statement => Assert.DoesNotMatch(@"[0-9]\.[0-9]", Day().Replace(statement, string.Empty)));

    /// <summary>A place swapped or left out in one language would tell other numbers.</summary>
    [Fact]
    public void Both_tell_the_same_numbers() => Assert.All(
        English.Zip(German), pair => Assert.Equal(Numbers(pair.First, "."), Numbers(pair.Second, ",")));

    [Theory]
    [InlineData("2026-10-10: 3.5° and 4", ".")]
    [InlineData("4 und 3,5°, 10.10.2026", ",")]
    public void Numbers_are_found_in_either(string text, string point) => Assert.Equal([3.5, 4], Numbers(text, point));

    [Fact]
    public void No_place_is_left_open() => Assert.All(English.Concat(German), statement => Assert.DoesNotMatch(@"[{}]|  ", statement));

    private static List<double> Numbers(string statement, string point) =>
    [
        .. Number().Matches(Day().Replace(statement, string.Empty))
            .Select(m => double.Parse(m.Value.TrimEnd(',', '.').Replace(point, ".", StringComparison.Ordinal), CultureInfo.InvariantCulture))
            .Order(),
    ];

    [GeneratedRegex(@"\b[A-Za-zÄÖÜäöüß]+\b")]
    private static partial Regex Words();

    [GeneratedRegex(@"[0-9]{4}-[0-9]{2}-[0-9]{2}|[0-9]{2}\.[0-9]{2}\.[0-9]{4}")]
    private static partial Regex Day();

    [GeneratedRegex(@"[0-9]+(?:[.,][0-9]+)?")]
    private static partial Regex Number();
}
