namespace Gatewright.Printing.Paper;

/// <summary>A page that says that there is nothing to print, and why: an empty document would be a riddle.</summary>
internal static class EmptyPage
{
    /// <summary>Draws it.</summary>
    public static void Draw(Book book, string text)
    {
        var flow = new Flow(book);
        flow.Y += 6;
        flow.Paragraph(book.Imprint.Texts[text], Lettering.Work);
    }
}
