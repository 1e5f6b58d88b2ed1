using FsCheck.Xunit;
using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Advising;

/// <summary>What holds of the advice on any boat.</summary>
[Properties(Arbitrary = [typeof(Rounds)], MaxTest = 60)]
public class AdviceLawsTests
{
    /// <remarks>
    /// A law of entropy: knowing more never leaves more to know on average. It holds for the exact integral; 0.003 bit is
    /// what the quadrature may be off.
    /// </remarks>
    [Property]
    public void No_reading_is_expected_to_tell_less_than_nothing(RoundCase round)
    {
        foreach (NextReading reading in All(Advice(round.Readings)))
        {
            Assert.True(reading.CauseBits > -0.003, $"{reading.Choice}: {reading.CauseBits}");
            Assert.True(reading.VerdictBits > -0.003, $"{reading.Choice}: {reading.VerdictBits}");
        }
    }

    /// <remarks>A mutual information is at most the entropy of either: nobody learns more than there is to know.</remarks>
    [Property]
    public void No_reading_is_expected_to_tell_more_of_causes_than_there_is_doubt(RoundCase round)
    {
        BoatCheck check = Check(round.Readings);
        double doubt = Entropy.Bits([.. check.Diagnosis.Stories.Select(s => s.Probability)]) + 0.1;

        Assert.All(All(Advice(round.Readings)), reading => Assert.True(reading.CauseBits <= doubt));
    }

    [Property]
    public void The_order_of_the_readings_decides_nothing(RoundCase round) =>
        AssertSame(round.Readings, round.Shuffled, r => r);

    [Property]
    public void A_boat_in_the_mirror_gets_the_advice_in_the_mirror(RoundCase round) =>
        AssertSame(round.Readings, round.Mirrored, Mirrored);

    [Property]
    public void The_others_are_ranked_by_what_they_tell_a_second(RoundCase round)
    {
        Advice advice = Advice(round.Readings);

        Assert.All(advice.Others.Zip(advice.Others.Skip(1)), pair =>
            Assert.True(pair.First.BitsPerSecond >= pair.Second.BitsPerSecond - 1e-8));
    }

    [Property]
    public void What_is_advised_is_worth_it(RoundCase round)
    {
        if (Advice(round.Readings).Next is { Choice.Item: not (NextItem.Level or NextItem.GaugeReversed) } next)
        {
            Assert.True(next.Bits >= AdvisingSettings.Default.LeastGainBits);
        }
    }

    /// <summary>Several lyings, two gauges, pins, oars, points between the stations, gates read at the catch alone.</summary>
    [Property(Arbitrary = [typeof(BoatCases)])]
    public void Whatever_was_read_there_is_advice_and_it_tells_no_less_than_nothing(BoatCase boat)
    {
        if (boat.Readings.Count > 0)
        {
            Advice advice = Advice(new("boat", BoatClass.Parse("4x"), boat.Readings));

            Assert.All(All(advice), r => Assert.True(r.CauseBits > -0.003 && r.VerdictBits > -0.003, $"{r}"));
        }
    }

    private static Advice Advice(BoatReadings readings) => Advisor.For(Check(readings), AdvisingSettings.Default);

    private static BoatCheck Check(BoatReadings readings) => BoatCheck.Of(readings, BoatContext.None, CheckSettings.Default);

    private static IEnumerable<NextReading> All(Advice advice) => advice.Others.Append(advice.Next).OfType<NextReading>();

    /// <summary>
    /// Equal readings may be offered in either order, so bits are compared and not places. Too wide a range is laid to
    /// one of several gates as far out, so what settles it is not compared where a range is judged.
    /// </summary>
    private static void AssertSame(BoatReadings one, BoatReadings other, Func<ReadingChoice, ReadingChoice> turned)
    {
        (Advice expected, Advice actual) = (Advice(one), Advice(other));
        bool ranged = Check(one).Verdict.Gates.Any(g => g.Reasons.Any(r => r.Kind == ReasonKind.Range));
        Dictionary<ReadingChoice, NextReading> others = All(actual).ToDictionary(r => r.Choice);
        Assert.Equal(expected.IsDecided, actual.IsDecided);
        foreach (NextReading reading in All(expected))
        {
            if (others.TryGetValue(turned(reading.Choice), out NextReading? same))
            {
                Assert.Equal(reading.CauseBits, same.CauseBits, 1e-3);
                Assert.Equal(ranged ? 0 : reading.VerdictBits, ranged ? 0 : same.VerdictBits, 1e-3);
            }
        }

        if (!ranged)
        {
            Assert.Equal(expected.Next?.Choice.Item, actual.Next?.Choice.Item);
            Assert.Equal(expected.Next?.Bits ?? 0, actual.Next?.Bits ?? 0, 1e-3);
        }
    }

    private static ReadingChoice Mirrored(ReadingChoice choice) => choice.Gate is { } gate
        ? choice with { Gate = gate with { Side = gate.Side.Opposite() } }
        : choice;
}
