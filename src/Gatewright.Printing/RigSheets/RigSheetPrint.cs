using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Printing.Paper;

namespace Gatewright.Printing.RigSheets;

/// <summary>Rig sheets: A4, a boat a page.</summary>
public static class RigSheetPrint
{
    /// <summary>The sheets of some boats, in their order.</summary>
    /// <param name="club">The club.</param>
    /// <param name="boats">The boats as they stand.</param>
    /// <param name="imprint">The language, the day, the club's name.</param>
    /// <returns>A PDF; a page that says so where there is no boat.</returns>
    /// <exception cref="Faces.MissingFaceException">There is no typeface on this machine.</exception>
    public static byte[] Of(Club club, IReadOnlyList<BoatStanding> boats, Imprint imprint)
    {
        ArgumentNullException.ThrowIfNull(imprint);
        IReadOnlyList<RigSheet> sheets = RigSheet.Of(club, boats, imprint);
        return Press.Print(imprint, imprint.Texts["Title.Sheet"], book =>
        {
            foreach (RigSheet sheet in sheets)
            {
                new RigSheetPage(book, sheet).Draw();
            }

            if (sheets.Count == 0)
            {
                EmptyPage.Draw(book, "Empty.Boats");
            }

            Frame.Finish(book);
        });
    }
}
