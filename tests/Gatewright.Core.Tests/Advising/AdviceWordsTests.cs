using Gatewright.Core.Advising;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Tests.Advising;

public class AdviceWordsTests
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
    public void What_to_do_is_told_in_the_trades_words(ReadingChoice choice, string words) => Assert.Equal(words, choice.ToString());

    [Fact]
    public void Every_kind_of_reading_has_words() =>
        Assert.Equal(Enum.GetValues<NextItem>(), Choices.Select(row => row.Data.Item1.Item).Distinct().Order());

    [Fact]
    public void Codes_are_those_of_the_file_of_readings_where_there_is_one() => Assert.Equal(
        ["gate", "pin-aft", "pin-out", "gate-pitch", "level", "gauge-reversed", "sleeve"],
        Enum.GetValues<NextItem>().Select(item => item.Code()));

    [Fact]
    public void A_level_and_a_reversal_take_two_readings() => Assert.Equal(
        [1, 1, 1, 1, 2, 2, 1], Enum.GetValues<NextItem>().Select(item => item.Readings()));

    [Fact]
    public void Scales_have_codes() => Assert.Equal(
        ["reading", "bow-high", "port-low", "gauge-zero"], Enum.GetValues<OutcomeScale>().Select(scale => scale.Code()));
}
