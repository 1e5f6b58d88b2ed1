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

    /// <remarks>
    /// 3.3 ± 1.96 · 0.61 reaches down to 2.1, above the floor of 2 but not by 1.645 · 0.375 = 0.62, what a single reading must be above it.
    /// It was 3.3 ± 0.8: Φ(1.3/0.8) = 0.948 (the normal table, from memory).
    /// </remarks>
    [Fact]
    public void Where_an_unchanged_catch_is_not_surely_above_the_floor_what_it_was_and_how_sure_that_is_is_said()
    {
        QuickReading pitch = Catch(new RigEstimate(3.3, 0.61)) with { Before = new(3.3, 0.8) };

        Assert.Equal(
            "Seat 3 port: pitch at the catch, 2.1° to 4.5° if nothing changed; as the boat left 3.3 ± 0.8°, above the floor of 2.0° with a chance of 95 %; a reading below 2.6° is not sure to be above the floor of 2.0°: read again, and better, before the boat goes out",
            Wording.English.Travel.Reading(pitch));
        Assert.Contains("vor der Reise 3,3 ± 0,8°, mit einer Wahrscheinlichkeit von 95 % über der Gefahrengrenze von 2,0°; eine Messung unter 2,6°", Wording.German.Travel.Reading(pitch), StringComparison.Ordinal);
    }

    [Fact]
    public void Below_the_floor_too_what_it_was_is_said() => Assert.Contains(
        "as the boat left 1.9 ± 0.4°, above the floor of 2.0° with a chance of 40 %; below 2.0° the boat does not go out",
        Wording.English.Travel.Reading(Catch(new RigEstimate(1.9, 0.61)) with { Before = new(1.9, 0.4) }),
        StringComparison.Ordinal);

    private static QuickReading Catch(RigEstimate? expected) => new(RigItem.PitchCatch, new(3, Side.Port), expected, 2);
}
