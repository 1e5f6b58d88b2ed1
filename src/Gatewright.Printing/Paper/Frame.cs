using Gatewright.Printing.Drawn;

namespace Gatewright.Printing.Paper;

/// <summary>What stands around every A4 page: the plumb line at its side, whose word comes first, and which page it is.</summary>
/// <remarks>
/// Nothing stands within 10 mm of the edge: most printers reach to 5, and a page is often printed a little off.
/// </remarks>
internal static class Frame
{
    /// <summary>Where text begins, from the left.</summary>
    public const double Left = 21;

    /// <summary>Where it ends.</summary>
    public const double Right = 197;

    /// <summary>Its width.</summary>
    public const double Width = Right - Left;

    /// <summary>Where the first line's capitals begin, from the top.</summary>
    public const double Top = 12;

    private const double FootLine = 286;

    /// <summary>A page with its plumb line.</summary>
    public static Leaf Begin(Book book)
    {
        Leaf leaf = book.Add(PageFormat.A4);
        PlumbLine.Draw(leaf, 14.5, Top, FootLine);
        leaf.Text(book.Imprint.Club, Left, Top + 3, Lettering.Note);
        leaf.Text(book.Title, Right, Top + 3, Lettering.NoteBold, Align.Right);
        return leaf;
    }

    /// <summary>Where what stands on a page has to end.</summary>
    public static double Bottom(Leaf leaf) => FootLine - Lettering.Fine.LineMm - 1.4 - Caution(leaf);

    /// <summary>The feet of all pages, once it is known how many there are.</summary>
    public static void Finish(Book book)
    {
        Imprint imprint = book.Imprint;
        for (int page = 0; page < book.Leaves.Count; page++)
        {
            Leaf leaf = book.Leaves[page];
            leaf.Paragraph(imprint.Say.Cautions.Precedence, Left, FootLine - Caution(leaf) - 0.6, Width, Lettering.Fine);
            leaf.Text(imprint.Texts["Foot.Printed", imprint.Say.Language.Day(imprint.Day)], Left, FootLine, Lettering.Note);
            leaf.Text(imprint.Texts["Foot.Page", page + 1, book.Leaves.Count], Right, FootLine, Lettering.Note, Align.Right);
        }
    }

    private static double Caution(Leaf leaf) => leaf.Height(leaf.Book.Imprint.Say.Cautions.Precedence, Width, Lettering.Fine);
}
