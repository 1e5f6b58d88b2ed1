using Gatewright.Core.Checking;
using Gatewright.Core.Mending.Options;
using static Gatewright.Core.Tests.Diagnosing.Boats;

namespace Gatewright.Core.Tests.Mending.Options;

/// <summary>Common practice: no more than 1.5° between two gates of a boat at one station.</summary>
public class BoatRangeTests
{
    [Theory]
    [InlineData(5.5, true, false)] // exactly 1.5° apart: allowed
    [InlineData(5.6, true, true)] // 1.6°, read to 0.35° each: nobody can tell
    [InlineData(7.0, false, false)] // 3°: surely too far
    public void Two_gates_that_are_left_are_judged_as_they_were_read(double other, bool allowed, bool inDoubt)
    {
        BoatCheck check = Sheds.Pair(other, other, other);
        GateOption bow = GateOptions.Left(check, Starboard(1));
        GateOption stroke = GateOptions.Left(check, Port(2));
        var range = new BoatRange(check);

        Assert.Equal(allowed, range.Allows(bow, stroke));
        Assert.Equal(inDoubt, range.IsInDoubt(bow, stroke));
        Assert.Equal(range.Allows(bow, stroke), range.Allows(stroke, bow));
    }

    [Fact]
    public void A_gate_that_is_mended_is_held_to_the_standard_whatever_its_uncertainty()
    {
        BoatCheck check = Sheds.Pair(7, 7, 7);
        GateOption bow = GateOptions.Left(check, Starboard(1));
        var range = new BoatRange(check);

        foreach (GateOption option in GateOptions.All(check, Port(2), Sheds.Usual).Skip(1))
        {
            bool near = Stations.All.All(s => Math.Abs(option.Pitches[(int)s].Pitch.Value.Degrees - 4) <= 1.5005);
            Assert.Equal(near, range.Allows(bow, option));
            Assert.False(range.IsInDoubt(bow, option));
        }
    }

    [Fact]
    public void A_station_that_one_of_two_gates_was_not_read_at_does_not_count()
    {
        BoatCheck check = Sheds.Check(null, Read(Starboard(1), Station.Catch, 4), Read(Port(2), Station.Finish, 8));

        Assert.True(new BoatRange(check).Allows(GateOptions.Left(check, Starboard(1)), GateOptions.Left(check, Port(2))));
    }
}
