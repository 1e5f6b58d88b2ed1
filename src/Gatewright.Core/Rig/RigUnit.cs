namespace Gatewright.Core.Rig;

/// <summary>The units in which a measure of the rig may be written down.</summary>
public enum RigUnit
{
    /// <summary>Centimetres: every length is kept and judged in them.</summary>
    Centimetres,

    /// <summary>Millimetres.</summary>
    Millimetres,

    /// <summary>Inches of 2.54 cm.</summary>
    Inches,

    /// <summary>Degrees: every angle is kept and judged in them.</summary>
    Degrees,
}

/// <summary>Units, their words, and what a figure in one of them is in the measure's own.</summary>
public static class RigUnits
{
    /// <summary>Every unit there is.</summary>
    public static IReadOnlyList<RigUnit> All { get; } =
        [RigUnit.Centimetres, RigUnit.Millimetres, RigUnit.Inches, RigUnit.Degrees];

    /// <summary>The word that stands for it in files and entries: "cm", "mm", "in", "deg".</summary>
    public static string Word(this RigUnit unit) => unit switch
    {
        RigUnit.Centimetres => "cm",
        RigUnit.Millimetres => "mm",
        RigUnit.Inches => "in",
        _ => "deg",
    };

    /// <summary>The unit that people wrote, in any case: "cm", "mm", "in", "inch", "inches", "″", "deg", "degrees", "°"; else null.</summary>
    public static RigUnit? OfWord(ReadOnlySpan<char> word)
    {
        Span<char> lower = stackalloc char[8];
        word = word.Trim();
        int length = word.Length > lower.Length ? -1 : word.ToLowerInvariant(lower);
        return length < 0 ? null : lower[..length] switch
        {
            "cm" => RigUnit.Centimetres,
            "mm" => RigUnit.Millimetres,
            "in" or "inch" or "inches" or "\"" or "″" => RigUnit.Inches,
            "deg" or "degree" or "degrees" or "°" => RigUnit.Degrees,
            _ => null,
        };
    }

    /// <summary>The unit in which a measure is kept: degrees of an angle, else centimetres.</summary>
    public static RigUnit Unit(this RigMeasure measure) => measure.IsAngle() ? RigUnit.Degrees : RigUnit.Centimetres;

    /// <summary>Whether a measure may be written in a unit: an angle in degrees alone, a length in any unit of length.</summary>
    public static bool Takes(this RigMeasure measure, RigUnit unit) => measure.IsAngle() == (unit == RigUnit.Degrees);

    /// <summary>A figure in the unit its measure is kept in: 34 inches → 86.36 cm.</summary>
    public static double InOwn(this RigUnit unit, double value) => unit switch
    {
        RigUnit.Millimetres => Length.FromMillimetres(value).Centimetres,
        RigUnit.Inches => Length.FromInches(value).Centimetres,
        _ => value,
    };

    /// <summary>A figure of the unit a measure is kept in, in this one: 86.36 cm → 34 inches.</summary>
    public static double FromOwn(this RigUnit unit, double value) => unit switch
    {
        RigUnit.Millimetres => Length.FromCentimetres(value).Millimetres,
        RigUnit.Inches => Length.FromCentimetres(value).Inches,
        _ => value,
    };
}
