using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.CheckShed;

/// <summary>
/// What is said of the pin that common practice knows best: about 5 at the catch falling to about 1 at the finish, among
/// fours, is a pin that leans out.
/// </summary>
public sealed class LeaningPinTests
{
    private static readonly string[] Told = ProgramRun.Of("check", "examples/one-eight.csv", "--plain").Lines;

    [Fact]
    public void The_gate_the_cause_and_the_direction_are_said() => Assert.Contains(
        "Seat 5 starboard, likely: rigger knocked or mounted wrong (its pin's top away from the hull and to the bow), 96 percent.", Told);

    /// <remarks>By the drop alone 4 / (sin 55° + sin 35°) = 2.9; a lean forward takes a part of the drop upon itself.</remarks>
    [Fact]
    public void Both_leans_are_said_with_their_amounts() => Assert.Contains(
        "Seat 5 starboard: Probably 4.0 degrees plus or minus 0.3 is built into gate and insert, and the pin leans 2.5 degrees plus or minus 0.3 out and 1.8 degrees plus or minus 0.6 forward.", Told);

    [Fact]
    public void The_way_to_mend_it_is_said_without_a_sign() =>
        Assert.Contains(Told, line => line.Contains("the top of the pin goes 2.5 degrees towards the hull", StringComparison.Ordinal));

    [Fact]
    public void No_other_gate_is_suspected() =>
        Assert.DoesNotContain(Told, line => line.Contains("likely:", StringComparison.Ordinal) && !line.StartsWith("Seat 5 starboard", StringComparison.Ordinal));

    [Theory]
    [InlineData("out and aft", 7, 6.5, 3.5, "its pin's top away from the hull and to the stern")]
    [InlineData("in and aft", 3, 6.5, 7.5, "its pin's top towards the hull and to the stern")]
    public void A_rigger_s_directions_are_those_of_its_leans(string way, double atCatch, double abeam, double finish, string words)
    {
        Assert.NotEmpty(way);
        using var file = new TemporaryFile(
        [
            "boat,class,seat,side,at,reading,bow_high,port_low",
            .. from seat in Enumerable.Range(1, 4)
               from read in new[] { ("catch", atCatch), ("abeam", abeam), ("finish", finish) }
               select FormattableString.Invariant(
                   $"Heron,4-,{seat},{(seat % 2 == 0 ? "port" : "starboard")},{read.Item1},{(seat == 3 ? read.Item2 : 4)},0,0"),
        ]);
        Assert.Contains(words, ProgramRun.Of("check", file.Path, "--plain").Output, StringComparison.Ordinal);
    }
}
