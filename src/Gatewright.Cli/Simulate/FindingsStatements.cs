using Gatewright.Cli.Drawing;
using Gatewright.Cli.Speaking;
using Gatewright.Words;

namespace Gatewright.Cli.Simulate;

/// <summary>What a simulation found, in words alone.</summary>
internal static class FindingsStatements
{
    public static Statements Of(SimulateRequest request, Findings findings)
    {
        var statements = new Statements();
        statements.Add(FindingsWords.What(request));
        statements.Pause();
        Ranking ranking = findings.Ranking;
        statements.Add($"True seat: first {FindingsWords.Percent(ranking.Seat)}, first or second {FindingsWords.Percent(ranking.SeatOfTwo)}.");
        statements.Add($"True cause: first {FindingsWords.Percent(ranking.Cause)}, first or second {FindingsWords.Percent(ranking.CauseOfTwo)}.");
        statements.Pause();
        statements.Add(FindingsWords.Prior);
        foreach (ReliabilityBand band in findings.Reliability.Bands)
        {
            statements.Add($"Called {FindingsWords.Band(band)}, on average {FindingsWords.Three(band.Stated)}: {Figures.Count(band.True.Of, "cause")}, "
                + $"{band.True.Hits} true, a share of {FindingsWords.True(band)}.");
        }

        statements.Add(FindingsWords.Brier(findings.Reliability));
        statements.Pause();
        foreach (ReadingCount count in findings.Reading)
        {
            statements.Add($"{Sentence.Capital(count.How)}: {FindingsWords.Mean(count.Readings)} readings, decided {FindingsWords.Percent(count.Decided)}, right {FindingsWords.Percent(count.Right)}.");
        }

        statements.Add(FindingsWords.Decided);
        return statements;
    }
}
