using System.Text.Json;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Replica.Copies;

/// <summary>An entry of a journal with its number.</summary>
internal readonly record struct NumberedEntry(long Number, Recorded Recorded);

/// <summary>Reads lines as the server writes them, <c>{"number":…,"entry":{…}}</c> each.</summary>
internal static class NumberedLines
{
    /// <summary>Reads them all.</summary>
    /// <exception cref="FormatException">A line is not whole, or not what a server writes.</exception>
    public static List<NumberedEntry> Read(ReadOnlySpan<byte> lines)
    {
        var found = new List<NumberedEntry>();
        while (!lines.IsEmpty)
        {
            int end = lines.IndexOf((byte)'\n');
            if (end < 0)
            {
                // The server ends every line: what came was cut off.
                throw new FormatException("A line of the journal is not whole.");
            }

            if (end > 0)
            {
                found.Add(Line(lines[..end]));
            }

            lines = lines[(end + 1)..];
        }

        return found;
    }

    private static NumberedEntry Line(ReadOnlySpan<byte> line)
    {
        long number = 0;
        ReadOnlySpan<byte> body = default;
        try
        {
            var reader = new Utf8JsonReader(line);
            reader.Read();
            while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
            {
                bool isNumber = reader.ValueTextEquals("number"u8);
                bool isEntry = reader.ValueTextEquals("entry"u8);
                reader.Read();
                int start = (int)reader.TokenStartIndex;
                if (isNumber)
                {
                    number = reader.GetInt64();
                }

                reader.Skip();
                body = isEntry ? line[start..(int)reader.BytesConsumed] : body;
            }
        }
        catch (Exception broken) when (broken is JsonException or InvalidOperationException or FormatException)
        {
            throw new FormatException("A line of the journal cannot be read.", broken);
        }

        if (number <= 0 || EntryJson.Read(body, out _) is not { } entry)
        {
            throw new FormatException($"Entry {number} of the journal cannot be read.");
        }

        Fact? fact = FactKinds.Read(entry, out string? problem);
        return fact is null
            ? throw new FormatException($"Entry {number} of the journal cannot be read: {problem}")
            : new(number, new(entry, fact));
    }
}
