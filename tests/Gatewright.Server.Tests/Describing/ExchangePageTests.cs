using System.Reflection;
using System.Text;
using System.Text.RegularExpressions;
using Gatewright.Journal.Entries;
using Gatewright.Server.Syncing;

namespace Gatewright.Server.Tests.Describing;

/// <summary>docs/exchanging-entries.md says what the program does.</summary>
public sealed partial class ExchangePageTests
{
    private static readonly string Text = File.ReadAllText(Path.Combine(Root(), "docs", "exchanging-entries.md"));

    [Fact]
    public void Every_reason_to_refuse_has_its_row_and_no_other()
    {
        IEnumerable<string> codes = typeof(RefusalCode).GetFields(BindingFlags.Public | BindingFlags.Static)
            .Select(f => (string)f.GetRawConstantValue()!);
        string table = Text[Text.IndexOf("| code |", StringComparison.Ordinal)..Text.IndexOf("## Asking", StringComparison.Ordinal)];

        Assert.Equal(codes.Order(), Code().Matches(table).Select(m => m.Groups[1].Value).Order());
    }

    [Fact]
    public void Its_example_of_an_entry_is_one()
    {
        string line = Text.Split('\n').Single(l => l.StartsWith("{\"id\"", StringComparison.Ordinal));

        Entry? entry = EntryJson.Read(Encoding.UTF8.GetBytes(line), out IReadOnlyList<string> problems);

        Assert.Empty(problems);
        Assert.Empty(EntryRules.Problems(entry!));
        Assert.Equal(line, Encoding.UTF8.GetString(EntryJson.ToLine(entry!)));
    }

    [Theory]
    [InlineData("at most 5,000 lines", Push.MostLines)]
    [InlineData("8 MiB unpacked", Push.MostBytes >> 20)]
    [InlineData("at most 64 KiB", EntryLimits.Body >> 10)]
    [InlineData("1 to 64 letters", EntryLimits.Name)]
    public void Its_limits_are_those_of_the_program(string words, int limit)
    {
        Assert.Contains(words, Text.Replace('\n', ' '), StringComparison.Ordinal);
        Assert.Contains(limit.ToString("#,0", System.Globalization.CultureInfo.InvariantCulture), words, StringComparison.Ordinal);
    }

    [GeneratedRegex(@"^\| `([a-z-]+)` \|", RegexOptions.Multiline)]
    private static partial Regex Code();

    private static string Root()
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Gatewright.slnx")))
        {
            folder = Path.GetDirectoryName(folder)!;
        }

        return folder;
    }
}
