using Gatewright.Core;
using Gatewright.Core.Oars;
using Gatewright.Journal.Oars;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.Printing.RigSheets;

/// <summary>What is said of a boat's oars on paper.</summary>
internal sealed class OarTold(Imprint imprint, Club club)
{
    private readonly Wording _say = imprint.Say;
    private readonly Lazy<OarsView> _oars = new(() => new(club));

    /// <summary>The oars of a boat, a line each, from the bow; then since when they are rowed there, and who said so.</summary>
    public IEnumerable<string> Of(string boat)
    {
        IReadOnlyList<OarView> oars = _oars.Value.InBoat(boat);
        var since = oars.Where(o => o.Placed is not null)
            .GroupBy(o => (Day: Day.Of(o.Placed!), Who: imprint.NameOf(o.Placed!.Member)))
            .ToList();
        return [
            .. oars.Select(Line),
            .. since.Select(s => since.Count == 1
                ? imprint.Texts["Oar.Placed", _say.Language.Day(s.Key.Day), s.Key.Who]
                : imprint.Texts["Oar.PlacedSome", _say.Language.Day(s.Key.Day), s.Key.Who, string.Join(", ", s.Select(o => o.Title))]),
        ];
    }

    private string Line(OarView oar)
    {
        string place = (oar.Seat, oar.Side) switch
        {
            ({ } seat, { } side) => _say.Names.GateFirst(new GatePlace(seat, side)),
            (_, { } side) => Sentence.Capital(_say.Names.Side(side)),
            _ => imprint.Texts["Label.Oar"],
        };
        OarSetView? set = _oars.Value.SetOf(oar);
        string name = set is null ? oar.Title : imprint.Texts["Oar.OfSet", oar.Title, set.Title];
        IEnumerable<string> figures = OarItems.All.Select(item => Figure(item, oar.Oar[item])).OfType<string>();
        string line = $"{place}: {string.Join(", ", figures.Prepend(name))}.";
        return set?.VerdictOf(oar.Key) is { } verdict ? $"{line} {imprint.Texts["Oar.InSet", _say.Names.Verdict(verdict)]}" : line;
    }

    private string? Figure(OarItem item, OarFigure? figure) => figure is null
        ? null
        : imprint.Texts[
            item switch
            {
                OarItem.Sleeve => "Oar.Sleeve",
                OarItem.Length => "Oar.Length",
                OarItem.Inboard => "Oar.Inboard",
                _ => "Oar.Weight",
            },
            $"{_say.Figures.Degrees(figure.Value)} ± {_say.Figures.Degrees(figure.U, 2)}"];
}
