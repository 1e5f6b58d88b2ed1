using Gatewright.Planning.Choosing;

namespace Gatewright.Planning.Tests.Choosing;

public class RankedAimsTests
{
    private static readonly ChoiceModel Model = new([[Choice.Free, Choice.Free], [Choice.Free, Choice.Free]], [], []);

    private static readonly RankedAims Ranked = new(
        new Aim.OfOptions("parts", false, [[0, 3], [1, 2]]),
        new Aim.OfOptions("minutes", false, [[20, 10], [15, 5]]));

    // Minutes reach 20 + 15 = 35 at most, so a part weighs 36.
    [Fact]
    public void One_of_the_first_weighs_more_than_all_of_the_second() =>
        Assert.Equal([20, (3 * 36) + 10, 36 + 15, (2 * 36) + 5], Ranked.Worth);

    [Theory]
    [InlineData(new[] { 0, 0 }, 36 + 35)]
    [InlineData(new[] { 1, 1 }, (5 * 36) + 15)]
    public void Its_value_is_all_in_one(int[] chosen, long expected) => Assert.Equal(expected, Ranked.Of(Model, chosen));

    [Fact]
    public void Its_ideal_is_that_of_each() => Assert.Equal((1 * 36) + 15, Ranked.Ideal);

    // Chosen: 1 part, 35 minutes.
    [Theory]
    [InlineData(36 + 35, 1, 35)] // proven, both
    [InlineData(36 + 30, 1, 30)] // parts proven; minutes might be 30
    [InlineData(36 + 3, 1, 15)] // never below what no choice can better
    [InlineData(0, 1, 15)] // the bound says nothing: the ideals remain
    public void A_bound_is_told_aim_by_aim(long bound, long parts, long minutes)
    {
        AimResult[] account = [.. Ranked.Account(Model, [0, 0], bound)];

        Assert.Equal([new("parts", 1, parts), new AimResult("minutes", 35, minutes)], account);
    }

    [Fact]
    public void While_the_first_is_not_proven_nothing_is_known_of_the_second()
    {
        // Chosen: 4 parts, 25 minutes; a bound of 3 parts and 30 minutes.
        AimResult[] account = [.. Ranked.Account(Model, [1, 0], (3 * 36) + 30)];

        Assert.Equal([new("parts", 4, 3), new AimResult("minutes", 25, 15)], account);
    }
}
