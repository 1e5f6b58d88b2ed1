using Gatewright.Core;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Printing.Paper;
using Gatewright.Printing.Sheds;

namespace Gatewright.Printing.RoundSheets;

/// <summary>A blank round: boxes for a pencil, boat by boat in the order of the walk, for a day without a phone.</summary>
public static class RoundSheetPrint
{
    /// <summary>Boats in the order in which they are walked past: rack by rack.</summary>
    public static IReadOnlyList<BoatStanding> InOrder(Club club, IReadOnlyList<BoatStanding> boats) =>
        [.. RackOfBoats.Of(club, boats).SelectMany(rack => rack.Boats)];

    /// <summary>The sheet.</summary>
    /// <param name="club">The club.</param>
    /// <param name="boats">The boats to be read; one whose class is not known has no gates, and a line that says so.</param>
    /// <param name="stations">The stations to be read.</param>
    /// <param name="imprint">The language, the day, the club's name.</param>
    /// <exception cref="Faces.MissingFaceException">There is no typeface on this machine.</exception>
    public static byte[] Of(Club club, IReadOnlyList<BoatStanding> boats, IReadOnlyList<Station> stations, Imprint imprint)
    {
        ArgumentNullException.ThrowIfNull(imprint);
        IReadOnlyList<RackOfBoats> racks = RackOfBoats.Of(club, boats);
        return Press.Print(imprint, imprint.Texts["Title.Round"], book =>
        {
            if (boats.Count == 0)
            {
                EmptyPage.Draw(book, "Empty.Shed");
            }
            else
            {
                new RoundSheetPage(book, club, racks, [.. Stations.All.Where(stations.Contains)]).Draw();
            }

            Frame.Finish(book);
        });
    }
}
