using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Load;

/// <summary>
/// What to mend first: over many draws of what all gates and sleeves may be at once, by how much each gate's mending, exactly to its
/// target, lowers what is asked about; and each sleeve's turning, by its best value.
/// </summary>
/// <remarks>
/// A mended gate is proved by readings; a sleeve is turned by an amount that is told, and what that is off by stays. So only a sleeve that is
/// off by more than twice what its amount is off by is among what could be mended: nobody turns one by 0.3 ± 0.7°.
/// </remarks>
internal sealed class MendChoice
{
    /// <summary>A share of a half is told within 0.02 of itself (one standard deviation); stratified by story, mostly better.</summary>
    private const int Count = 600;

    private readonly GateOnWater[] _gates;
    private readonly SleevesOnWater _sleeves;
    private readonly IReadOnlyList<double> _nodeShares;
    private readonly GateShare[] _slopes;
    private readonly double[] _rolls;
    private readonly double[] _handles;
    private readonly double[] _turned;

    // What could be done: each gate mended, then each sleeve turned that was read. Of each, where it is, the lift that it takes away
    // at each node, and the handle's load.
    private readonly int[] _places;
    private readonly double[][] _less;
    private readonly double[] _handleLess;

    public MendChoice(GateOnWater[] gates, SleevesOnWater sleeves)
    {
        (_gates, _sleeves, _nodeShares) = (gates, sleeves, gates[0].Nodes.Shares);
        _slopes = new GateShare[gates.Length * DriveNodes.Count];
        for (int i = 0; i < _slopes.Length; i++)
        {
            (int gate, int node) = (i / DriveNodes.Count, i % DriveNodes.Count);
            _slopes[i] = gates[gate].Share(node, 1);
        }

        _rolls = new double[DriveNodes.Count];
        (_handles, _turned) = (new double[gates.Length], new double[gates.Length]);
        int[] all = [.. Enumerable.Range(0, gates.Length)];
        _places = [.. all, .. all.Where(i => sleeves.IsRead[i] && IsOff(sleeves[i]))];
        _less = Array.ConvertAll(_places, _ => new double[DriveNodes.Count]);
        _handleLess = new double[_places.Length];
        for (int work = gates.Length; work < _places.Length; work++)
        {
            FillSleeve(work);
        }
    }

    public (MendFirst ForRoll, MendFirst ForLoad) Of(StoryWeights weights, Func<double> normal)
    {
        var roll = new Tally(_places.Length);
        var load = new Tally(_places.Length);
        double[] lowered = new double[_places.Length];
        int[] drawn = _sleeves.Drawn;
        double[] means = _sleeves.MeansOf(drawn);
        foreach (double[] state in new StateDraws(weights, normal, drawn).Take(Count))
        {
            _sleeves.Draw(state.AsSpan(3 * _gates.Length), drawn, means, normal, _turned);
            Fill(state);
            roll.Add(RollWithout(null), lowered, work => RollWithout(work));
            load.Add(SpreadWithout(null), lowered, work => SpreadWithout(work));
        }

        return (Told(roll), Told(load));
    }

    private static bool IsOff(Estimate sleeve) => Math.Abs(sleeve.Value.Degrees) > 2 * sleeve.U.Degrees;

    /// <summary>A sleeve turned by its best value takes the same away in every draw.</summary>
    private void FillSleeve(int work)
    {
        int gate = _places[work];
        double turn = _sleeves[gate].Value.Degrees;
        for (int node = 0; node < DriveNodes.Count; node++)
        {
            _less[work][node] = turn * _slopes[(gate * DriveNodes.Count) + node].GatePitch;
            _handleLess[work] += _nodeShares[node] * _gates[gate].HandleShare * _less[work][node];
        }
    }

    /// <summary>
    /// Of each gate and node the lift beyond that at the gate's target, and what follows for the boat. A gate mended leaves its
    /// oar's sleeve as it is.
    /// </summary>
    private void Fill(double[] state)
    {
        Array.Clear(_rolls);
        Array.Clear(_handles);
        Array.Clear(_handleLess, 0, _gates.Length);
        for (int gate = 0; gate < _gates.Length; gate++)
        {
            GateOnWater on = _gates[gate];
            GateState target = on.Target;
            double pitch = state[3 * gate] - target.GatePitch.Degrees;
            double aft = state[(3 * gate) + 1] - target.Pin.Aft.Degrees;
            double leanOut = state[(3 * gate) + 2] - target.Pin.Out.Degrees;
            for (int node = 0; node < DriveNodes.Count; node++)
            {
                GateShare slopes = _slopes[(gate * DriveNodes.Count) + node];
                double beyond = (slopes.GatePitch * pitch) + (slopes.Aft * aft) + (slopes.Out * leanOut);
                double lift = on.AtTarget(node) + (slopes.GatePitch * _turned[gate]) + beyond;
                _less[gate][node] = beyond;
                _rolls[node] += on.RollLever(node) * lift;
                _handles[gate] += _nodeShares[node] * on.HandleShare * lift;
                _handleLess[gate] += _nodeShares[node] * on.HandleShare * beyond;
            }
        }
    }

    private double RollWithout(int? work)
    {
        double sum = 0;
        for (int node = 0; node < _rolls.Length; node++)
        {
            double roll = work is { } done ? _rolls[node] - (_gates[_places[done]].RollLever(node) * _less[done][node]) : _rolls[node];
            sum += _nodeShares[node] * roll * roll;
        }

        return Math.Sqrt(sum);
    }

    private double SpreadWithout(int? work)
    {
        (double sum, double squares) = (0, 0);
        for (int gate = 0; gate < _handles.Length; gate++)
        {
            double handle = work is { } done && _places[done] == gate ? _handles[gate] - _handleLess[done] : _handles[gate];
            sum += handle;
            squares += handle * handle;
        }

        double mean = sum / _handles.Length;
        return Math.Sqrt(Math.Max(0, (squares / _handles.Length) - (mean * mean)));
    }

    private MendFirst Told(Tally tally)
    {
        MendGain[] gates = [.. Enumerable.Range(0, _gates.Length)
            .Select(i => new MendGain(_gates[i].Gate, tally.Fall(i), tally.Share(i)))
            .OrderByDescending(g => g.Probability).ThenBy(g => g.Gate)];
        SleeveGain[] sleeves = [.. Enumerable.Range(_gates.Length, _places.Length - _gates.Length)
            .Select(i => new SleeveGain(_gates[_places[i]].Gate, _sleeves.Oar(_places[i]), _sleeves[_places[i]], tally.Fall(i), tally.Share(i)))
            .OrderByDescending(s => s.Probability).ThenBy(s => s.Gate)];
        return new(tally.Now, gates, sleeves, tally.None);
    }

    /// <summary>Counts over the draws.</summary>
    private sealed class Tally(int works)
    {
        // Each work's, then what stands for none of them: how it is now, and how often none helps.
        private readonly double[] _falls = new double[works + 1];
        private readonly int[] _best = new int[works + 1];

        public double Now => Fall(works);

        public double None => Share(works);

        public double Fall(int work) => _falls[work] / Count;

        public double Share(int work) => (double)_best[work] / Count;

        public void Add(double now, double[] lowered, Func<int, double> without)
        {
            _falls[works] += now;
            int best = 0;
            for (int work = 0; work < lowered.Length; work++)
            {
                lowered[work] = now - without(work);
                _falls[work] += lowered[work];
                best = lowered[work] > lowered[best] ? work : best;
            }

            _best[lowered[best] > 0 ? best : works]++;
        }
    }
}
