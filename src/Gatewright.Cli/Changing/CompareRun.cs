using Gatewright.Cli.Terminals;
using Gatewright.Core.Changing;
using Gatewright.Journal.Exchange.Changing;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Changing;

/// <summary>Compares two rigs and tells how they differ.</summary>
internal static class CompareRun
{
    private static readonly ComparedAs[] InOrder = [ComparedAs.Differs, ComparedAs.Untold, ComparedAs.OneSided, ComparedAs.NotTakenSince];

    public static Told? Told(KnownRigs rigs, string? boat, string? with, DateOnly? on, DateOnly? and)
    {
        if (rigs.Find("--boat", boat, on) is not { } first || rigs.Find(with is null ? "--boat" : "--with", with ?? boat, and) is not { } second)
        {
            return null;
        }

        if (first.Class.Rowing != second.Class.Rowing)
        {
            rigs.Refuse("--with", with, $"is a {second.Class}, and {first.Name} a {first.Class}: they have no rig in common.");
            return null;
        }

        var compared = RigComparison.Of(first, second, isSameBoat: with is null);
        bool differs = compared.Marks.Count > 0 || compared.Items.Any(i => i.As == ComparedAs.Differs);
        return new(ChangeJson.Text(ChangeMapping.Of(compared)), [.. Lines(compared, differs)], differs ? ExitStatus.Attention : ExitStatus.Good);
    }

    private static IEnumerable<string> Lines(RigComparison compared, bool differs)
    {
        yield return $"{English.Comparing.Head(compared)}.";
        if (!differs)
        {
            yield return English.Comparing.NoneDiffer;
        }

        foreach (ComparedMark mark in compared.Marks)
        {
            yield return English.Comparing.Of(mark);
        }

        foreach (ComparedAs kind in InOrder)
        {
            List<string> told = [.. compared.Items.Where(i => i.As == kind).Select(i => English.Comparing.Of(compared, i)).OfType<string>()];
            if (told.Count > 0)
            {
                yield return string.Empty;
                yield return $"{Words.Sentence.Capital(English.Comparing.As(kind))}:";
            }

            foreach (string line in told)
            {
                yield return line;
            }
        }

        yield return string.Empty;
        yield return $"{English.Comparing.Alike(compared.Items.Count(i => i.As == ComparedAs.Alike))}.";
    }
}
