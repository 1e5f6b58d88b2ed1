using System.Reflection;
using System.Text.RegularExpressions;

namespace Gatewright.Words.Tests.Texts;

/// <summary>Which texts the code asks for, as its sources name them.</summary>
public partial class UseTests
{
    private static readonly IReadOnlyList<string> Named = [.. Sources().SelectMany(source => Literals().Matches(source).Select(m => m.Groups["key"].Value)).Append("Figure.Date").Distinct()];

    [Fact]
    public void No_text_is_unused() => Assert.DoesNotContain(TextTable.English.Keys, key => !Named.Any(name => Asks(name, key)));

    [Fact]
    public void Every_text_that_is_named_is_there() =>
        Assert.DoesNotContain(Named, name => !TextTable.English.Keys.Any(key => Asks(name, key)));

    [Theory]
    [InlineData("Boat.Head", "Boat.Head", true)]
    [InlineData("Boat.Head", "Boat.HeadAgain", false)]
    [InlineData("Cause.{cause}", "Cause.PinAft", true)]
    [InlineData("Cause.{cause}", "Cause.PinAft.Aft", false)]
    [InlineData("Cause.{cause}", "Cause.Whatever", false)]
    [InlineData("Station.{station}.Phrase", "Station.Catch.Phrase", true)]
    [InlineData("Count.Gates", "Count.Gates.Many", true)]
    public void A_name_asks_for_the_texts_it_may_become(string name, string key, bool asks) => Assert.Equal(asks, Asks(name, key));

    /// <summary>What a place in a name may be filled with: Core's values, and the ways to come by a level.</summary>
    private static readonly string Values = string.Join('|', typeof(Core.Side).Assembly.GetTypes()
        .Where(type => type.IsEnum)
        .SelectMany(Enum.GetNames)
        .Concat(["ByEye", "BubbleCentred", "Read", "Rack"]));

    /// <summary>A name with a value in it asks for each value's text, one that counts for both of its texts.</summary>
    private static bool Asks(string name, string key) => Regex.IsMatch(
        key, $@"^{Hole().Replace(Regex.Escape(name).Replace("}", @"\}", StringComparison.Ordinal), $"(?:{Values})")}(\.(One|Many))?$");

    /// <summary>All but the one that looks them up and names none of its own but the pattern of a day.</summary>
    private static IEnumerable<string> Sources()
    {
        var tests = Assembly.GetExecutingAssembly();
        return tests.GetManifestResourceNames().Where(name => name.StartsWith("source/", StringComparison.Ordinal) && !name.EndsWith("/Language.cs", StringComparison.Ordinal)).Select(ExampleShed.Embedded);
    }

    /// <summary>A quoted name of parts with dots between, or what is counted or found by a value.</summary>
    [GeneratedRegex("\"(?<key>(?:[A-Z][A-Za-z]+|\\{[a-zA-Z.]+(?:\\([a-z]+\\))?\\})(?:\\.(?:[A-Z][A-Za-z]+|\\{[a-zA-Z.]+(?:\\([a-z]+\\))?\\}))+)\"")]
    private static partial Regex Literals();

    [GeneratedRegex(@"\\\{[^}]*\\\}")]
    private static partial Regex Hole();
}
