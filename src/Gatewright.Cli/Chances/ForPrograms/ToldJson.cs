using System.Text.Json;
using System.Text.Json.Serialization;
using Gatewright.Cli.Chances.Words;
using Gatewright.Journal.Exchange.Check;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Learning;

namespace Gatewright.Cli.Chances.ForPrograms;

/// <summary>A table of chances for programs; docs/chances.md describes it.</summary>
/// <param name="Format">Always <c>gatewright.chances-told/1</c>.</param>
/// <param name="Did">What was done.</param>
/// <param name="File">The table's file; null for the defaults.</param>
/// <param name="KeptAs">Where the table as it was is kept; null when nothing was reset.</param>
/// <param name="Jobs">The jobs it has learnt from.</param>
/// <param name="Numbers">The numbers.</param>
/// <param name="Warnings">What was odd.</param>
internal sealed record ToldDocument(
    string Format, string Did, string? File, string? KeptAs, JobsDocument Jobs, IReadOnlyList<NumberDocument> Numbers, IReadOnlyList<CheckedProblem> Warnings);

/// <summary>How many jobs the table has learnt from, and how many this run added, met again and forgot.</summary>
internal sealed record JobsDocument(int Known, int Added, int Again, int Forgotten);

/// <summary>One number.</summary>
internal sealed record NumberDocument(
    string Key, string Meaning, double Value, double Start, double Default, string From, int? Checked, int? Found);

/// <summary>Writes the document.</summary>
internal static class ToldJson
{
    private static readonly ToldJsonContext s_context = new(WrittenJson.Options());

    public static string Of(Told told) => JsonSerializer.Serialize(
        new ToldDocument(
            "gatewright.chances-told/1",
            told switch { Told.Learnt => "learnt", Told.Reset => "reset", _ => "shown" },
            told.File,
            (told as Told.Reset)?.Copy,
            new(
                told.Table.Jobs.Count,
                (told as Told.Learnt)?.Added ?? 0,
                (told as Told.Learnt)?.Again ?? 0,
                (told as Told.Reset)?.Forgotten.Jobs.Count ?? 0),
            [.. ChanceNumbers.All.Select(number => Number(number, told.Table))],
            [.. told.Warnings.Select(CheckedProblem.Of)]),
        s_context.ToldDocument);

    private static NumberDocument Number(ChanceNumber number, ClubChances table)
    {
        (int isChecked, int? found, string thing) = NumberWords.Counted(number, table.Jobs.Found);
        return new(
            number.Key,
            number.Meaning,
            Math.Round(number.Now(table), 6, MidpointRounding.AwayFromZero),
            number.Get(table),
            number.Default,
            NumberWords.Source(number, table) switch { NumberSource.Learnt => "learnt", NumberSource.Set => "set", _ => "default" },
            thing.Length == 0 ? null : isChecked,
            found);
    }
}

/// <summary>Generated at build time, so that writing needs no reflection.</summary>
[JsonSerializable(typeof(ToldDocument))]
internal sealed partial class ToldJsonContext : JsonSerializerContext;
