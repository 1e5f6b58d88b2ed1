using System.Globalization;
using Gatewright.Core.Stroke;

namespace Gatewright.Journal.Exchange.Gearings;

/// <summary>A wish as it was written: a value, or more or less than now, of a ratio also in hundredths.</summary>
/// <param name="Figure">Which figure.</param>
/// <param name="Number">The number.</param>
/// <param name="IsRelative">Whether it began with + or −.</param>
/// <param name="IsPercent">Whether it ended with %.</param>
public readonly record struct WrittenWish(StrokeFigure Figure, double Number, bool IsRelative, bool IsPercent)
{
    /// <summary>How a wish is written, for whoever wrote one otherwise.</summary>
    public static string Expected { get; } =
        $"one of {string.Join(", ", StrokeFigures.All.Select(f => f.Word()))}, = and a value, or + or - and by how much; of a ratio also with %, as in catch=+2 or load=+1%.";

    /// <summary>Reads <c>catch=+2</c>, <c>load=+1%</c>, <c>finish=35</c>; null for what is no wish.</summary>
    public static WrittenWish? Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Split('=', 2) is not [{ } name, { } rest] || StrokeFigures.OfWord(name.Trim()) is not { } figure)
        {
            return null;
        }

        string number = rest.Trim();
        bool isSigned = number is ['+' or '-', ..];
        bool isPercent = number.EndsWith('%');
        return double.TryParse(number.TrimEnd('%'), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value)
            && double.IsFinite(value) && (!isPercent || (figure.IsRatio() && isSigned))
            ? new(figure, value, isSigned, isPercent)
            : null;
    }

    /// <summary>What it means for a stroke. A finish is written as degrees past abeam.</summary>
    public StrokeWish Of(StrokeGeometry now)
    {
        ArgumentNullException.ThrowIfNull(now);
        int sign = Figure == StrokeFigure.Finish ? -1 : 1;
        double value = now[Figure];
        return new(Figure, IsPercent ? value * (1 + (Number / 100)) : IsRelative ? value + (sign * Number) : sign * Number);
    }
}
