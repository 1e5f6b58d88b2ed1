using System.Globalization;

namespace Gatewright.Bench.Reporting;

/// <summary>One line a target: what, the target, the figure, their ratio, whether it is met, and a note.</summary>
internal static class Report
{
    public static string Heading => Line(string.Empty, "target", "measured", "ratio", string.Empty, string.Empty);

    public static string Of(Measured measured)
    {
        (Target target, double figure, string note) = measured;
        return Line(
            target.What,
            target.ToString(),
            target.Quantity(figure),
            (figure / target.Limit).ToString("0.000", CultureInfo.InvariantCulture),
            target.IsMet(figure) ? "met" : "MISSED",
            note);
    }

    private static string Line(string what, string target, string figure, string ratio, string met, string note) =>
        $"{what,-50} {target,-30} {figure,-26} {ratio,7}  {met,-6}  {note}".TrimEnd();
}
