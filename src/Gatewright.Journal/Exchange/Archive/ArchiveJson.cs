using System.Text.Json;

namespace Gatewright.Journal.Exchange.Archive;

/// <summary>The two small JSON members.</summary>
internal static class ArchiveJson
{
    public static byte[] Write(ArchiveHead head)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new() { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("format"u8, ArchiveFormat.Name);
            json.WriteString("club"u8, head.Club);
            json.WriteNumber("entries"u8, head.Entries);
            json.WriteNumber("last"u8, head.Last);
            json.WriteString("head"u8, head.Head);
            json.WriteString("program"u8, head.Program);
            json.WriteEndObject();
        }

        return stream.ToArray();
    }

    public static byte[] Write(IEnumerable<KeyValuePair<string, string>> blobTypes)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new() { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            foreach ((string hash, string type) in blobTypes)
            {
                json.WriteString(hash, type);
            }

            json.WriteEndObject();
        }

        return stream.ToArray();
    }

    public static ArchiveHead? ReadHead(byte[] bytes, ArchiveProblems problems) =>
        Unicode(ArchiveFormat.Club, problems, () => Head(bytes, problems));

    public static Dictionary<string, string> ReadTypes(byte[] bytes, ArchiveProblems problems) =>
        Unicode(ArchiveFormat.BlobTypes, problems, () => Types(bytes, problems)) ?? [];

    /// <summary>What is read, or nothing where it meets bytes that are no text, or half a surrogate pair.</summary>
    private static T? Unicode<T>(string member, ArchiveProblems problems, Func<T?> read)
        where T : class
    {
        try
        {
            return read();
        }
        catch (InvalidOperationException)
        {
            problems.Add(member, "text that is not Unicode");
            return null;
        }
    }

    private static ArchiveHead? Head(byte[] bytes, ArchiveProblems problems)
    {
        if (Root(bytes, ArchiveFormat.Club, problems) is not { } root)
        {
            return null;
        }

        string? format = Text(root, "format");
        if (format != ArchiveFormat.Name)
        {
            problems.Add(ArchiveFormat.Club, $"\"format\" is {(format is null ? "missing" : $"'{ShownText.Of(format)}'")}: expected {ArchiveFormat.Name}; use the program that wrote the file, or a later one");
            return null;
        }

        string? club = Text(root, "club");
        string? head = Text(root, "head");
        long? entries = Count(root, "entries");
        long? last = Count(root, "last");
        Expect(club is not null, "club", "the club's id", problems);
        Expect(head is not null && ArchiveFormat.IsHash(head), "head", "64 digits from 0 to 9 and a to f", problems);
        Expect(entries is not null, "entries", "the count of entries", problems);
        Expect(last is not null, "last", "the number of the last entry", problems);
        return club is not null && head is not null && entries is { } count && last is { } number
            ? new(club, count, number, head, Text(root, "program") ?? "")
            : null;
    }

    private static Dictionary<string, string> Types(byte[] bytes, ArchiveProblems problems)
    {
        var types = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (JsonProperty property in Root(bytes, ArchiveFormat.BlobTypes, problems)?.EnumerateObject() ?? default)
        {
            if (!ArchiveFormat.IsHash(property.Name) || property.Value.ValueKind != JsonValueKind.String
                || !Entries.EntryRules.PhotoTypes.Contains(property.Value.GetString()))
            {
                problems.Add(ArchiveFormat.BlobTypes, $"'{ShownText.Of(property.Name)}' is not a hash with its media type: expected one of {string.Join(", ", Entries.EntryRules.PhotoTypes)}");
            }
            else
            {
                types[property.Name] = property.Value.GetString()!;
            }
        }

        return types;
    }

    private static JsonElement? Root(byte[] bytes, string member, ArchiveProblems problems)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(bytes, new() { MaxDepth = 4, AllowDuplicateProperties = false });
            if (document.RootElement.ValueKind == JsonValueKind.Object)
            {
                return document.RootElement.Clone();
            }

            problems.Add(member, "not a JSON object");
        }
        catch (JsonException)
        {
            problems.Add(member, "not JSON, or a name in it stands twice");
        }

        return null;
    }

    private static string? Text(JsonElement root, string name) =>
        root.TryGetProperty(name, out JsonElement element) && element.ValueKind == JsonValueKind.String ? element.GetString() : null;

    private static long? Count(JsonElement root, string name) =>
        root.TryGetProperty(name, out JsonElement element) && element.ValueKind == JsonValueKind.Number
        && element.TryGetInt64(out long value) && value >= 0 ? value : null;

    private static void Expect(bool holds, string name, string expected, ArchiveProblems problems)
    {
        if (!holds)
        {
            problems.Add(ArchiveFormat.Club, $"\"{name}\" is missing or wrong: expected {expected}");
        }
    }
}
