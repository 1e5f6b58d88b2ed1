namespace Gatewright.Core.Tests.Support;

/// <summary>The pages on the method, as far as they are tables.</summary>
internal static class MethodPage
{
    /// <summary>The rows of the first table under a heading, cell by cell, without the table's own heading.</summary>
    /// <exception cref="ArgumentException">There is no such heading, or its table has another number of rows.</exception>
    public static string[][] Table(string heading, int rows, string page = "method.md")
    {
        string[][] table =
        [
            .. Embedded.Lines($"docs/{page}")
                .SkipWhile(line => line.TrimStart('#').Trim() != heading)
                .Skip(1)
                .TakeWhile(line => line.Length == 0 || line[0] != '#')
                .SkipWhile(line => line.Length == 0 || line[0] != '|')
                .TakeWhile(line => line.Length > 0 && line[0] == '|')
                .Skip(2)
                .Select(line => line.Trim('|').Split('|').Select(cell => cell.Trim()).ToArray()),
        ];
        return table.Length == rows
            ? table
            : throw new ArgumentException($"The table under '{heading}' has {table.Length} rows, not {rows}.", nameof(heading));
    }
}
