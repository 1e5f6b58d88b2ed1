using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Mending;
using Gatewright.Core.Oars;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Oars;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.Journal.Exchange.Check;

/// <summary>The oars of a club as a document.</summary>
public static class OarsMapping
{
    /// <summary>All sets and oars in use.</summary>
    /// <param name="club">The club.</param>
    /// <param name="view">Its oars.</param>
    /// <param name="problems">What was odd in the file they come from.</param>
    public static OarsDocument Of(Club club, OarsView view, IReadOnlyList<CheckedProblem> problems)
    {
        ArgumentNullException.ThrowIfNull(view);
        var boats = new ThingTitles(club, Things.Boat);
        return new(
            OarsDocument.Name,
            [.. view.Sets.Select(Set)],
            [.. view.All.Where(o => !o.IsOutOfUse).Select(o => Oar(o, view.SetOf(o)?.Title, o.Boat is { } boat ? boats[boat] : null))],
            problems);
    }

    /// <summary>The oars that go best together.</summary>
    public static OarsMatchTold Of(MatchedOars? match, int count) => new(
        count,
        match is null ? null : [.. match.Oars.Select(o => o.Name)],
        match is null ? null : Four(match.Spread),
        Wording.English.Oars.Matched(match, count));

    private static OarTold Oar(OarView oar, string? set, string? boat) => new(
        oar.Title, set, oar.Side?.Word(), boat, oar.Seat, oar.Blade,
        Figure(oar.Oar.Sleeve), Figure(oar.Oar.Length), Figure(oar.Oar.Inboard), Figure(oar.Oar.Weight));

    private static OarFigureTold? Figure(OarFigure? figure) =>
        figure is null ? null : new(Four(figure.Value), Four(figure.U), figure.Day);

    private static OarSetTold Set(OarSetView set) => new(
        set.Title, set.Blade, set.Verdict?.Word(), [.. set.Judged.Where(j => j.Oars.Count > 0).Select(Item)]);

    private static OarItemTold Item(JudgedItem item) => new(
        item.Item.Word(),
        item.Worth.ToString().ToLowerInvariant(),
        item.Verdict?.Word(),
        Four(item.Median),
        Four(item.Range),
        item.Tolerance,
        [.. item.Oars.Select(o => Off(item, o))]);

    private static OarOffTold Off(JudgedItem item, JudgedOar oar)
    {
        // An outlier within the tolerance is none that anybody would mend: readings of one step are soon too much alike.
        bool isTold = oar.Verdict != Verdict.Good;
        return new(
            oar.Oar.Name,
            oar.Verdict.Word(),
            Four(oar.Off),
            Four(oar.OffU),
            Math.Round(oar.OutsideProbability, 6),
            oar.IsOutlier,
            isTold ? Wording.English.Oars.Off(item, oar) : null,
            isTold && item.Item == OarItem.Sleeve && item.Worth > SetWorth.Pair ? Turn(oar) : null);
    }

    private static SleeveTurnTold Turn(JudgedOar oar)
    {
        SleeveTurn turn = SleeveTurn.InLine(oar, RigDimensions.Default);
        return new(Four(turn.ToBowDegrees), Four(turn.RoundMm), turn.DiameterMm, Wording.English.Oars.Turn(oar.Oar.Name, turn));
    }

    /// <summary>Adding 0 turns −0 into 0.</summary>
    private static double Four(double value) => Math.Round(value, 4, MidpointRounding.AwayFromZero) + 0.0;
}
