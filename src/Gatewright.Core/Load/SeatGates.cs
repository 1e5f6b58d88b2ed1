using Gatewright.Core.Measuring;
using Gatewright.Core.Stroke;

namespace Gatewright.Core.Load;

/// <summary>
/// The gates of one seat, which share its rig, its stretcher and its rower: what these are off by moves both oars of a sculler at
/// once.
/// </summary>
internal sealed class SeatGates
{
    private readonly SeatDrive _drive;
    private readonly int[] _places;
    private readonly double[][] _slopes;

    /// <param name="drive">The seat's drive.</param>
    /// <param name="places">Where its gates stand among the boat's.</param>
    /// <param name="gate">One of them at another drive.</param>
    public SeatGates(SeatDrive drive, int[] places, Func<int, OarCircle, StationAngles, GateOnWater> gate)
    {
        (_drive, _places) = (drive, places);
        _slopes = drive.Slopes(places.Length * GateFigures.Count, (oar, arc, into) =>
        {
            for (int i = 0; i < places.Length; i++)
            {
                GateFigures.Fill(gate(places[i], oar, arc), into.AsSpan(i * GateFigures.Count, GateFigures.Count));
            }
        });
    }

    /// <summary>The variance that rig and arc give a sum of one figure over the boat's gates.</summary>
    public double Variance(int figure, Func<int, double> weight)
    {
        double[] sum = new double[_slopes[0].Length];
        for (int i = 0; i < _places.Length; i++)
        {
            double[] slopes = _slopes[(i * GateFigures.Count) + figure];
            for (int input = 0; input < sum.Length; input++)
            {
                sum[input] += weight(_places[i]) * slopes[input];
            }
        }

        return _drive.Variance(sum);
    }
}

/// <summary>The figures of a gate of which it is asked how they follow rig and arc: its roll at each node, then three means.</summary>
internal static class GateFigures
{
    /// <summary>The mean load at the handle.</summary>
    public const int Handle = DriveNodes.Count;

    /// <summary>The mean roll moment.</summary>
    public const int Roll = Handle + 1;

    /// <summary>The mean roll moment beyond that at the target.</summary>
    public const int RollOff = Roll + 1;

    /// <summary>How many figures there are.</summary>
    public const int Count = RollOff + 1;

    /// <summary>All of them, in their order.</summary>
    public static void Fill(GateOnWater gate, Span<double> into)
    {
        for (int node = 0; node < DriveNodes.Count; node++)
        {
            into[node] = gate.RollLever(node) * gate.Lift(node);
        }

        into[Handle] = gate.MeanHandle;
        into[Roll] = gate.Mean(gate.RollLever);
        into[RollOff] = into[Roll] - gate.MeanAtTarget(gate.RollLever);
    }
}
