using Gatewright.Cli.Chances.Words;
using Gatewright.Cli.Speaking;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Learning;
using Gatewright.Words;

namespace Gatewright.Cli.Chances.InWords;

/// <summary>A table of chances in words alone.</summary>
internal static class ChancesStatements
{
    public static Statements Of(Told told)
    {
        var statements = new Statements();
        foreach (string sentence in ToldWords.Heading(told))
        {
            statements.Add(sentence);
        }

        foreach (InputProblem warning in told.Warnings)
        {
            statements.Add($"Warning: {warning}");
        }

        Section(statements, ToldWords.Chances, ChanceNumbers.Chances, told.Table);
        Section(statements, ToldWords.Weights, ChanceNumbers.Weights, told.Table);
        Section(statements, ToldWords.Reports, ChanceNumbers.Reports, told.Table);
        return statements;
    }

    private static void Section(Statements statements, string head, IReadOnlyList<ChanceNumber> numbers, ClubChances table)
    {
        statements.Pause();
        statements.Add($"{head}:");
        foreach (ChanceNumber number in numbers)
        {
            statements.Add($"{Sentence.Capital(number.Meaning)}: {NumberWords.Figure(number.Now(table))}. {Sentence.Capital(NumberWords.From(number, table))}.");
        }
    }
}
