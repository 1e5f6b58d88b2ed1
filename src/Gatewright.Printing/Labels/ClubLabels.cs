using System.Globalization;
using Gatewright.Core;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Oars;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;

namespace Gatewright.Printing.Labels;

/// <summary>
/// The labels of a club's things. A code that the club has set stands on the label as it is; else the address of the thing's
/// page, which any phone's camera opens, where an address is known; else the thing's key. The app's scan takes each of them.
/// </summary>
/// <param name="club">The club.</param>
/// <param name="imprint">The language.</param>
/// <param name="address">Where the club's server is: "https://gates.example"; null for codes without an address.</param>
public sealed class ClubLabels(Club club, Imprint imprint, string? address)
{
    private const string App = "/app/";

    /// <summary>The labels of a kind.</summary>
    /// <param name="kind">What for.</param>
    /// <param name="boats">The boats meant, for boats and seats.</param>
    public IReadOnlyList<Label> Of(LabelKind kind, IReadOnlyList<BoatStanding> boats) => kind switch
    {
        LabelKind.Boats => [.. boats.Select(b => Boat(b.View))],
        LabelKind.Seats => [.. boats.SelectMany(b => Seats(b.View))],
        LabelKind.Racks => [.. RackView.All(club).Select(Rack)],
        _ => [.. Oars()],
    };

    private Label Boat(BoatView boat)
    {
        string typed = boat.Properties["code"] is { Length: > 0 } code ? code : boat.Key;
        return new(boat.Name, boat.Class?.Name ?? string.Empty, Code(boat.Properties["code"], $"boat/{Uri.EscapeDataString(boat.Key)}", boat.Key), typed);
    }

    private IEnumerable<Label> Seats(BoatView boat) => BoatGates.Of(club, boat).GroupBy(g => g.Seat).Select(seat =>
    {
        GatePlace gate = seat.First();
        string key = Things.SeatKey(boat.Key, gate.Seat);
        string page = string.Create(CultureInfo.InvariantCulture, $"boat/{Uri.EscapeDataString(boat.Key)}/gate/{gate.Seat}/{gate.Side.Word()}");
        string side = seat.Count() == 1 ? imprint.Say.Names.Side(gate.Side) : string.Empty;
        return new Label(
            imprint.Texts["Label.Seat", gate.Seat],
            string.Join(" · ", new[] { boat.Name, side }.Where(part => part.Length > 0)),
            Code(null, page, key),
            key);
    });

    private Label Rack(RackView rack)
    {
        string? code = new ThingView(club, Things.Rack, rack.Key)["code"];
        return new(rack.Title, imprint.Texts["Label.Rack"], Code(code, $"racks/{Uri.EscapeDataString(rack.Key)}", rack.Key), code is { Length: > 0 } ? code : rack.Key);
    }

    private IEnumerable<Label> Oars()
    {
        var oars = new OarsView(club);
        return oars.Sets.Append(oars.Loose).SelectMany(set => set.Oars.Select(oar => new Label(
            oar.Title,
            set.Key is null ? imprint.Texts["Label.Oar"] : imprint.Texts["Label.OarOf", set.Title],
            Code(null, $"oars/{Uri.EscapeDataString(oar.Key)}", oar.Key),
            oar.Key)));
    }

    private string Code(string? set, string page, string key) =>
        set is { Length: > 0 } ? set : address is { Length: > 0 } ? $"{address.TrimEnd('/')}{App}{page}" : key;
}
