using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Load;

/// <summary>The oar angles at which a drive is looked at, from catch to finish, with the share of each in a mean over the arc.</summary>
/// <remarks>
/// Simpson's rule over 12 equal steps of the angle: for a half sine times sines and cosines of the angle it is within a
/// ten-thousandth of the integral.
/// </remarks>
public sealed class DriveNodes
{
    /// <summary>How many there are.</summary>
    internal const int Count = Steps + 1;

    private const int Steps = 12;

    /// <summary>The nodes of a drive.</summary>
    public DriveNodes(StationAngles drive)
    {
        ArgumentNullException.ThrowIfNull(drive);
        var angles = new OarAngle[Count];
        double[] shares = new double[Count];
        for (int i = 0; i <= Steps; i++)
        {
            angles[i] = OarAngle.FromDegrees(double.Lerp(drive.Catch.Degrees, drive.Finish.Degrees, (double)i / Steps));
            shares[i] = (i is 0 or Steps ? 1 : i % 2 == 1 ? 4 : 2) / (3.0 * Steps);
        }

        (Angles, Shares) = (angles, shares);
    }

    /// <summary>From catch to finish.</summary>
    public IReadOnlyList<OarAngle> Angles { get; }

    /// <summary>They sum to 1.</summary>
    public IReadOnlyList<double> Shares { get; }
}
