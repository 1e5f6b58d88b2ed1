using Gatewright.App.Frame;
using Gatewright.Core.Oars;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Oars;
using Gatewright.Words;
using Gatewright.Words.TheOars;

namespace Gatewright.App.Keeping.Oars;

/// <summary>How oars are told of on these pages.</summary>
internal static class OarsSaid
{
    /// <summary>The sentences.</summary>
    public static Wording Words => Said.Words;

    /// <summary>A figure as it is shown: "−0.5°", "376.0 cm".</summary>
    public static string Figure(OarItem item, double value) => Number(item, value) + OarWords.Unit(item);

    /// <summary>A figure with its uncertainty: "−0.5 ± 0.7°", "376.0 ± 0.2 cm".</summary>
    public static string Figure(OarItem item, OarFigure figure) => Figure(item, figure.Value, figure.U);

    /// <summary>A value with its standard uncertainty: "−0.5 ± 0.7°", "376.0 ± 0.2 cm".</summary>
    public static string Figure(OarItem item, double value, double u) => $"{Number(item, value)} ± {Number(item, u)}{OarWords.Unit(item)}";

    /// <summary>The bare number.</summary>
    public static string Number(OarItem item, double value) => Figures.Text(
        Math.Round((decimal)value, item == OarItem.Weight ? 2 : 1, MidpointRounding.AwayFromZero), item == OarItem.Weight ? "0.00" : "0.0");

    /// <summary>As it was entered.</summary>
    public static string Entered(OarRead read) => Figures.Text(read.Value, "0.0##") + (read.Item switch
    {
        OarItem.Sleeve => "°",
        OarItem.Weight => " kg",
        _ => " " + (read.Unit ?? "cm"),
    });

    /// <summary>An oar within its set, where its set need not be said again: of "Alluvium" the "Alluvium 5" is "5".</summary>
    public static string Within(OarSetView set, OarView oar)
    {
        string name = oar.Name ?? oar.Title;
        return name.StartsWith(set.Title, StringComparison.OrdinalIgnoreCase) && name[set.Title.Length..].Trim() is { Length: > 0 } rest ? rest : name;
    }

    /// <summary>Where an oar is rowed: "Hornbeam, seat 3, port"; null where that is not said.</summary>
    public static string? Place(OarView oar, string boat, Texts<OarsTexts> texts)
    {
        string? side = oar.Side is { } known ? Words.Names.Side(known) : null;
        return (oar.Boat, oar.Seat) switch
        {
            (null, _) => side,
            (_, null) => side is null ? boat : $"{boat}, {side}",
            (_, { } seat) => side is null ? $"{boat}, {texts["SeatNo", seat]}" : $"{boat}, {texts["SeatNo", seat]}, {side}",
        };
    }

    /// <summary>A blade's shape: the trade's words in the language here, any other as it was written.</summary>
    public static string Blade(string? blade, Texts<OarsTexts> texts) => blade switch
    {
        null => string.Empty,
        BladeShapes.Cleaver => texts["cleaver"],
        BladeShapes.Macon => texts["macon"],
        _ => blade,
    };
}
