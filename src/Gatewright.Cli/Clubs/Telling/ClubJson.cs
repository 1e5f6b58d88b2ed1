using System.Text.Json;
using System.Text.Json.Serialization;
using Gatewright.Journal.Exchange;

namespace Gatewright.Cli.Clubs.Telling;

/// <summary>Writes the documents.</summary>
internal static class ClubJson
{
    private static readonly ClubJsonContext Context = new(WrittenJson.Options());

    public static string Of(ClubDocument document) => JsonSerializer.Serialize(document, document.GetType(), Context);
}

/// <summary>Generated at build time, so that writing needs no reflection.</summary>
[JsonSerializable(typeof(ClubsDocument))]
[JsonSerializable(typeof(ExportedDocument))]
[JsonSerializable(typeof(ImportedDocument))]
[JsonSerializable(typeof(RecordedDocument))]
[JsonSerializable(typeof(PrintedDocument))]
[JsonSerializable(typeof(StoreReportDocument))]
[JsonSerializable(typeof(ChangesDocument))]
[JsonSerializable(typeof(BoatDayDocument))]
[JsonSerializable(typeof(KeptChangesDocument))]
internal sealed partial class ClubJsonContext : JsonSerializerContext;
