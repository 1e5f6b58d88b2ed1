using Gatewright.Core.Advising;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Tests.Advising;

public class CertainReadingTests
{
    private static readonly GatePlace Two = new(2, Side.Port);

    [Fact]
    public void Reading_once_more_what_was_read_many_times_tells_almost_nothing()
    {
        Round once = Round.Abeam("2-", null, 4, 2.5);
        Round often = Enumerable.Range(0, 40).Aggregate(once, (r, _) => r.Gate(Two, Station.Abeam, 2.5));

        // A forty-first reading still sharpens a mean of forty a little: ½ log₂ (1 + 1/40) is 0.018 bit.
        Assert.True(Abeam(often).Bits < 0.018, $"{Abeam(often).Bits}");
        Assert.True(Abeam(often).CauseBits < 0.002, $"{Abeam(often).CauseBits}");
        Assert.True(Abeam(once).Bits > 0.05, $"{Abeam(once).Bits}");
    }

    [Fact]
    public void A_pin_whose_lean_is_known_tells_nothing_of_causes_when_it_is_read_again()
    {
        Round known = Enumerable.Range(0, 40).Aggregate(
            Round.Abeam("2-", null, 4, 6.5), (r, _) => r.Pin(ReadItem.PinAft, Two, 2.5));

        Assert.True(Of(known, NextItem.PinAft).CauseBits < 0.002);
        Assert.True(Of(known, NextItem.PinOut).CauseBits > 0.1);
    }

    [Fact]
    public void Abeam_a_lean_out_cannot_be_seen_so_that_a_second_reading_there_does_not_tell_of_it()
    {
        Round round = Round.Abeam("2-", null, 4, 6.5).Pin(ReadItem.PinAft, Two, 2.5);

        Assert.True(Abeam(round).CauseBits < 0.05 * Of(round, NextItem.PinOut).CauseBits);
    }

    private static NextReading Abeam(Round round) =>
        All(round).Single(r => r.Choice.Item == NextItem.Gate && r.Choice.Gate == Two && r.Choice.At!.Value.Station == Station.Abeam);

    private static NextReading Of(Round round, NextItem item) =>
        All(round).Single(r => r.Choice.Item == item && r.Choice.Gate == Two);

    private static IEnumerable<NextReading> All(Round round) => round.Advice.Others.Append(round.Advice.Next!);
}
