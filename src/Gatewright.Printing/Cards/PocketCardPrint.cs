using Gatewright.Journal.Replay;
using Gatewright.Journal.Standing;
using Gatewright.Printing.Paper;
using Gatewright.Printing.RigSheets;

namespace Gatewright.Printing.Cards;

/// <summary>Pocket cards: eight of 105 × 74 mm (A7) on an A4 sheet, to be cut along its lines.</summary>
public static class PocketCardPrint
{
    private const int Across = 2;
    private const int Down = 4;

    /// <summary>The cards of some boats, in their order.</summary>
    /// <param name="club">The club.</param>
    /// <param name="boats">The boats as they stand.</param>
    /// <param name="imprint">The language, the day, the club's name.</param>
    /// <exception cref="Faces.MissingFaceException">There is no typeface on this machine.</exception>
    public static byte[] Of(Club club, IReadOnlyList<BoatStanding> boats, Imprint imprint)
    {
        ArgumentNullException.ThrowIfNull(imprint);
        IReadOnlyList<RigSheet> sheets = RigSheet.Of(club, boats, imprint);
        return Press.Print(imprint, imprint.Texts["Title.Card"], book =>
        {
            foreach (RigSheet[] page in sheets.Chunk(Across * Down))
            {
                Leaf leaf = book.Add(PageFormat.A4);
                CutLines(leaf);
                for (int i = 0; i < page.Length; i++)
                {
                    new PocketCard(imprint, page[i]).Draw(leaf, i % Across * PocketCard.Width, i / Across * PocketCard.Height);
                }
            }

            if (sheets.Count == 0)
            {
                EmptyPage.Draw(book, "Empty.Boats");
                Frame.Finish(book);
            }
        });
    }

    private static void CutLines(Leaf leaf)
    {
        const double Edge = 5;
        leaf.Line(PocketCard.Width, Edge, PocketCard.Width, leaf.Format.Height - Edge, 0.1, isDashed: true);
        for (int row = 1; row < Down; row++)
        {
            leaf.Line(Edge, row * PocketCard.Height, leaf.Format.Width - Edge, row * PocketCard.Height, 0.1, isDashed: true);
        }
    }
}
