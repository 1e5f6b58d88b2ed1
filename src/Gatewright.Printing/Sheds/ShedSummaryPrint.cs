using Gatewright.Core.Measuring;
using Gatewright.Journal.Changing;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Printing.Paper;

namespace Gatewright.Printing.Sheds;

/// <summary>All boats by their racks, to hang beside the door: how each stands, when it was last read, which are held.</summary>
public static class ShedSummaryPrint
{
    /// <summary>The summary.</summary>
    /// <param name="club">The club.</param>
    /// <param name="boats">Its boats in use, as they stand.</param>
    /// <param name="imprint">The language, the day, the club's name.</param>
    /// <exception cref="Faces.MissingFaceException">There is no typeface on this machine.</exception>
    public static byte[] Of(Club club, IReadOnlyList<BoatStanding> boats, Imprint imprint)
    {
        ArgumentNullException.ThrowIfNull(imprint);
        IReadOnlyList<RackOfBoats> racks = RackOfBoats.Of(club, boats);
        ILookup<string, RigChange> changes = RigChanges.Of(club).Where(c => c.IsOpen(MeasuringSettings.Default)).ToLookup(c => c.Boat);
        return Press.Print(imprint, imprint.Texts["Title.Shed"], book =>
        {
            if (boats.Count == 0)
            {
                EmptyPage.Draw(book, "Empty.Shed");
            }
            else
            {
                new ShedSummaryPage(book, racks, changes).Draw();
            }

            Frame.Finish(book);
        });
    }
}
