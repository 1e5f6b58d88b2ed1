using System.Data.Common;
using System.Text.Json;

namespace Gatewright.Store.Backup;

/// <summary>A column as both engines and a backup have it.</summary>
/// <param name="Name">Its name, the same everywhere.</param>
/// <param name="Type">What its values are in this program, nulls aside.</param>
/// <param name="StoreType">What the engine calls its type.</param>
/// <param name="IsCounted">Whether the engine gives out its values by counting.</param>
internal sealed record BackupColumn(string Name, Type Type, string StoreType, bool IsCounted)
{
    public void Write(Utf8JsonWriter json, DbDataReader row, int at)
    {
        json.WritePropertyName(Name);
        if (row.IsDBNull(at))
        {
            json.WriteNullValue();
        }
        else if (Type == typeof(JsonDocument))
        {
            using var document = JsonDocument.Parse(row.GetString(at));
            WriteInOrder(json, document.RootElement);
        }
        else if (Type == typeof(string))
        {
            json.WriteStringValue(row.GetString(at));
        }
        else if (Type == typeof(long) || Type == typeof(int))
        {
            json.WriteNumberValue(row.GetInt64(at));
        }
        else if (Type == typeof(bool))
        {
            json.WriteBooleanValue(row.GetBoolean(at));
        }
        else if (Type == typeof(byte[]))
        {
            json.WriteBase64StringValue((byte[])row.GetValue(at));
        }
        else if (Type == typeof(Guid))
        {
            json.WriteStringValue(row.GetGuid(at));
        }
        else if (Type == typeof(DateTimeOffset))
        {
            json.WriteStringValue(row.GetFieldValue<DateTimeOffset>(at).ToUniversalTime());
        }
        else
        {
            throw new NotSupportedException($"Column {Name} is of type {Type}, which a backup has no form for.");
        }
    }

    /// <exception cref="InvalidOperationException">The value is of another type; so is FormatException.</exception>
    public object Read(JsonElement value) =>
        value.ValueKind == JsonValueKind.Null ? DBNull.Value
        : Type == typeof(JsonDocument) ? value.GetRawText()
        : Type == typeof(string) ? value.GetString()!
        : Type == typeof(long) ? value.GetInt64()
        : Type == typeof(int) ? value.GetInt32()
        : Type == typeof(bool) ? value.GetBoolean()
        : Type == typeof(byte[]) ? value.GetBytesFromBase64()
        : Type == typeof(Guid) ? value.GetGuid()
        : Type == typeof(DateTimeOffset) ? value.GetDateTimeOffset().ToUniversalTime()
        : throw new NotSupportedException($"Column {Name} is of type {Type}, which a backup has no form for.");

    /// <summary>By name, since one engine keeps the order of a document's fields and the other its own.</summary>
    private static void WriteInOrder(Utf8JsonWriter json, JsonElement value)
    {
        switch (value.ValueKind)
        {
            case JsonValueKind.Object:
                json.WriteStartObject();
                foreach (JsonProperty property in value.EnumerateObject().OrderBy(p => p.Name, StringComparer.Ordinal))
                {
                    json.WritePropertyName(property.Name);
                    WriteInOrder(json, property.Value);
                }

                json.WriteEndObject();
                break;
            case JsonValueKind.Array:
                json.WriteStartArray();
                foreach (JsonElement item in value.EnumerateArray())
                {
                    WriteInOrder(json, item);
                }

                json.WriteEndArray();
                break;
            default:
                value.WriteTo(json);
                break;
        }
    }
}
