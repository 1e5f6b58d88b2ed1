using System.Text;
using System.Text.Json;
using Gatewright.Journal.Entries;

namespace Gatewright.Replica.Copies;

/// <summary>
/// An own entry as the text a shelf keeps:
/// <c>{"state","seen":[ms,n],"right","number","code","reasons":[…],"entry":{…}}</c>, what is empty left out.
/// </summary>
internal static class OwnEntryJson
{
    private static readonly string[] States = ["unsent", "sent", "refused"];

    public static string Write(OwnEntry own)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream))
        {
            writer.WriteStartObject();
            writer.WriteString("state"u8, States[(int)own.State]);
            writer.WriteStartArray("seen"u8);
            writer.WriteNumberValue(own.Seen.Milliseconds);
            writer.WriteNumberValue(own.Seen.Counter);
            writer.WriteEndArray();
            writer.WriteBoolean("right"u8, own.IsTimeRight);
            if (own.Number is { } number)
            {
                writer.WriteNumber("number"u8, number);
            }

            if (own.Code is not null)
            {
                writer.WriteString("code"u8, own.Code);
                writer.WriteStartArray("reasons"u8);
                foreach (string reason in own.Reasons)
                {
                    writer.WriteStringValue(reason);
                }

                writer.WriteEndArray();
            }

            writer.WritePropertyName("entry"u8);
            EntryJson.Write(writer, own.Entry);
            writer.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer().AsSpan(0, (int)stream.Length));
    }

    /// <summary>Null for what cannot be read: a newer program may have written it.</summary>
    public static OwnEntry? Read(long place, string text)
    {
        try
        {
            using var document = JsonDocument.Parse(text);
            JsonElement root = document.RootElement;
            int state = Array.IndexOf(States, root.GetProperty("state"u8).GetString());
            JsonElement seen = root.GetProperty("seen"u8);
            Entry? entry = EntryJson.Read(Encoding.UTF8.GetBytes(root.GetProperty("entry"u8).GetRawText()), out _);
            return entry is null || state < 0 ? null : new()
            {
                Place = place,
                Entry = entry,
                Seen = new(seen[0].GetInt64(), seen[1].GetInt32()),
                IsTimeRight = root.GetProperty("right"u8).GetBoolean(),
                State = (OwnState)state,
                Number = root.TryGetProperty("number"u8, out JsonElement number) ? number.GetInt64() : null,
                Code = root.TryGetProperty("code"u8, out JsonElement code) ? code.GetString() : null,
                Reasons = root.TryGetProperty("reasons"u8, out JsonElement reasons)
                    ? [.. reasons.EnumerateArray().Select(r => r.GetString()!)]
                    : [],
            };
        }
        catch (Exception broken) when (broken is JsonException or KeyNotFoundException or InvalidOperationException or FormatException or IndexOutOfRangeException)
        {
            return null;
        }
    }
}
