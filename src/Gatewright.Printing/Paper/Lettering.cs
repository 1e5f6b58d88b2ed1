using Gatewright.Printing.Faces;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Gatewright.Printing.Paper;

/// <summary>A size and weight of letters.</summary>
/// <remarks>
/// Two distances decide. A sheet on the bench or on the boat is read at arm's length, 64 cm; a note on it is read in the hand,
/// 40 cm. ISO 9241-303 asks that a capital be at least 16′ of arc high and prefers 20′ (from memory): 3.0 mm at 64 cm, 1.9 mm
/// at 40 cm. A capital of the faces used is at least 0.714 of the size, so nothing that is read at work is under 12 points, and
/// nothing on a sheet under 9, which leaves something for a lamp in a shed: at 40 cm 20′. A card for the pocket and a label have
/// little room, and are brought nearer to the eye; what stands on them is as large as its place allows, down to 8 points, and
/// below that only where it is also told elsewhere: a station's name on a card, the key on the smallest label.
/// </remarks>
/// <param name="Points">The size in points of 1/72 inch.</param>
/// <param name="IsBold">Whether it is bold.</param>
internal sealed record Lettering(double Points, bool IsBold = false)
{
    /// <summary>The least that is read at arm's length.</summary>
    public const double LeastAtArmsLength = 12;

    /// <summary>The least that is read in the hand.</summary>
    public const double LeastInTheHand = 9;

    /// <summary>The least on a card or a label.</summary>
    public const double LeastOnCards = 8;

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
    public static Lettering Note { get; } = new(LeastInTheHand);

    /// <summary>The same, bold.</summary>
    public static Lettering NoteBold { get; } = new(LeastInTheHand, true);

    /// <summary>What is seldom read of a sheet: as large as a note, its lines closer.</summary>
    public static Lettering Fine { get; } = new(LeastInTheHand) { Leading = 1.1 };

    /// <summary>What is seldom read of a card or a label.</summary>
    public static Lettering Small { get; } = new(LeastOnCards);

    /// <summary>From one line to the next, in sizes of the letters.</summary>
    public double Leading { get; init; } = 1.25;

    /// <summary>From one line to the next, millimetres.</summary>
    public double LineMm => Points * Leading * Leaf.MmAPoint;

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
