using System.Text.RegularExpressions;

namespace Gatewright.Journal.Tests.Exchange;

/// <summary>A table of a page in docs, found by the first words of its header.</summary>
internal sealed partial class MarkdownTable
{
    private readonly string[] _columns;
    private readonly string[][] _rows;

    private MarkdownTable(string[] columns, string[][] rows) => (_columns, _rows) = (columns, rows);

    public IEnumerable<string> this[string column] => _rows.Select(r => r[Array.IndexOf(_columns, column)]);

    /// <summary>The words between backticks in each cell of a column.</summary>
    public IEnumerable<string[]> Codes(string column) =>
        this[column].Select(cell => Code().Matches(cell).Select(m => m.Groups[1].Value).ToArray());

    public static MarkdownTable Of(string page, string firstColumn)
    {
        string[] lines = Page(page).Split('\n');
        int header = Array.FindIndex(lines, l => l.StartsWith($"| {firstColumn} |", StringComparison.Ordinal));
        Assert.True(header >= 0, $"no table that begins with {firstColumn}");
        return new(Cells(lines[header]), [.. lines.Skip(header + 2).TakeWhile(l => l.StartsWith('|')).Select(Cells)]);
    }

    /// <summary>The fenced blocks of a kind.</summary>
    public static string[] Blocks(string page, string kind) =>
        [.. Regex.Matches(Page(page), $"```{kind}\n(.*?)```", RegexOptions.Singleline).Select(m => m.Groups[1].Value)];

    private static string Page(string page) =>
        File.ReadAllText(Path.Combine(Repository.Folder("docs"), page)).ReplaceLineEndings("\n");

    private static string[] Cells(string line) => [.. line.Trim().Trim('|').Split('|').Select(c => c.Trim())];

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex Code();
}
