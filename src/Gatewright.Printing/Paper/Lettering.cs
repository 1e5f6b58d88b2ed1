using Gatewright.Printing.Faces;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Gatewright.Printing.Paper;

/// <summary>A size and weight of letters.</summary>
/// <remarks>
/// Two distances decide. A sheet on the bench or on the boat is read at arm's length, 64 cm; a note on it is read in the hand,
/// 40 cm. ISO 9241-303 asks that a capital be at least 16′ of arc high and prefers 20′ (from memory): 3.0 mm at 64 cm, 1.9 mm
/// at 40 cm. A capital of the faces used is at least 0.714 of the size, so nothing that is read at work is under 12 points, and
/// nothing under 8 but what is also told elsewhere: a heading on a pocket card, the key on the smallest label.
/// </remarks>
/// <param name="Points">The size in points of 1/72 inch.</param>
/// <param name="IsBold">Whether it is bold.</param>
internal sealed record Lettering(double Points, bool IsBold = false)
{
    /// <summary>The least that is read at arm's length.</summary>
    public const double LeastAtArmsLength = 12;

    /// <summary>The least that is read in the hand.</summary>
    public const double LeastInTheHand = 8;

    /// <summary>A boat's name.</summary>
    public static Lettering Name { get; } = new(24, true);

    /// <summary>A verdict's word, a hold.</summary>
    public static Lettering Verdict { get; } = new(16, true);

    /// <summary>A heading.</summary>
    public static Lettering Heading { get; } = new(13, true);

    /// <summary>What is read at work.</summary>
    public static Lettering Work { get; } = new(LeastAtArmsLength);

    /// <summary>What must be seen first of it.</summary>
    public static Lettering WorkBold { get; } = new(LeastAtArmsLength, true);

    /// <summary>What is read in the hand.</summary>
    public static Lettering Note { get; } = new(9);

    /// <summary>The same, bold.</summary>
    public static Lettering NoteBold { get; } = new(9, true);

    /// <summary>What is seldom read.</summary>
    public static Lettering Small { get; } = new(LeastInTheHand);

    /// <summary>From one line to the next, millimetres.</summary>
    public double LineMm => Points * 1.25 * Leaf.MmAPoint;

    /// <summary>How high a capital is, millimetres, by the lowest of the faces used.</summary>
    public double CapitalMm => Points * 0.714 * Leaf.MmAPoint;

    /// <summary>How high letters and their marks reach, millimetres.</summary>
    public double AscentMm => Points * 0.93 * Leaf.MmAPoint;

    /// <summary>The same at another size.</summary>
    public Lettering At(double points) => this with { Points = points };

    /// <summary>As the library has it.</summary>
    public XFont Font => new(
        FaceResolver.Family, Points, IsBold ? XFontStyleEx.Bold : XFontStyleEx.Regular, new XPdfFontOptions(PdfFontEncoding.Unicode));
}
