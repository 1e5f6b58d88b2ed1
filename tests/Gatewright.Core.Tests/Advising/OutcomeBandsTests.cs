using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Tests.Advising;

/// <summary>What each outcome of the advised reading is said to mean, against the diagnosis once it is there.</summary>
public class OutcomeBandsTests
{
    private static Dictionary<string, Round> Boats { get; } = new()
    {
        ["high"] = Round.Abeam("8+", null, 4, 4, 4, 4, 6.5, 4, 4, 4),
        ["low"] = Round.Abeam("8+", null, 4, 4, 4, 4, 2.5, 4, 4, 4),
        ["two out"] = Round.Abeam("8+", null, 4, 6.5, 4, 4, 2, 4, 4, 4),
        ["all high"] = Round.Abeam("8+", null, 5.5, 5.5, 5.5, 5, 5.5, 6, 5.5, 5.5),
        ["all high by eye"] = Round.Abeam("8+", new HullLevel.ByEye(), 5.5, 5.5, 5.5, 5, 5.5, 6, 5.5, 5.5),
        ["a scull out"] = Round.Abeam("2x", null, 4, 4, 1.5, 4),
    };

    public static TheoryData<string> Names => [.. Boats.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Bands_cover_the_whole_line_and_share_all_chances(string boat)
    {
        IReadOnlyList<ReadingOutcome> bands = Boats[boat].Advice.Next!.Outcomes;

        Assert.Null(bands[0].From);
        Assert.Null(bands[^1].To);
        for (int i = 1; i < bands.Count; i++)
        {
            Assert.Equal(bands[i - 1].To, bands[i].From);
        }

        Assert.All(bands.Where(b => b is { From: not null, To: not null }), b => Assert.True(b.From < b.To));
        Assert.Equal(1, bands.Sum(b => b.Chance), 1e-9);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void No_band_is_hardly_ever_met_and_neighbours_differ(string boat)
    {
        IReadOnlyList<ReadingOutcome> bands = Boats[boat].Advice.Next!.Outcomes;

        Assert.All(bands, band => Assert.True(band.Chance >= 0.02));
        Assert.All(bands.Zip(bands.Skip(1)), pair => Assert.NotEqual(pair.First.Story.Parts, pair.Second.Story.Parts));
    }

    [Theory]
    [InlineData("high")]
    [InlineData("low")]
    [InlineData("two out")]
    [InlineData("a scull out")]
    public void In_the_middle_of_its_band_the_account_that_was_named_does_lead(string boat)
    {
        Round round = Boats[boat];
        NextReading next = round.Advice.Next!;
        GatePlace gate = next.Choice.Gate!.Value;

        foreach (ReadingOutcome band in next.Outcomes)
        {
            Diagnosis then = After(round, next.Choice, Middle(band));
            CauseProbability leading = then.Gates.Single(g => g.Gate == gate).Causes[0];

            Assert.Equal(band.Story.Parts.SingleOrDefault()?.Cause, leading.Cause);
        }
    }

    /// <summary>Half a degree beyond where two bands meet, to either side, the one named there leads.</summary>
    [Fact]
    public void Bands_meet_where_the_lead_changes()
    {
        Round round = Boats["high"];
        NextReading next = round.Advice.Next!;

        // Between bands two accounts are near even: a tenth of a degree to either side decides.
        foreach ((ReadingOutcome lower, ReadingOutcome upper) in next.Outcomes.Zip(next.Outcomes.Skip(1)))
        {
            Diagnosis below = After(round, next.Choice, lower.To!.Value - Angle.FromDegrees(0.1));
            Diagnosis above = After(round, next.Choice, lower.To!.Value + Angle.FromDegrees(0.1));

            Assert.Equal(lower.Story.Parts.Single().Cause, below.Gates[4].Causes[0].Cause);
            Assert.Equal(upper.Story.Parts.Single().Cause, above.Gates[4].Causes[0].Cause);
        }
    }

    [Fact]
    public void Every_scale_is_named_for_what_is_read()
    {
        Assert.Equal(OutcomeScale.Reading, Boats["high"].Advice.Next!.Scale);
        Assert.Equal(OutcomeScale.GaugeZero, Boats["all high"].Advice.Next!.Scale);
        Assert.Equal(OutcomeScale.BowHigh, Boats["all high by eye"].Advice.Next!.Scale);
    }

    [Fact]
    public void A_gauge_that_proves_to_be_off_is_what_was_wrong_and_one_that_is_true_points_to_the_level()
    {
        IReadOnlyList<ReadingOutcome> bands = Boats["all high"].Advice.Next!.Outcomes;

        Assert.Equal([Cause.HullLevel, Cause.GaugeZero], bands.Select(b => b.Story.Parts.Single().Cause));
        Assert.InRange(bands[0].To!.Value.Degrees, 0.3, 1.2);
        Assert.All(bands, b => Assert.True(b.Story.Probability > 0.9));
    }

    [Fact]
    public void Other_readings_are_ranked_without_their_bands() =>
        Assert.All(Boats["high"].Advice.Others, reading => Assert.Empty(reading.Outcomes));

    private static Angle Middle(ReadingOutcome band) => (band.From, band.To) switch
    {
        ({ } from, { } to) => 0.5 * (from + to),
        (null, { } to) => to - Angle.FromDegrees(0.5),
        ({ } from, null) => from + Angle.FromDegrees(0.5),
        _ => Angle.Zero,
    };

    private static Diagnosis After(Round round, ReadingChoice choice, Angle shown) => Diagnosis.Of(
        ReadingTaken.On(round.Readings, choice, shown, default, MeasuringSettings.Default),
        BoatContext.None,
        CheckSettings.Default.Diagnosing);
}
