using System.Text.Json;
using Gatewright.Journal.Learning;

namespace Gatewright.Journal.Exchange.ChancesFiles;

/// <summary>A club's table of chances as a JSON file.</summary>
/// <remarks>
/// The format is in docs/chances.md. What it leaves out keeps its default; comments and a comma after the last entry are
/// allowed. Writing leaves comments out.
/// </remarks>
public static class ChancesFile
{
    /// <summary>The format's name and version, which the file has to state.</summary>
    public const string Format = "gatewright.chances/1";

    /// <summary>The most bytes such a file may have: some hundred thousand jobs.</summary>
    private const int Longest = 33_554_432;

    /// <summary>Reads a table.</summary>
    /// <param name="name">The file, as messages call it.</param>
    /// <param name="content">Its bytes; left open.</param>
    public static ChancesInput Read(string name, Stream content)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(content);
        var report = new JsonReporter(name);
        using JsonDocument? document = JsonText.Parse(content, Longest, "a table of chances", report);
        ClubChances? table = document is null ? null : Interpret(document.RootElement, report);
        return new(report.Errors.Count == 0 ? table : null, report.Errors);
    }

    /// <summary>A table as the text of a file, with the line end that closes it: the same table always gives the same text.</summary>
    public static string Text(ClubChances table)
    {
        ArgumentNullException.ThrowIfNull(table);
        return ChancesDocument.Of(table).Text() + "\n";
    }

    private static ClubChances? Interpret(JsonElement root, JsonReporter report)
    {
        try
        {
            return new ChancesReader(report).Read(root);
        }
        catch (InvalidOperationException)
        {
            // JSON may escape half a surrogate pair, "\uD800"; the document holds it until somebody asks for the text.
            report.NotText();
            return null;
        }
    }
}
