using System.Text.Json;
using System.Text.Json.Serialization;

namespace Gatewright.Journal.Exchange.Check;

/// <summary>Writes the documents as JSON: the same document always gives the same bytes.</summary>
public static class CheckJson
{
    private static readonly CheckJsonContext Context = new(WrittenJson.Options());

    /// <summary>A check as JSON text, without a line end.</summary>
    public static string Text(CheckDocument document) => JsonSerializer.Serialize(document, Context.CheckDocument);

    /// <summary>Rigs as JSON text, without a line end.</summary>
    public static string Text(RigDocument document) => JsonSerializer.Serialize(document, Context.RigDocument);

    /// <summary>Targets as JSON text, without a line end.</summary>
    public static string Text(TargetsDocument document) => JsonSerializer.Serialize(document, Context.TargetsDocument);

    /// <summary>Oars as JSON text, without a line end.</summary>
    public static string Text(OarsDocument document) => JsonSerializer.Serialize(document, Context.OarsDocument);

    /// <summary>Problems as JSON text, without a line end.</summary>
    public static string Text(ProblemsDocument document) => JsonSerializer.Serialize(document, Context.ProblemsDocument);
}

/// <summary>Generated at build time, so that writing needs no reflection: the program starts sooner and can be trimmed.</summary>
[JsonSerializable(typeof(CheckDocument))]
[JsonSerializable(typeof(RigDocument))]
[JsonSerializable(typeof(TargetsDocument))]
[JsonSerializable(typeof(OarsDocument))]
[JsonSerializable(typeof(ProblemsDocument))]
internal sealed partial class CheckJsonContext : JsonSerializerContext;
