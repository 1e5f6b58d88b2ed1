using Gatewright.Core.Numerics;

namespace Gatewright.Core.Tests.Numerics;

public class MomentsTests
{
    [Fact]
    public void One_observation_has_a_mean_and_no_scatter()
    {
        Moments moments = Moments.Of([3]);

        Assert.Equal((1, 3.0), (moments.Count, moments.Mean));
        Assert.True(double.IsNaN(moments.Sd));
    }

    [Fact]
    public void No_observations_have_no_mean()
    {
        var error = Assert.Throws<ArgumentException>(() => Moments.Of([]));

        Assert.Equal("No observations have no mean. (Parameter 'values')", error.Message);
    }

    [Fact]
    public void The_divisor_is_one_less_than_the_count()
    {
        // 2, 4, 6 about 4: squares 4 + 0 + 4 over 2.
        Moments moments = Moments.Of([2, 4, 6]);

        Assert.Equal((4.0, 2.0), (moments.Mean, moments.Sd));
    }
}
