using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;

namespace Gatewright.Core.Tests.Judging;

public class StandardTests
{
    // Common practice: catch 3 to 5, the range of 1.5, the floors. The rest is this project's.
    [Theory]
    [InlineData("club", Station.Catch, 3, 5, 2)]
    [InlineData("club", Station.Abeam, 3, 5, 2)]
    [InlineData("club", Station.Finish, 1.5, 5, 0)]
    [InlineData("race", Station.Catch, 3.5, 4.5, 2)]
    [InlineData("race", Station.Abeam, 3.5, 4.5, 2)]
    [InlineData("race", Station.Finish, 2.5, 4.5, 0)]
    public void Built_in_standards_have_the_agreed_limits(string name, Station station, double lowest, double highest, double floor) =>
        Assert.Equal(StationLimits.FromDegrees(lowest, highest, floor), Named(name).At(station));

    [Theory]
    [InlineData("club", 2.5, 1.5)]
    [InlineData("race", 1.5, 0.5)]
    public void Built_in_standards_have_the_agreed_drop_and_range(string name, double drop, double range) =>
        Assert.Equal((drop, range), (Named(name).LargestDrop.Degrees, Named(name).LargestRange.Degrees));

    [Theory]
    [InlineData(5, 3, 2)]
    [InlineData(3, 5, 3.01)]
    public void Limits_that_do_not_rise_are_refused(double lowest, double highest, double floor)
    {
        var error = Assert.Throws<ArgumentException>(() => StationLimits.FromDegrees(lowest, highest, floor));

        Assert.Equal(
            FormattableString.Invariant($"Limits must rise from the floor to the lowest to the highest pitch: {floor}°, {lowest}°, {highest}° do not."),
            error.Message);
    }

    [Fact]
    public void A_limit_may_be_its_floor_and_two_limits_may_be_one() =>
        Assert.Equal(Pitch.FromDegrees(3), StationLimits.FromDegrees(3, 3, 3).Floor);

    [Fact]
    public void Verdicts_stand_worst_last_and_have_their_words()
    {
        Assert.Equal([Verdict.Good, Verdict.Unsure, Verdict.Adjust, Verdict.Stop], Verdicts.All);
        Assert.Equal(Verdicts.All.Order(), Verdicts.All);
        Assert.Equal(["good", "unsure", "adjust", "stop"], Verdicts.All.Select(v => v.Word()));
        Assert.All(Verdicts.All, v => Assert.Equal(v, Verdicts.Worse(Verdict.Good, v)));
        Assert.All(Verdicts.All, v => Assert.Equal(Verdict.Stop, Verdicts.Worse(v, Verdict.Stop)));
    }

    private static Standard Named(string name) => Standard.BuiltIn.Single(s => s.Name == name);
}
