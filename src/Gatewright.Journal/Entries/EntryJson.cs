using System.Text;
using System.Text.Json;

namespace Gatewright.Journal.Entries;

/// <summary>
/// An entry as one JSON object: <c>{"id","club","member","device","ms","n","kind","v","body"}</c>, in that order when
/// written, in any when read. Fields that are not known are an error: an envelope that grows gets a new format.
/// </summary>
public static class EntryJson
{
    private static readonly JsonReaderOptions Strict = new() { MaxDepth = EntryLimits.Depth };

    /// <summary>Writes an entry; its body stands as it came.</summary>
    public static void Write(Utf8JsonWriter to, Entry entry)
    {
        ArgumentNullException.ThrowIfNull(to);
        ArgumentNullException.ThrowIfNull(entry);
        to.WriteStartObject();
        to.WriteString("id"u8, entry.Id);
        to.WriteString("club"u8, entry.Club);
        to.WriteString("member"u8, entry.Member);
        to.WriteString("device"u8, entry.Device);
        to.WriteNumber("ms"u8, entry.Time.Milliseconds);
        to.WriteNumber("n"u8, entry.Time.Counter);
        to.WriteString("kind"u8, entry.Kind);
        to.WriteNumber("v"u8, entry.Version);
        to.WritePropertyName("body"u8);
        to.WriteRawValue(entry.Body.Span, skipInputValidation: true);
        to.WriteEndObject();
    }

    /// <summary>An entry as one line of UTF-8, without the line's end.</summary>
    public static byte[] ToLine(Entry entry)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream))
        {
            Write(writer, entry);
        }

        return stream.ToArray();
    }

    /// <summary>Reads an entry, or says everything that is wrong with it.</summary>
    /// <param name="line">One JSON object.</param>
    /// <param name="problems">What is wrong; empty when an entry is returned.</param>
    public static Entry? Read(ReadOnlySpan<byte> line, out IReadOnlyList<string> problems)
    {
        var draft = new EntryDraft();
        problems = draft.Problems;
        if (line.Length > EntryLimits.Line)
        {
            draft.Problems.Add($"an entry of {line.Length} bytes: at most {EntryLimits.Line} are taken");
            return null;
        }

        try
        {
            var reader = new Utf8JsonReader(line, Strict);
            draft.Fill(ref reader, line);
        }
        catch (JsonException broken)
        {
            draft.Problems.Add($"not a JSON object at byte {broken.BytePositionInLine}: {Head(line)}");
            return null;
        }
        catch (InvalidOperationException)
        {
            // What the reader throws for text that is not UTF-8, or half a surrogate pair.
            draft.Problems.Add($"text that is not Unicode: {Head(line)}");
            return null;
        }

        return draft.Finish();
    }

    private static string Head(ReadOnlySpan<byte> line) =>
        Encoding.UTF8.GetString(line[..Math.Min(line.Length, 40)]);
}
