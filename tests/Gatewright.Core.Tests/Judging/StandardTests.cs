using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;

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
    public void Nothing_is_judged_by_limits_that_do_not_rise(double lowest, double highest, double floor)
    {
        var limits = StationLimits.FromDegrees(lowest, highest, floor);
        foreach (Standard standard in new[] { Standard.Club with { Catch = limits }, Standard.Club with { Abeam = limits }, Standard.Club with { Finish = limits } })
        {
            Assert.Throws<ArgumentException>(() => new Judge(standard, DecisionRule.Default, MeasuringSettings.Default));
        }

        Assert.False(limits.AreInOrder);
    }

    [Fact]
    public void What_does_not_rise_is_named()
    {
        Standard standard = Standard.Club with { Abeam = StationLimits.FromDegrees(5, 3.5, 2) };

        Assert.Equal(
            "Limits must rise from the floor to the lowest to the highest pitch: those of club abeam, 2°, 5°, 3.5°, do not. (Parameter 'standard')",
            Assert.Throws<ArgumentException>(() => new Judge(standard, DecisionRule.Default, MeasuringSettings.Default)).Message);
    }

    [Fact]
    public void A_limit_may_be_its_floor_and_two_limits_may_be_one() =>
        Assert.True(StationLimits.FromDegrees(3, 3, 3).AreInOrder);

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
