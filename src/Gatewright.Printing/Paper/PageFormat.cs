namespace Gatewright.Printing.Paper;

/// <summary>A size of paper, millimetres.</summary>
/// <param name="Width">From left to right.</param>
/// <param name="Height">From top to bottom.</param>
internal readonly record struct PageFormat(double Width, double Height)
{
    /// <summary>A4 upright (ISO 216).</summary>
    public static PageFormat A4 { get; } = new(210, 297);
}
