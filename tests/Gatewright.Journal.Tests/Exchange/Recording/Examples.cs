using Gatewright.Journal.Exchange;

namespace Gatewright.Journal.Tests.Exchange.Recording;

/// <summary>The files in examples, and what their page says of them.</summary>
internal static class Examples
{
    public static ReadingsInput Read(string file) => Csv.Read(File.ReadAllBytes(Path.Combine(Repository.Folder("examples"), file)));

    /// <summary>The verdict that the page's tables give each boat, the first where two files have one of that name: the shed comes first.</summary>
    public static Dictionary<string, string> Verdicts() => File.ReadLines(Path.Combine(Repository.Folder("examples"), "README.md"))
        .Select(line => line.Split('|', StringSplitOptions.TrimEntries))
        .Where(cells => cells is [_, not "", _, _, "good" or "unsure" or "adjust" or "stop", ..])
        .DistinctBy(cells => cells[1])
        .ToDictionary(cells => cells[1], cells => cells[4]);
}
