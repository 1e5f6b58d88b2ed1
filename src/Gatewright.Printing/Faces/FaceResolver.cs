using PdfSharp.Fonts;

namespace Gatewright.Printing.Faces;

/// <summary>Gives the PDF library the one face that everything is printed in.</summary>
internal sealed class FaceResolver(Face face) : IFontResolver
{
    /// <summary>What the face is asked for by, whatever it is.</summary>
    public const string Family = "print";

    private const string Upright = "print-upright";
    private const string Heavy = "print-bold";

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) => new(isBold ? Heavy : Upright);

    /// <inheritdoc/>
    public byte[]? GetFont(string faceName) => File.ReadAllBytes(faceName == Heavy ? face.Bold : face.Regular);
}
