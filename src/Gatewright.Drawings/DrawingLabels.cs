using System.Globalization;

namespace Gatewright.Drawings;

/// <summary>The words that stand on drawings, and how numbers are written there. A drawing has no words of its own.</summary>
public sealed record DrawingLabels
{
    /// <summary>Drawings without a word on them, numbers as in the invariant culture.</summary>
    public static DrawingLabels None { get; } = new();

    /// <summary>Left, facing the bow.</summary>
    public string Port { get; init; } = "";

    /// <summary>Right, facing the bow.</summary>
    public string Starboard { get; init; } = "";

    /// <summary>The front of the boat.</summary>
    public string Bow { get; init; } = "";

    /// <summary>The back of the boat.</summary>
    public string Stern { get; init; } = "";

    /// <summary>Towards the hull.</summary>
    public string Hull { get; init; } = "";

    /// <summary>Away from the hull.</summary>
    public string Away { get; init; } = "";

    /// <summary>Where the blade enters.</summary>
    public string Catch { get; init; } = "";

    /// <summary>The shaft at right angles to the keel.</summary>
    public string Abeam { get; init; } = "";

    /// <summary>Where the blade leaves.</summary>
    public string Finish { get; init; } = "";

    /// <summary>How numbers and days are written.</summary>
    public CultureInfo Culture { get; init; } = CultureInfo.InvariantCulture;

    /// <summary>Degrees as people read them, with a true minus: "−0.5°".</summary>
    /// <param name="degrees">The angle.</param>
    /// <param name="decimals">Figures after the point, 0 to 3.</param>
    public string Degrees(double degrees, int decimals = 1) => Number(degrees, decimals) + "°";

    /// <summary>A number as people read it: "−0.5".</summary>
    public string Number(double value, int decimals = 1)
    {
        double rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        string size = Math.Abs(rounded).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), Culture);
        return rounded < 0 ? "\u2212" + size : size;
    }
}
