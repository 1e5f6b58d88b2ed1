using System.Globalization;

namespace Gatewright.Bench.Reporting;

/// <summary>What is promised of a figure: at least or at most so much of a unit.</summary>
public sealed record Target(string What, Bound Bound, double Limit, string Unit)
{
    public static Target AtLeast(double limit, string unit, string what) => new(what, Bound.AtLeast, limit, unit);

    public static Target AtMost(double limit, string unit, string what) => new(what, Bound.AtMost, limit, unit);

    public bool IsMet(double figure) => Bound == Bound.AtLeast ? figure >= Limit : figure <= Limit;

    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{(Bound == Bound.AtLeast ? "at least" : "at most")} {Quantity(Limit)}");

    /// <summary>Three figures, which is more than two runs agree on: "7.31 million a second", "0.215 s".</summary>
    public string Quantity(double value) => Math.Abs(value) >= 1e6
        ? string.Create(CultureInfo.InvariantCulture, $"{value / 1e6:G3} million {Unit}")
        : string.Create(CultureInfo.InvariantCulture, $"{value:G3} {Unit}");
}
