using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Measuring;

/// <summary>The default numbers, on which any two reckonings must agree.</summary>
public class SettingsTests
{
    private static readonly MeasuringSettings Default = MeasuringSettings.Default;

    [Theory]
    [InlineData(Rowing.Sweep, 55, 0, -35)]
    [InlineData(Rowing.Scull, 62, 0, -43)]
    public void Stations_are_at_the_agreed_oar_angles(Rowing rowing, double atCatch, double abeam, double atFinish)
    {
        StationAngles angles = Default.Angles(rowing);

        Assert.Equal(
            [atCatch, abeam, atFinish],
            Stations.All.Select(station => angles.At(station).Degrees));
    }

    [Fact]
    public void Uncertainties_are_the_agreed_ones()
    {
        Assert.Equal(5, Default.HeldAngleU.Degrees);
        Assert.Equal(1, Default.HeldAbeamU.Degrees);
        Assert.Equal(0.5, Default.PitchDegreesPerRadianOfOar);
        Assert.Equal(0.05, Default.CheckedGaugeZeroU.Degrees);

        Gauge gauge = Default.GaugeNamed("any");
        Assert.Equal(0.5, gauge.Resolution.Degrees);
        Assert.Equal(0.2, gauge.Repeatability.Degrees);
        Assert.Equal(Estimate.FromDegrees(0, 0.2), gauge.Zero.Estimate);
        Assert.False(gauge.Zero.IsChecked);
    }

    public static TheoryData<HullLevel, double> WaysOfLevelling => new()
    {
        { new HullLevel.Read(HullAttitude.FromDegrees(0.4, -0.3)), 0.1 },
        { new HullLevel.BubbleCentred(), 0.2 },
        { new HullLevel.ByEye(), 0.7 },

        // The reading of the rack and what the rack leaves open: √(0.1² + 0.15²), √(0.1² + 0.7²).
        { new HullLevel.OfRack(new("firm", HullAttitude.FromDegrees(0.4, -0.3), Bedding.Firm)), 0.180278 },
        { new HullLevel.OfRack(new("soft", HullAttitude.FromDegrees(0.4, -0.3), Bedding.Soft)), 0.707107 },
    };

    [Theory]
    [MemberData(nameof(WaysOfLevelling))]
    public void Each_way_of_levelling_has_its_uncertainty(HullLevel level, double u)
    {
        var estimate = LevelEstimate.Of(level, Default);

        Close.To(u, estimate.U.Degrees, 5e-7);
        Assert.Equal(
            level is HullLevel.Read or HullLevel.OfRack ? HullAttitude.FromDegrees(0.4, -0.3) : HullAttitude.Level,
            estimate.Attitude);
    }

    [Fact]
    public void An_angle_that_is_a_stations_is_that_station()
    {
        Assert.Equal(Station.Catch, Default.Sweep.Point(OarAngle.FromDegrees(55)).Station);
        Assert.Equal(Station.Abeam, Default.Sweep.Point(OarAngle.FromDegrees(0)).Station);
        Assert.Equal(Station.Finish, Default.Scull.Point(OarAngle.FromDegrees(-43)).Station);
        Assert.Null(Default.Scull.Point(OarAngle.FromDegrees(55)).Station);
    }

    [Theory]
    [InlineData(55, "catch", "at the catch")]
    [InlineData(0, "abeam", "abeam")]
    [InlineData(-35, "finish", "at the finish")]
    [InlineData(20.5, "20.5°", "at 20.5° from abeam")]
    public void A_point_of_the_stroke_has_its_words(double degrees, string word, string phrase)
    {
        StrokePoint point = Default.Sweep.Point(OarAngle.FromDegrees(degrees));

        Assert.Equal(word, point.ToString());
        Assert.Equal(phrase, point.Phrase());
    }
}
