using Gatewright.Cli.Simulate;

namespace Gatewright.Cli.Tests.Simulate;

/// <summary>The arithmetic of a simulation's figures.</summary>
public sealed class FiguresOfASimulationTests
{
    /// <remarks>√(0.5 · 0.5/100) = 0.05; √(0.1 · 0.9/400) = 0.015.</remarks>
    [Theory]
    [InlineData(50, 100, 0.5, 0.05)]
    [InlineData(40, 400, 0.1, 0.015)]
    [InlineData(0, 10, 0, 0)]
    [InlineData(0, 0, 0, 0)]
    public void A_share_has_the_error_of_its_binomial(int hits, int of, double share, double error)
    {
        var counted = new Counted(hits, of);

        Assert.Equal(share, counted.Share, 1e-12);
        Assert.Equal(error, counted.Error, 1e-12);
    }

    /// <remarks>1, 2, 3, 4: mean 2.5, deviation √(5/3), over √4 that is 0.645497.</remarks>
    [Fact]
    public void A_mean_has_the_error_of_its_scatter()
    {
        Averaged averaged = Averaged.Over([1.0, 2, 3, 4], x => x);

        Assert.Equal(2.5, averaged.Value, 1e-12);
        Assert.Equal(0.645497, averaged.Error, 1e-6);
    }

    /// <remarks>
    /// G. W. Brier, Verification of forecasts expressed in terms of probability, Monthly Weather Review 78 (1950): the square
    /// of what was stated less 1 or 0. 0.7 of what was true costs 0.09, of what was not 0.49.
    /// </remarks>
    [Fact]
    public void What_was_stated_costs_the_square_of_what_it_was_off()
    {
        Assert.Equal(0.09, new Statement(0.7, 0.1, true).Square(0.7), 1e-12);
        Assert.Equal(0.49, new Statement(0.7, 0.1, false).Square(0.7), 1e-12);
    }

    [Fact]
    public void A_band_counts_what_was_called_so_probable_and_its_end_only_where_that_is_certainty()
    {
        Statement[] all = [new(0.2, 0, true), new(0.3, 0, false), new(0.4, 0, true), new(1, 0, true)];

        ReliabilityBand middle = ReliabilityBand.Of(0.2, 0.4, all)!;
        ReliabilityBand last = ReliabilityBand.Of(0.95, 1, all)!;

        Assert.Equal(new Counted(1, 2), middle.True);
        Assert.Equal(0.25, middle.Stated, 1e-12);

        // √(0.2 · 0.8 + 0.3 · 0.7)/2.
        Assert.Equal(0.304138, middle.Error, 1e-6);
        Assert.Equal(new Counted(1, 1), last.True);
        Assert.Null(ReliabilityBand.Of(0.5, 0.9, all));
    }
}
