using System.Globalization;

namespace Gatewright.Core.Mending;

/// <summary>A part by kind and size.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Size">Degrees for an insert, millimetres for a shim or washer, 0 for a pin.</param>
public readonly record struct Part(PartKind Kind, double Size) : IComparable<Part>
{
    /// <summary>By kind, then by size.</summary>
    public int CompareTo(Part other) => Kind != other.Kind ? Kind.CompareTo(other.Kind) : Size.CompareTo(other.Size);

    /// <summary>Whether one part stands before another on the list.</summary>
    public static bool operator <(Part left, Part right) => left.CompareTo(right) < 0;

    /// <summary>Whether one part stands after another on the list.</summary>
    public static bool operator >(Part left, Part right) => left.CompareTo(right) > 0;

    /// <summary>Whether one part stands before another on the list, or is the same.</summary>
    public static bool operator <=(Part left, Part right) => left.CompareTo(right) <= 0;

    /// <summary>Whether one part stands after another on the list, or is the same.</summary>
    public static bool operator >=(Part left, Part right) => left.CompareTo(right) >= 0;

    /// <summary>"insert 4°", "shim 0.5 mm", "pin".</summary>
    public override string ToString()
    {
        string size = Size.ToString("0.##", CultureInfo.InvariantCulture);
        return Kind switch
        {
            PartKind.Insert => $"{Kind.Word()} {size}°",
            PartKind.Pin => Kind.Word(),
            _ => $"{Kind.Word()} {size} mm",
        };
    }
}
