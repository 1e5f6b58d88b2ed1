using Gatewright.Core.Advising;

namespace Gatewright.Core.Tests.Advising;

public class AdviceCodeTests
{
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
