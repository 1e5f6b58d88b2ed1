using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using static Gatewright.Core.Tests.Diagnosing.Boats;

namespace Gatewright.Core.Tests.Diagnosing;

/// <summary>That every story is weighed once, and none twice.</summary>
/// <remarks>
/// With n causes at each gate, T = Σn of them, and g gauges: none, T + 1 + g single causes, (T² − Σn²)/2 pairs on two gates,
/// T (1 + g) of a gate and the boat, g of the hull and a gauge. An eight with one gauge has n = 4 at eight gates, T = 32:
/// 1 + 34 + (1024 − 128)/2 + 64 + 1 = 548.
/// </remarks>
public sealed class StoryCountTests
{
    [Theory]
    [InlineData("8+", 1, 548)]
    [InlineData("8x+", 1, 2116)]
    [InlineData("4-", 1, 148)]
    [InlineData("2x", 1, 148)]
    [InlineData("1x", 1, 44)]
    [InlineData("2-", 2, 54)]
    [InlineData("8+", 2, 582)]
    [InlineData("4x", 3, 616)]
    public void A_boat_has_as_many_stories_as_its_gates_and_gauges_make(string boatClass, int gauges, int expected)
    {
        BoatClass parsed = BoatClass.Parse(boatClass);
        GatePlace[] gates = parsed.Rowing == Rowing.Sweep
            ? [.. Enumerable.Range(1, parsed.Seats).Select(Gate)]
            : [.. Enumerable.Range(1, parsed.Seats).SelectMany(seat => new[] { Port(seat), Starboard(seat) })];
        Diagnosis diagnosis = Diagnose(Boat(boatClass, [.. gates.SelectMany(gate => Enumerable.Range(1, gauges)
            .Select(g => Read(gate, Station.Abeam, 4, gauge: Usual.GaugeNamed($"gauge {g}"), rowing: parsed.Rowing)))]));
        Assert.Equal(expected, diagnosis.StoryCount);
        Assert.Equal(Formula([.. Enumerable.Repeat(4, gates.Length)], gauges), diagnosis.StoryCount);
        AssertNoneTwice(diagnosis);
    }

    [Fact]
    public void A_second_lying_adds_no_story_since_the_hull_is_one_cause()
    {
        Reading[] readings = [.. Enumerable.Range(1, 8).SelectMany(seat => new[]
        {
            Read(Gate(seat), Station.Catch, 4, Upright),
            Read(Gate(seat), Station.Catch, 4, Inverted),
        })];
        Diagnosis diagnosis = Diagnose(Boat("8+", readings));
        Assert.Equal(2, diagnosis.Levels.Count);
        Assert.Equal(548, diagnosis.StoryCount);
        AssertNoneTwice(diagnosis);
    }

    [Fact]
    public void Readings_of_pins_alone_have_the_same_stories()
    {
        Diagnosis diagnosis = Diagnose(Boat("4-", [.. Enumerable.Range(1, 4).Select(seat => Read(ReadItem.PinOut, Gate(seat), 0))]));
        Assert.Equal(148, diagnosis.StoryCount);
        AssertNoneTwice(diagnosis);
    }

    [Fact]
    public void A_sleeve_that_was_read_adds_its_own_cause_at_its_gate()
    {
        Diagnosis diagnosis = Diagnose(Boat(
            "4-", [.. Enumerable.Range(1, 4).Select(seat => Read(Gate(seat), Station.Abeam, 4)), Read(ReadItem.Sleeve, Gate(2), 0)]));
        Assert.Equal(Formula([4, 5, 4, 4], 1), diagnosis.StoryCount);
        Assert.Equal(163, diagnosis.StoryCount);
        AssertNoneTwice(diagnosis);
    }

    [Fact]
    public void An_oar_read_whose_gate_was_not_has_only_its_sleeve()
    {
        Diagnosis diagnosis = Diagnose(Boat("2-", Read(Gate(1), Station.Abeam, 4), Read(ReadItem.Sleeve, Gate(2), 0)));
        Assert.Equal(Formula([4, 1], 1), diagnosis.StoryCount);
        AssertNoneTwice(diagnosis);
    }

    /// <summary>
    /// Three refitted riggers, none known from before: three exchanges, each alone, with 4 causes at each of the two gates it
    /// leaves out, and with the hull or the gauge.
    /// </summary>
    [Fact]
    public void Refitted_riggers_add_each_exchange_of_two()
    {
        Diagnosis diagnosis = Diagnose(
            Boat("4-", [.. Enumerable.Range(1, 4).Select(seat => Read(Gate(seat), Station.Abeam, 4))]),
            new() { Reports = [.. Enumerable.Range(1, 3).Select(seat => new Report(ReportKind.Refitted, Gate(seat)))] });
        Assert.Equal(148 + (3 * (1 + 8 + 2)), diagnosis.StoryCount);
        AssertNoneTwice(diagnosis);
    }

    private static int Formula(int[] causes, int gauges)
    {
        int sum = causes.Sum();
        int pairs = ((sum * sum) - causes.Sum(n => n * n)) / 2;
        return 1 + sum + 1 + gauges + pairs + (sum * (1 + gauges)) + gauges;
    }

    private static void AssertNoneTwice(Diagnosis diagnosis)
    {
        StoryWeights weights = diagnosis.Weights;
        List<string> keys = [.. Enumerable.Range(0, weights.Count).Select(i => DenseStory.KeyOf(weights.Parts(i).Select(o => o.Part)))];
        Assert.Equal(keys.Count, keys.Distinct().Count());
        Assert.Equal(1, Enumerable.Range(0, weights.Count).Sum(weights.Probability), 1e-12);
    }
}
