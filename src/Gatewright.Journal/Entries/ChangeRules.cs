using System.Globalization;
using Gatewright.Core.Changing;
using Gatewright.Core.Rig;
using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Entries;

/// <summary>The rules for a planned change: its steps set what a boat has, and it is read again where a boat can be read.</summary>
internal static class ChangeRules
{
    /// <summary>An eight of sculls with everything to be set has fewer steps, and fewer things to read again.</summary>
    internal const int Most = 300;

    private const int LargestFigure = 100_000;

    public static void Check(ChangePlanned change, RuleBook book)
    {
        book.Boat("boat", change.Boat);
        book.Key("job", change.Job);
        book.Text("rig", change.Rig, EntryRules.LongestText);
        book.Items("steps", change.Steps.Count, Most);
        book.Items("again", change.Again.Count, Most);
        foreach (PlannedStep? step in change.Steps.Take(Most))
        {
            FactRules.Present("steps", step, book);
            if (step is not null)
            {
                Check(step, book);
            }
        }

        foreach (ReadAgainAt? again in change.Again.Take(Most))
        {
            FactRules.Present("again", again, book);
            if (again is not null)
            {
                Check(again, change.Steps.Count, book);
            }
        }
    }

    private static void Check(PlannedStep step, RuleBook book)
    {
        book.Text("steps.text", step.Text, FactRules.LongestStep);
        book.Languages("steps.texts", step.Texts, FactRules.LongestStep);
        book.Seat(step.Seat);
        book.Items("steps.parts", step.Parts.Count);
        FactRules.Parts(step.Parts, book);
        book.Key("steps.rigger", step.Rigger);
        book.Key("steps.oar", step.Oar);
        book.Within("steps.value", step.Value, -LargestFigure, LargestFigure);
        book.Within("steps.u", step.U, 0, LargestFigure);
        book.Degrees("steps.insert", step.Insert, 90);
        if (step.Measure is { } word && RigMeasures.OfWord(word)?.Word() != word)
        {
            book.Say("steps.measure", word, $"give one of {string.Join(", ", RigMeasures.All.Select(m => m.Word()))}");
        }

        if ((step.Measure is null) != (step.Value is null) || (step.Value is null) != (step.U is null))
        {
            book.Say("steps.measure", step.Measure, "give measure, value and u together, or none of them");
        }
    }

    private static void Check(ReadAgainAt again, int steps, RuleBook book)
    {
        book.Seat(again.Seat);
        if (RigItems.OfWord(again.Item) is null)
        {
            book.Say("again.item", again.Item, $"give one of {string.Join(", ", RigItems.All.Select(i => i.Word()))}");
        }

        book.Within("again.from", again.From, -LargestFigure, LargestFigure);
        book.Within("again.to", again.To, -LargestFigure, LargestFigure);
        book.Items("again.after", again.After.Count, Most);
        foreach (int step in again.After.Where(s => s < 0 || s >= steps))
        {
            book.Say("again.after", step.ToString(CultureInfo.InvariantCulture), "give steps of the change, counted from 0");
        }
    }
}
