using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Tests.Advising;

/// <summary>What a reading is expected to tell, against every outcome tried in turn.</summary>
public class ExpectedGainTests
{
    private static readonly HullLevel ByEye = new HullLevel.ByEye();

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
        ["a single, port low"] = Round.Abeam("1x", null, 3, 4),
        ["a double, one gate perhaps high"] = Round.Abeam("2x", null, 4, 4.5, 5.5, 4),
        ["a pair, one gate read twice"] = Round.Abeam("2-", null, 4, 5.5).Gate(new(2, Side.Port), Station.Catch, 4),
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_gain_is_that_of_trying_every_outcome(string boat, int place)
    {
        BoatCheck check = Boats[boat].Check;
        Advice advice = Advisor.For(check, AdvisingSettings.Default);
        List<NextReading> considered = [.. advice.Others.Prepend(advice.Next!).Where(r => r.Choice.Gate is not null)];
        NextReading reading = considered[place * (considered.Count - 1) / 3];

        Told told = new BruteForce(check, reading.Choice).Told();
        TestContext.Current.TestOutputHelper!.WriteLine($"{reading.Choice}: {reading.CauseBits:0.0000}+{reading.VerdictBits:0.0000} brute {told}");
        Assert.Equal(1, told.Total, 1e-6);
        Assert.Equal(told.CauseBits, reading.CauseBits, 0.003);
        Assert.Equal(told.VerdictBits, reading.VerdictBits, 0.003);
        Assert.Equal(told.StoryBits, reading.CauseBits, 0.003);
    }
}
