using FsCheck.Xunit;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Measuring;

/// <summary>
/// Reversal: turned end for end on one face, the face's angle changes its sign in the reading and the gauge's own zero
/// does not (the principle of WYLER, Compendium of inclination measurement, 1.10, with the face and the gauge in each
/// other's place).
/// </summary>
public class GaugeZeroTests
{
    [Fact]
    public void A_reversal_tells_the_zero_from_the_face()
    {
        var zero = GaugeZero.FromReversal(Angle.FromDegrees(2.3), Angle.FromDegrees(-1.9), Angle.FromDegrees(0.05));

        Close.To(0.2, zero.Estimate.Value.Degrees, 1e-15);
        Assert.Equal(0.05, zero.Estimate.U.Degrees);
        Assert.True(zero.IsChecked);
    }

    [Property]
    public void Whatever_the_face_the_zero_is_found(short face, sbyte zero)
    {
        double f = face / 1000.0;
        double z = zero / 100.0;

        var found = GaugeZero.FromReversal(Angle.FromDegrees(f + z), Angle.FromDegrees(-f + z), Angle.FromDegrees(0.05));

        Close.To(z, found.Estimate.Value.Degrees, 1e-13);
    }

    [Fact]
    public void A_zero_nobody_checked_is_taken_to_be_none()
    {
        var zero = GaugeZero.Assumed(Angle.FromDegrees(0.2));

        Assert.Equal((Estimate.FromDegrees(0, 0.2), false), (zero.Estimate, zero.IsChecked));
    }
}
