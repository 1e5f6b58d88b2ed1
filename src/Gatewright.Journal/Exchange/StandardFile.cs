using System.Text.Json;
using Gatewright.Core.Judging;

namespace Gatewright.Journal.Exchange;

/// <summary>A club's own standard as a JSON file.</summary>
/// <remarks>The format is in docs/formats.md. Comments and a comma after the last entry are allowed: people write it by hand.</remarks>
public static class StandardFile
{
    /// <summary>The format's name and version, which the file has to state.</summary>
    public const string Format = "gatewright.standard/1";

    /// <summary>The most bytes such a file may have: some two hundred times what a full one needs.</summary>
    private const int Longest = 65_536;

    /// <summary>Reads a standard.</summary>
    /// <param name="name">The file, as messages call it.</param>
    /// <param name="content">Its bytes; left open.</param>
    public static StandardInput Read(string name, Stream content)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(content);
        var report = new JsonReporter(name);
        using JsonDocument? document = JsonText.Parse(content, Longest, "a standard", report);
        Standard? standard = document is null ? null : Interpret(document.RootElement, report);
        return new(report.Errors.Count == 0 ? standard : null, report.Errors, report.Warnings);
    }

    private static Standard? Interpret(JsonElement root, JsonReporter report)
    {
        try
        {
            return new StandardReader(report).Read(root);
        }
        catch (InvalidOperationException)
        {
            // JSON may escape half a surrogate pair, "\uD800"; the document holds it until somebody asks for the text.
            report.NotText();
            return null;
        }
    }
}
