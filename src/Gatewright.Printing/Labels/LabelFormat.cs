namespace Gatewright.Printing.Labels;

/// <summary>A grid of labels on A4, all lengths in millimetres. The grids are those of labels sold everywhere (common practice).</summary>
/// <param name="Name">What it is asked for by: width by height, rounded.</param>
/// <param name="Across">Labels side by side.</param>
/// <param name="Down">Labels one under another.</param>
/// <param name="Width">A label's width.</param>
/// <param name="Height">A label's height.</param>
/// <param name="StepAcross">From the left of one to the left of the next.</param>
/// <param name="StepDown">From the top of one to the top of the next.</param>
public sealed record LabelFormat(string Name, int Across, int Down, double Width, double Height, double StepAcross, double StepDown)
{
    /// <summary>The paper the labels are on.</summary>
    public const double PaperWidth = 210;

    /// <summary>The paper the labels are on.</summary>
    public const double PaperHeight = 297;

    /// <summary>All of them, the usual one first.</summary>
    public static IReadOnlyList<LabelFormat> All { get; } =
    [
        new("70x37", 3, 8, 70, 37, 70, 37),
        new("63x38", 3, 7, 63.5, 38.1, 66, 38.1),
        new("99x68", 2, 4, 99.1, 67.7, 101.6, 67.7),
        new("105x74", 2, 4, 105, 74, 105, 74),
        new("48x25", 4, 10, 48.5, 25.4, 48.5, 25.4),
        new("38x21", 5, 13, 38.1, 21.2, 40.6, 21.2),
    ];

    /// <summary>Labels a sheet.</summary>
    public int Count => Across * Down;

    /// <summary>Left of the first label: the grid stands in the middle of the paper.</summary>
    public double Left => (PaperWidth - ((Across - 1) * StepAcross) - Width) / 2;

    /// <summary>Above the first label.</summary>
    public double Top => (PaperHeight - ((Down - 1) * StepDown) - Height) / 2;

    /// <summary>The format of a name, in any case; null for none.</summary>
    public static LabelFormat? Of(string name) => All.FirstOrDefault(f => f.Name.Equals(name, StringComparison.OrdinalIgnoreCase));

    /// <summary>Where a label is, and how large what may be printed of it: clear of its edges, and of the paper's by 5 mm.</summary>
    internal (double X, double Y, double Width, double Height) Place(int index)
    {
        double inset = Height < 30 ? 2 : 3;
        double x = Left + (index % Across * StepAcross);
        double y = Top + (index / Across * StepDown);
        double left = Math.Max(x + inset, 5);
        double top = Math.Max(y + inset, 5);
        return (left, top, Math.Min(x + Width - inset, PaperWidth - 5) - left, Math.Min(y + Height - inset, PaperHeight - 5) - top);
    }
}
