using Gatewright.Core.Mending;

namespace Gatewright.Journal.Exchange.Check;

/// <summary>One way to mend one cause.</summary>
/// <param name="Remedy">Its code, such as <c>insert-swap</c>.</param>
/// <param name="Cause">The cause it mends.</param>
/// <param name="Instruction">What to do, with amount and direction, in words.</param>
/// <param name="Parts">What it takes from stores.</param>
/// <param name="Minutes">How long it takes, roughly.</param>
/// <param name="Cautions">What to mind while doing it.</param>
/// <param name="Expected">What the gauge should show afterwards; empty where only reading again tells.</param>
public sealed record CheckedRemedy(
    string Remedy,
    CheckedPart Cause,
    string Instruction,
    IReadOnlyList<CheckedSupply> Parts,
    int Minutes,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<CheckedExpectation> Expected);

/// <summary>A part from stores.</summary>
/// <param name="Part"><c>insert</c>, <c>shim</c>, <c>washer</c> or <c>pin</c>.</param>
/// <param name="Size">Degrees for an insert, millimetres for a shim or washer, 0 for a pin.</param>
public sealed record CheckedSupply(string Part, double Size)
{
    /// <summary>A part as written.</summary>
    public static CheckedSupply Of(Part part) => new(part.Kind.Word(), part.Size);
}

/// <summary>What the gauge should show at a station once the gate is mended, in degrees.</summary>
/// <param name="At"><c>catch</c>, <c>abeam</c> or <c>finish</c>.</param>
/// <param name="Value">The pitch.</param>
/// <param name="U">Its standard uncertainty.</param>
/// <param name="From">The low end of the band in which 95 of 100 readings of a mended gate fall.</param>
/// <param name="To">Its high end.</param>
public sealed record CheckedExpectation(string At, double Value, double U, double From, double To)
{
    /// <summary>An expected reading as written.</summary>
    public static CheckedExpectation Of(ExpectedReading expected)
    {
        ArgumentNullException.ThrowIfNull(expected);
        return new(
            Codes.Of(expected.At),
            Rounded.Degrees(expected.Pitch.Value),
            Rounded.Degrees(expected.Pitch.U),
            Rounded.Degrees(expected.From.Angle),
            Rounded.Degrees(expected.To.Angle));
    }
}
