using Gatewright.Core;
using Gatewright.Core.Changing;
using Gatewright.Core.Rig;

namespace Gatewright.Words.Tests.TheChange;

public class TravelWordsTests
{
    /// <remarks>3.0 ± 1.96 · 0.61 reaches down to 1.8, under the floor of 2.</remarks>
    [Fact]
    public void Where_an_unchanged_catch_may_be_below_the_floor_it_is_said()
    {
        QuickReading pitch = Catch(new RigEstimate(3, 0.61));

        Assert.Equal(
            "Seat 3 port: pitch at the catch, 1.8° to 4.2° if nothing changed; below 2.0° the boat does not go out, changed or not",
            Wording.English.Travel.Reading(pitch));
        Assert.Contains("; unter 2,0° bleibt das Boot an Land", Wording.German.Travel.Reading(pitch), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_was_known_the_floor_is_said_too() =>
        Assert.EndsWith("before; below 2.0° the boat does not go out, changed or not", Wording.English.Travel.Reading(Catch(null)), StringComparison.Ordinal);

    /// <remarks>4.0 ± 1.96 · 0.61 reaches down to 2.8.</remarks>
    [Fact]
    public void Where_the_range_lies_above_the_floor_nothing_is_added() =>
        Assert.EndsWith("2.8° to 5.2° if nothing changed", Wording.English.Travel.Reading(Catch(new RigEstimate(4, 0.61))), StringComparison.Ordinal);

    private static QuickReading Catch(RigEstimate? expected) => new(RigItem.PitchCatch, new(3, Side.Port), expected, 2);
}
