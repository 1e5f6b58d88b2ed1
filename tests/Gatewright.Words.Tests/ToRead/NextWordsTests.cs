using Gatewright.Core;
using Gatewright.Core.Advising;
using Gatewright.Core.Measuring;

namespace Gatewright.Words.Tests.ToRead;

public class NextWordsTests
{
    private static readonly GatePlace Three = new(3, Side.Port);

    public static TheoryData<ReadingChoice, string> Choices => new()
    {
        { new(NextItem.Gate, Three, MeasuringSettings.Default.Sweep.Point(Station.Finish)), "read seat 3 port at the finish" },
        { new(NextItem.Gate, Three, MeasuringSettings.Default.Sweep.Point(Station.Abeam)), "read seat 3 port abeam" },
        { new(NextItem.PinAft, Three), "hold the gauge to the pin of seat 3 port from the side and read its lean to stern or bow" },
        { new(NextItem.PinOut, Three), "hold the gauge to the pin of seat 3 port from the end of the boat and read its lean out or in" },
        { new(NextItem.GatePitch, Three), "read the face of seat 3 port against its pin" },
        { new(NextItem.Level), "read the boat's level, along the keel and across it" },
        { new(NextItem.GaugeReversed, Gauge: "blue"), "read one face, turn the gauge end for end on it, and read it again" },
        { new(NextItem.Sleeve, Three), "lay the oar of seat 3 port abeam with its blade on the edge of the boat, and read its sleeve" },
    };

    [Theory]
    [MemberData(nameof(Choices))]
    public void What_to_do_is_told_in_the_trades_words(ReadingChoice choice, string words) => Assert.Equal(words, Wording.English.Next.Of(choice));

    [Fact]
    public void Every_kind_of_reading_has_words() =>
        Assert.Equal(Enum.GetValues<NextItem>(), Choices.Select(row => row.Data.Item1.Item).Distinct().Order());
}
