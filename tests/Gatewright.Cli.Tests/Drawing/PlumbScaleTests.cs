using Gatewright.Cli.Drawing;

namespace Gatewright.Cli.Tests.Drawing;

public sealed class PlumbScaleTests
{
    [Fact]
    public void Plumb_is_always_on_the_scale()
    {
        Assert.Equal(10, new PlumbScale([3, 5], 10, 60).Column(0));
        Assert.Equal(60, new PlumbScale([-5, -3], 10, 60).Column(0));
    }

    [Fact]
    public void Degrees_lie_evenly_along_it()
    {
        var scale = new PlumbScale([0, 5], 10, 60);
        Assert.Equal([10, 20, 30, 40, 50, 60], Enumerable.Range(0, 6).Select(degrees => scale.Column(degrees)));
        Assert.Equal(0.1, scale.DegreesAColumn, 1e-12);
    }

    [Fact]
    public void Its_ends_are_whole_degrees() =>
        Assert.Equal(60, new PlumbScale([-0.2, 4.1], 0, 60).Column(5));
}
