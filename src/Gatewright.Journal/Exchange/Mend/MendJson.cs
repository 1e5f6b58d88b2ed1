using System.Text.Json;
using System.Text.Json.Serialization;

namespace Gatewright.Journal.Exchange.Mend;

/// <summary>Writes plans as JSON, the same plan always as the same bytes, and reads what a server has written.</summary>
public static class MendJson
{
    private static readonly MendJsonContext Context = new(WrittenJson.Options());

    /// <summary>A plan as JSON text, without a line end.</summary>
    public static string Text(MendDocument document) => JsonSerializer.Serialize(document, Context.MendDocument);

    /// <summary>A club's plan as JSON text, without a line end.</summary>
    public static string Text(ClubPlan plan) => JsonSerializer.Serialize(plan, Context.ClubPlan);

    /// <summary>A club's plan from JSON text; null where it is none.</summary>
    public static ClubPlan? Read(string text)
    {
        try
        {
            return JsonSerializer.Deserialize(text, Context.ClubPlan);
        }
        catch (JsonException)
        {
            return null;
        }
    }
}

/// <summary>Generated at build time, so that writing needs no reflection.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(MendDocument))]
[JsonSerializable(typeof(ClubPlan))]
internal sealed partial class MendJsonContext : JsonSerializerContext;
