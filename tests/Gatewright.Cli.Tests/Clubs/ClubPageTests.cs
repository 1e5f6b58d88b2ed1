using System.CommandLine;
using System.Reflection;
using System.Text.Json;
using System.Text.RegularExpressions;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Tests.Clubs;

/// <summary>docs/club.md and the README against the program.</summary>
public sealed partial class ClubPageTests
{
    /// <summary>The objects of the documents, by their heading on the page.</summary>
    private static readonly Dictionary<string, Type> Objects = new()
    {
        ["list"] = typeof(ClubsDocument),
        ["a club of the list"] = typeof(ListedClub),
        ["export"] = typeof(ExportedDocument),
        ["import"] = typeof(ImportedDocument),
        ["record"] = typeof(RecordedDocument),
        ["print"] = typeof(PrintedDocument),
        ["verify, backup, restore"] = typeof(StoreReportDocument),
        ["changes"] = typeof(ChangesDocument),
        ["a thing that changed"] = typeof(ChangedThing),
        ["a field that changed"] = typeof(ChangedField),
        ["what was recorded"] = typeof(ToldFact),
        ["day"] = typeof(BoatDayDocument),
        ["a field on that day"] = typeof(StatedField),
        ["kept changes"] = typeof(KeptChangesDocument),
        ["a kept change"] = typeof(KeptChange),
        ["a step of it"] = typeof(KeptStep),
        ["what to read again"] = typeof(KeptReading),
        ["a finding"] = typeof(ListedFinding),
    };

    [Fact]
    public void The_page_has_every_key_of_every_document_in_order()
    {
        var page = new Dictionary<string, List<string>>();
        List<string> keys = [];
        foreach (string line in File.ReadLines("docs/club.md"))
        {
            if (line.StartsWith("### ", StringComparison.Ordinal))
            {
                page.Add(line[4..], keys = []);
            }
            else if (Key().Match(line) is { Success: true } key)
            {
                keys.Add(key.Groups[1].Value);
            }
        }

        Assert.Equal(Objects.Keys.Order(StringComparer.Ordinal), page.Keys.Order(StringComparer.Ordinal));
        Assert.All(Objects, o => Assert.Equal(Keys(o.Value), page[o.Key]));
    }

    [Fact]
    public void The_readme_has_every_command()
    {
        RootCommand root = Program.Commands(new(Stream.Null, false, TextWriter.Null, TextWriter.Null, Colours.None, null));
        List<string> rows = [.. File.ReadLines("README.md").Select(line => Row().Match(line)).Where(m => m.Success).Select(m => m.Groups[1].Value)];
        Assert.Equal(root.Subcommands.Select(c => c.Name).Order(StringComparer.Ordinal), rows.Order(StringComparer.Ordinal));
    }

    private static IEnumerable<string> Keys(Type type)
    {
        IEnumerable<string> own = type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)
            .Select(p => JsonNamingPolicy.CamelCase.ConvertName(p.Name));
        return type.IsSubclassOf(typeof(ClubDocument)) ? own.Prepend("format") : own;
    }

    [GeneratedRegex(@"^\| `([A-Za-z]+)` \|")]
    private static partial Regex Key();

    [GeneratedRegex(@"^\| `gatewright ([a-z]+)[^`]*` \|")]
    private static partial Regex Row();
}
