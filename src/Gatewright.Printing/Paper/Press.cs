using Gatewright.Printing.Faces;
using PdfSharp.Fonts;

namespace Gatewright.Printing.Paper;

/// <summary>Makes documents, one at a time: the PDF library keeps its fonts in one place for the whole process.</summary>
/// <remarks>Nothing of the library or of any face is loaded before the first document is asked for.</remarks>
internal static class Press
{
    private static readonly Lock One = new();
    private static bool _isSet;

    /// <summary>Prints a document.</summary>
    /// <param name="imprint">What it says of itself.</param>
    /// <param name="title">What it is.</param>
    /// <param name="write">Fills its pages.</param>
    /// <returns>The PDF.</returns>
    /// <exception cref="MissingFaceException">There is no typeface on this machine.</exception>
    public static byte[] Print(Imprint imprint, string title, Action<Book> write)
    {
        lock (One)
        {
            if (!_isSet)
            {
                GlobalFontSettings.FontResolver = new FaceResolver(Face.Find(FaceFolders.Of(Environment.GetEnvironmentVariable)));
                _isSet = true;
            }

            using var book = new Book(imprint, title);
            write(book);
            return book.Close();
        }
    }
}
