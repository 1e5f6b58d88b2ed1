namespace Gatewright.Core.Stroke;

/// <summary>A figure that follows from a seat's rig and the rower's reach.</summary>
public enum StrokeFigure
{
    /// <summary>The oar's angle at the catch. Degrees, positive.</summary>
    Catch,

    /// <summary>The oar's angle at the finish. Degrees, negative beyond abeam.</summary>
    Finish,

    /// <summary>From catch to finish. Degrees.</summary>
    Arc,

    /// <summary>Metres that the hull goes for a metre of the hands, over the whole drive, if the blade does not slip.</summary>
    Load,

    /// <summary>Gearing by the survey's plain definition.</summary>
    Gearing,

    /// <summary>Gearing with the gate's width.</summary>
    GearingWithGate,

    /// <summary>Outboard to inboard.</summary>
    Lever,

    /// <summary>Overlap abeam. Centimetres.</summary>
    Overlap,
}

/// <summary>The words of the figures.</summary>
public static class StrokeFigures
{
    /// <summary>Every figure, those of the stroke first.</summary>
    public static IReadOnlyList<StrokeFigure> All { get; } = [.. Enum.GetValues<StrokeFigure>()];

    /// <summary>The word that stands for it: "gearing-with-gate".</summary>
    public static string Word(this StrokeFigure figure) => figure switch
    {
        StrokeFigure.Catch => "catch",
        StrokeFigure.Finish => "finish",
        StrokeFigure.Arc => "arc",
        StrokeFigure.Load => "load",
        StrokeFigure.Gearing => "gearing",
        StrokeFigure.GearingWithGate => "gearing-with-gate",
        StrokeFigure.Lever => "lever",
        StrokeFigure.Overlap => "overlap",
        _ => throw new ArgumentOutOfRangeException(nameof(figure), figure, "There is no such figure."),
    };

    /// <summary>The figure of that word, or null.</summary>
    public static StrokeFigure? OfWord(string word)
    {
        foreach (StrokeFigure figure in All)
        {
            if (string.Equals(figure.Word(), word, StringComparison.OrdinalIgnoreCase))
            {
                return figure;
            }
        }

        return null;
    }

    /// <summary>Whether it is a ratio, of which a change is told in hundredths of itself.</summary>
    public static bool IsRatio(this StrokeFigure figure) =>
        figure is StrokeFigure.Load or StrokeFigure.Gearing or StrokeFigure.GearingWithGate or StrokeFigure.Lever;
}
