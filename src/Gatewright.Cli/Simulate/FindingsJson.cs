using System.Text.Json;
using System.Text.Json.Serialization;
using Gatewright.Core;

namespace Gatewright.Cli.Simulate;

/// <summary>A simulation for programs; docs/check-format.md describes it.</summary>
/// <param name="Format">Always <c>gatewright.simulate/1</c>.</param>
/// <param name="Boats">How many were drawn.</param>
/// <param name="Class">Their class.</param>
/// <param name="Stations">Where each gate was read.</param>
/// <param name="Seed">The seed.</param>
/// <param name="Ranking">How often the truth came first.</param>
/// <param name="Reliability">Bands of probability, from improbable to probable.</param>
/// <param name="Brier">The Brier score.</param>
/// <param name="BrierUnread">The score of stating what is usual.</param>
/// <param name="Reading">Ways of reading.</param>
internal sealed record SimulateDocument(
    string Format,
    int Boats,
    string Class,
    IReadOnlyList<string> Stations,
    int Seed,
    RankingDocument Ranking,
    IReadOnlyList<BandDocument> Reliability,
    FigureDocument Brier,
    FigureDocument BrierUnread,
    IReadOnlyList<ReadingDocument> Reading);

/// <summary>Shares of the boats.</summary>
internal sealed record RankingDocument(FigureDocument Seat, FigureDocument SeatOfTwo, FigureDocument Cause, FigureDocument CauseOfTwo);

/// <summary>A figure and its standard error.</summary>
internal sealed record FigureDocument(double Value, double Error);

/// <summary>Causes called about as probable; the error is that of the true share if they are.</summary>
internal sealed record BandDocument(double From, double To, int Causes, int True, double Stated, double Error);

/// <summary>One way of reading.</summary>
internal sealed record ReadingDocument(string How, FigureDocument Readings, FigureDocument Decided, FigureDocument Right);

/// <summary>Writes the document.</summary>
internal static class FindingsJson
{
    public static string Of(SimulateRequest request, Findings findings) => JsonSerializer.Serialize(
        new SimulateDocument(
            "gatewright.simulate/1",
            request.Boats,
            request.Class.Name,
            [.. request.Stations.Select(s => s.Word())],
            request.Seed,
            new(
                Figure(findings.Ranking.Seat),
                Figure(findings.Ranking.SeatOfTwo),
                Figure(findings.Ranking.Cause),
                Figure(findings.Ranking.CauseOfTwo)),
            [.. findings.Reliability.Bands.Select(b => new BandDocument(b.From, b.To, b.True.Of, b.True.Hits, Six(b.Stated), Six(b.Error)))],
            Figure(findings.Reliability.Brier),
            Figure(findings.Reliability.Unread),
            [.. findings.Reading.Select(r => new ReadingDocument(r.How, Figure(r.Readings), Figure(r.Decided), Figure(r.Right)))]),
        SimulateJsonContext.Default.SimulateDocument);

    private static FigureDocument Figure(Counted counted) => new(Six(counted.Share), Six(counted.Error));

    private static FigureDocument Figure(Averaged averaged) => new(Six(averaged.Value), Six(averaged.Error));

    private static double Six(double value) => Math.Round(value, 6, MidpointRounding.AwayFromZero);
}

/// <summary>Generated at build time, so that writing needs no reflection.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true, NewLine = "\n")]
[JsonSerializable(typeof(SimulateDocument))]
internal sealed partial class SimulateJsonContext : JsonSerializerContext;
