using System.Collections.Concurrent;
using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Tests.Advising;

/// <summary>What a reading is expected to tell, against every outcome tried in turn.</summary>
public class ExpectedGainTests
{
    private static readonly HullLevel ByEye = new HullLevel.ByEye();

    private static readonly ConcurrentDictionary<(string, int), Told> Tried = new();

    /// <summary>Boats small enough to be diagnosed from scratch thousands of times.</summary>
    public static TheoryData<string, int> Cases
    {
        get
        {
            var data = new TheoryData<string, int>();
            foreach (string name in Boats.Keys)
            {
                for (int place = 0; place < 4; place++)
                {
                    data.Add(name, place);
                }
            }

            return data;
        }
    }

    private static Dictionary<string, Round> Boats { get; } = new()
    {
        ["a pair, one gate high"] = Round.Abeam("2-", null, 4, 6),
        ["a pair, one gate low"] = Round.Abeam("2-", null, 4, 2.5),
        ["a pair levelled by eye, both high"] = Round.Abeam("2-", ByEye, 5.5, 6),
        ["a single, port low"] = Round.Abeam("1x", null, 2.5, 4),
        ["a double, one gate perhaps high"] = Round.Abeam("2x", null, 4, 4.5, 5.5, 4),
        ["a pair, one gate read twice"] = Round.Abeam("2-", null, 4, 5.5).Gate(new(2, Side.Port), Station.Catch, 4),
    };

    /// <remarks>
    /// 0.003 bit: the quadrature's own 0.002, and what an account loses by being taken as one normal.
    /// </remarks>
    [Theory]
    [MemberData(nameof(Cases))]
    public void The_gain_is_that_of_trying_every_outcome(string boat, int place)
    {
        (BoatCheck check, NextReading reading) = Considered(boat, place);

        Told told = Tried.GetOrAdd((boat, place), _ => new BruteForce(check, reading.Choice).Told());

        Assert.Equal(1, told.Total, 1e-6);
        Assert.Equal(told.CauseBits, reading.CauseBits, 0.003);
        Assert.Equal(told.VerdictBits + new JudgedAgain(check).Drop(reading.Choice), reading.VerdictBits, 0.003);
    }

    /// <remarks>
    /// 0.03 bit: what a reading of one gate tells of the others, through level and gauge, is left out on purpose.
    /// </remarks>
    [Theory]
    [MemberData(nameof(Cases))]
    public void Seen_from_one_gate_little_is_lost_of_what_the_whole_boat_learns(string boat, int place)
    {
        (BoatCheck check, NextReading reading) = Considered(boat, place);

        Told told = Tried.GetOrAdd((boat, place), _ => new BruteForce(check, reading.Choice).Told());

        Assert.Equal(told.StoryBits, reading.CauseBits, 0.03);
    }

    /// <summary>Of all readings considered at gates the first, the last, and two between.</summary>
    private static (BoatCheck Check, NextReading Reading) Considered(string boat, int place)
    {
        BoatCheck check = Boats[boat].Check;
        Advice advice = Advisor.For(check, AdvisingSettings.Default);
        List<NextReading> considered = [.. advice.Others.Prepend(advice.Next!).Where(r => r.Choice.Gate is not null)];
        return (check, considered[place * (considered.Count - 1) / 3]);
    }
}
