using Gatewright.Cli.Drawing;

namespace Gatewright.Cli.CheckShed.ForPeople;

/// <summary>Lines that begin a part of the report.</summary>
internal static class Heading
{
    /// <summary>A question and on what its answer rests.</summary>
    public static Line Of(string question, string basis, int width) =>
        new Line().Add(question, Ink.Strong).Add($": {basis} ", Ink.Quiet).RuleTo(width, '─');
}
