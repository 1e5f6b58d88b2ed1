using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;

namespace Gatewright.Core.Load;

/// <summary>
/// Which gate to mend first: over many draws of what all gates and sleeves may be at once, by how much each gate's mending, exactly to its
/// target, lowers what is asked about.
/// </summary>
internal sealed class MendChoice
{
    /// <summary>A share of a half is told within 0.02 of itself (one standard deviation); stratified by story, mostly better.</summary>
    private const int Count = 600;

    private readonly GateOnWater[] _gates;
    private readonly SleevesOnWater _sleeves;
    private readonly IReadOnlyList<double> _nodeShares;
    private readonly GateShare[] _slopes;
    private readonly double[] _lifts;
    private readonly double[] _rolls;
    private readonly double[] _handles;
    private readonly double[] _mended;
    private readonly double[] _turned;

    public MendChoice(GateOnWater[] gates, SleevesOnWater sleeves)
    {
        (_gates, _sleeves, _nodeShares) = (gates, sleeves, gates[0].Nodes.Shares);
        _slopes = new GateShare[gates.Length * DriveNodes.Count];
        for (int i = 0; i < _slopes.Length; i++)
        {
            (int gate, int node) = (i / DriveNodes.Count, i % DriveNodes.Count);
            _slopes[i] = gates[gate].Share(node, 1);
        }

        _lifts = new double[_slopes.Length];
        _rolls = new double[DriveNodes.Count];
        (_handles, _mended, _turned) = (new double[gates.Length], new double[gates.Length], new double[gates.Length]);
    }

    public (MendFirst ForRoll, MendFirst ForLoad) Of(StoryWeights weights, Func<double> normal)
    {
        var roll = new Tally(_gates.Length);
        var load = new Tally(_gates.Length);
        double[] lowered = new double[_gates.Length];
        int[] places = _sleeves.Drawn;
        double[] means = _sleeves.MeansOf(places);
        foreach (double[] state in new StateDraws(weights, normal, places).Take(Count))
        {
            _sleeves.Draw(state.AsSpan(3 * _gates.Length), places, means, normal, _turned);
            Fill(state);
            double now = RollWithout(null);
            for (int gate = 0; gate < lowered.Length; gate++)
            {
                lowered[gate] = now - RollWithout(gate);
            }

            roll.Add(now, lowered);
            now = SpreadWith(null);
            for (int gate = 0; gate < lowered.Length; gate++)
            {
                lowered[gate] = now - SpreadWith(gate);
            }

            load.Add(now, lowered);
        }

        return (roll.Told(_gates), load.Told(_gates));
    }

    /// <summary>
    /// Of each gate and node the lift beyond that at the gate's target, and what follows for the boat. A gate mended leaves its
    /// oar's sleeve as it is.
    /// </summary>
    private void Fill(double[] state)
    {
        Array.Clear(_rolls);
        Array.Clear(_handles);
        Array.Clear(_mended);
        for (int gate = 0; gate < _gates.Length; gate++)
        {
            GateOnWater on = _gates[gate];
            GateState target = on.Target;
            double pitch = state[3 * gate] - target.GatePitch.Degrees;
            double aft = state[(3 * gate) + 1] - target.Pin.Aft.Degrees;
            double leanOut = state[(3 * gate) + 2] - target.Pin.Out.Degrees;
            for (int node = 0; node < DriveNodes.Count; node++)
            {
                int at = (gate * DriveNodes.Count) + node;
                GateShare slopes = _slopes[at];
                _lifts[at] = (slopes.GatePitch * pitch) + (slopes.Aft * aft) + (slopes.Out * leanOut);
                double mended = on.AtTarget(node) + (slopes.GatePitch * _turned[gate]);
                double lift = mended + _lifts[at];
                _rolls[node] += on.RollLever(node) * lift;
                _handles[gate] += _nodeShares[node] * on.HandleShare * lift;
                _mended[gate] += _nodeShares[node] * on.HandleShare * mended;
            }
        }
    }

    private double RollWithout(int? mended)
    {
        double sum = 0;
        for (int node = 0; node < _rolls.Length; node++)
        {
            double roll = mended is { } gate
                ? _rolls[node] - (_gates[gate].RollLever(node) * _lifts[(gate * _rolls.Length) + node])
                : _rolls[node];
            sum += _nodeShares[node] * roll * roll;
        }

        return Math.Sqrt(sum);
    }

    private double SpreadWith(int? mended)
    {
        (double sum, double squares) = (0, 0);
        for (int gate = 0; gate < _handles.Length; gate++)
        {
            double handle = gate == mended ? _mended[gate] : _handles[gate];
            sum += handle;
            squares += handle * handle;
        }

        double mean = sum / _handles.Length;
        return Math.Sqrt(Math.Max(0, (squares / _handles.Length) - (mean * mean)));
    }

    /// <summary>Counts over the draws.</summary>
    private sealed class Tally(int gates)
    {
        // Each gate's, then what stands for none of them: how it is now, and how often none helps.
        private readonly double[] _falls = new double[gates + 1];
        private readonly int[] _best = new int[gates + 1];

        public void Add(double now, double[] lowered)
        {
            _falls[^1] += now;
            int best = 0;
            for (int gate = 0; gate < lowered.Length; gate++)
            {
                _falls[gate] += lowered[gate];
                best = lowered[gate] > lowered[best] ? gate : best;
            }

            _best[lowered[best] > 0 ? best : lowered.Length]++;
        }

        public MendFirst Told(GateOnWater[] on)
        {
            var gains = new MendGain[on.Length];
            for (int gate = 0; gate < gains.Length; gate++)
            {
                gains[gate] = new(on[gate].Gate, _falls[gate] / Count, (double)_best[gate] / Count);
            }

            Array.Sort(gains, Order);
            return new(_falls[^1] / Count, gains, (double)_best[^1] / Count);
        }

        private static int Order(MendGain one, MendGain other)
        {
            int byProbability = other.Probability.CompareTo(one.Probability);
            return byProbability != 0 ? byProbability : one.Gate.CompareTo(other.Gate);
        }
    }
}
