using System.Text.Json;

namespace Gatewright.Journal.Entries;

/// <summary>An entry while its envelope is read: collects every problem before it says no.</summary>
internal sealed class EntryDraft
{
    private Guid? _id;
    private string? _club;
    private string? _member;
    private string? _device;
    private long? _milliseconds;
    private int? _counter;
    private string? _kind;
    private int? _version;
    private byte[]? _body;

    public List<string> Problems { get; } = [];

    public void Fill(ref Utf8JsonReader reader, ReadOnlySpan<byte> line)
    {
        if (!reader.Read() || reader.TokenType != JsonTokenType.StartObject)
        {
            throw new JsonException();
        }

        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            string name = reader.GetString()!;
            reader.Read();
            Take(name, ref reader, line);
        }

        if (reader.TokenType != JsonTokenType.EndObject || reader.Read())
        {
            throw new JsonException();
        }
    }

    public Entry? Finish()
    {
        Missing("id", _id is null);
        Missing("club", _club is null);
        Missing("member", _member is null);
        Missing("device", _device is null);
        Missing("ms", _milliseconds is null);
        Missing("n", _counter is null);
        Missing("kind", _kind is null);
        Missing("v", _version is null);
        Missing("body", _body is null);
        return Problems.Count > 0 ? null : new()
        {
            Id = _id!.Value,
            Club = _club!,
            Member = _member!,
            Device = _device!,
            Time = new(_milliseconds!.Value, _counter!.Value),
            Kind = _kind!,
            Version = _version!.Value,
            Body = _body!,
        };
    }

    private void Take(string name, ref Utf8JsonReader reader, ReadOnlySpan<byte> line)
    {
        switch (name)
        {
            case "id": _id = Id(ref reader); break;
            case "club": _club = Name(name, ref reader); break;
            case "member": _member = Name(name, ref reader); break;
            case "device": _device = Name(name, ref reader); break;
            case "kind": _kind = Name(name, ref reader); break;
            case "ms": _milliseconds = Number(name, ref reader, EntryLimits.LatestMilliseconds); break;
            case "n": _counter = (int)Number(name, ref reader, int.MaxValue); break;
            case "v": _version = (int)Number(name, ref reader, int.MaxValue); break;
            case "body": _body = Body(ref reader, line); break;
            default:
                Problems.Add($"\"{name}\" is not a field of an entry");
                reader.Skip();
                break;
        }
    }

    private Guid Id(ref Utf8JsonReader reader)
    {
        if (reader.TokenType == JsonTokenType.String && reader.TryGetGuid(out Guid id) && id.Version == 7)
        {
            return id;
        }

        Problems.Add("\"id\" must be a UUID of version 7");
        reader.Skip();
        return default;
    }

    /// <summary>Letters, digits and a few marks: what needs no escaping in a path, a header or a log.</summary>
    private string Name(string field, ref Utf8JsonReader reader)
    {
        if (reader.TokenType == JsonTokenType.String)
        {
            string value = reader.GetString()!;
            if (value.Length is > 0 and <= EntryLimits.Name && value.All(IsNameCharacter))
            {
                return value;
            }
        }

        Problems.Add($"\"{field}\" must be 1 to {EntryLimits.Name} letters, digits, '-', '_' or '.'");
        reader.Skip();
        return string.Empty;
    }

    private static bool IsNameCharacter(char c) => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.';

    private long Number(string field, ref Utf8JsonReader reader, long most)
    {
        if (reader.TokenType == JsonTokenType.Number && reader.TryGetInt64(out long value) && value >= 0 && value <= most)
        {
            return value;
        }

        Problems.Add($"\"{field}\" must be a whole number from 0 to {most}");
        reader.Skip();
        return 0;
    }

    private byte[] Body(ref Utf8JsonReader reader, ReadOnlySpan<byte> line)
    {
        int start = (int)reader.TokenStartIndex;
        bool isObject = reader.TokenType == JsonTokenType.StartObject;
        reader.Skip();
        int length = (int)reader.BytesConsumed - start;
        if (!isObject)
        {
            Problems.Add("\"body\" must be an object");
        }
        else if (length > EntryLimits.Body)
        {
            Problems.Add($"\"body\" has {length} bytes: at most {EntryLimits.Body} are taken");
        }

        return line.Slice(start, length).ToArray();
    }

    private void Missing(string field, bool missing)
    {
        if (missing)
        {
            Problems.Add($"\"{field}\" is missing");
        }
    }
}
