using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Core.Oars;

namespace Gatewright.Core.Load;

/// <summary>
/// The sleeves of a boat's oars, gate by gate: read with the boat, and then believed with its gates over all stories; else read
/// as the oar's own; else true, as far as oars are.
/// </summary>
internal sealed class SleevesOnWater
{
    private readonly Diagnosis _diagnosis;
    private readonly Dictionary<GatePlace, int> _places = [];
    private readonly int?[] _inState;
    private readonly OarFigure?[] _figures;
    private readonly string?[] _names;
    private readonly List<(int At, double Slope, double Prior)>[] _zeros;
    private readonly double _unreadU;

    public SleevesOnWater(Diagnosis diagnosis, BoatReadings boat, SeatsOnWater seats, DiagnosingSettings settings)
    {
        _diagnosis = diagnosis;
        int count = diagnosis.Gates.Count;
        (_inState, _figures, _zeros) = (new int?[count], new OarFigure?[count], new List<(int, double, double)>[count]);
        _names = new string?[count];
        StateLayout layout = diagnosis.Weights.Kernel.Model.Layout;
        for (int i = 0; i < count; i++)
        {
            GatePlace gate = diagnosis.Gates[i].Gate;
            _places[gate] = i;
            _zeros[i] = [];
            bool isReadWithBoat = boat.Readings.Any(r => r.Gate == gate && r.Item == ReadItem.Sleeve);
            if (!isReadWithBoat && seats.Sleeve(gate) is { } figure)
            {
                _figures[i] = WithoutZeros(figure, layout, _zeros[i]);
                _names[i] = seats.Oar(gate);
            }
            else
            {
                _inState[i] = layout.Sleeve(gate);
            }

            IsRead.Add(isReadWithBoat || _figures[i] is not null);
        }

        _unreadU = UnreadU(settings);
    }

    /// <summary>Whether the sleeve was read, gate by gate.</summary>
    public List<bool> IsRead { get; } = [];

    /// <summary>What the oar is called whose own reading is taken for a gate; null where it is not, or nobody said.</summary>
    public string? Oar(int gate) => _names[gate];

    /// <summary>What of the state has to be drawn for <see cref="Draw"/> beside the gates, in its order.</summary>
    public int[] Drawn => [.. _inState.OfType<int>().Concat(_zeros.SelectMany(z => z).Select(z => z.At)).Distinct()];

    /// <summary>The sleeve error of the oar in a gate.</summary>
    public Estimate this[int gate]
    {
        get
        {
            GateShare one = new(_diagnosis.Gates[gate].Gate, 1, 0, 0);
            (double mean, double variance) = Sleeves([one], gates: []);
            return Estimate.FromDegrees(mean, Math.Sqrt(variance));
        }
    }

    /// <summary>
    /// The variance of a sum over gates and the sleeves in them: a blade follows its sleeve as it follows the pitch built into its
    /// gate. A zero of one gauge that read gates and sleeves is one error in both.
    /// </summary>
    public double Variance(ReadOnlySpan<GateShare> shares) => Sleeves(shares, shares).Variance;

    /// <summary>
    /// The sleeves as they may be at once, in degrees from their best values.
    /// </summary>
    /// <param name="beyondGates">What was drawn of the state, in the order of <paramref name="places"/>.</param>
    /// <param name="places">Those of <see cref="Drawn"/>.</param>
    /// <param name="means">The best values of what was drawn, in the same order.</param>
    /// <param name="normal">The next normal number about 0 of deviation 1.</param>
    /// <param name="into">The sleeves.</param>
    public void Draw(ReadOnlySpan<double> beyondGates, int[] places, double[] means, Func<double> normal, double[] into)
    {
        var shared = new Dictionary<string, double>();
        for (int i = 0; i < into.Length; i++)
        {
            if (_inState[i] is { } at)
            {
                into[i] = Off(beyondGates, at);
            }
            else if (_figures[i] is { } figure)
            {
                into[i] = figure.OwnU * normal();
                foreach (SharedError error in figure.Shared)
                {
                    if (!shared.TryGetValue(error.Key, out double drawn))
                    {
                        shared[error.Key] = drawn = normal();
                    }

                    into[i] += error.Slope * error.U * drawn;
                }

                foreach ((int zero, double slope, _) in _zeros[i])
                {
                    into[i] += slope * Off(beyondGates, zero);
                }
            }
            else
            {
                into[i] = _unreadU * normal();
            }
        }

        double Off(ReadOnlySpan<double> drawn, int at)
        {
            int place = Array.IndexOf(places, at);
            return drawn[place] - means[place];
        }
    }

    /// <summary>The best values of what has to be drawn.</summary>
    public double[] MeansOf(int[] places) => Array.ConvertAll(places, at => _diagnosis.Sum([], new StateShare(at, 1)).Mean);

    private (double Mean, double Variance) Sleeves(ReadOnlySpan<GateShare> shares, ReadOnlySpan<GateShare> gates)
    {
        var inState = new List<StateShare>();
        var figures = new List<OarFigure>();
        var weights = new List<double>();
        double unread = 0;
        foreach (GateShare share in shares)
        {
            int i = _places[share.Gate];
            if (_inState[i] is { } at)
            {
                inState.Add(new(at, share.GatePitch));
            }
            else if (_figures[i] is { } figure)
            {
                figures.Add(figure);
                weights.Add(share.GatePitch);
            }
            else
            {
                unread += share.GatePitch * share.GatePitch * _unreadU * _unreadU;
            }
        }

        double mean = inState.Count == 0 ? 0 : _diagnosis.Sum([], [.. inState]).Mean;
        foreach (GateShare share in shares)
        {
            foreach ((int zero, double slope, double prior) in _zeros[_places[share.Gate]])
            {
                // The figure was corrected by the zero as it was believed before the gates were read.
                mean += share.GatePitch * slope * (_diagnosis.Sum([], new StateShare(zero, 1)).Mean - prior);
                inState.Add(new(zero, share.GatePitch * slope));
            }
        }

        (double value, double u) = OarFigure.Combined(figures, weights);
        return (mean + value, _diagnosis.Sum(gates, [.. inState]).Variance + (u * u) + unread);
    }

    /// <summary>
    /// Of a gauge that read gates too, the zero is an unknown of the state: what the gates tell of it holds for the sleeve.
    /// </summary>
    private static OarFigure WithoutZeros(OarFigure figure, StateLayout layout, List<(int At, double Slope, double Prior)> zeros)
    {
        var rest = new List<SharedError>();
        foreach (SharedError error in figure.Shared)
        {
            int gauge = layout.Shared.Gauges.ToList().FindIndex(g => OarFigures.ZeroOf(g.Name) == error.Key);
            if (gauge < 0)
            {
                rest.Add(error);
            }
            else
            {
                zeros.Add((layout.Gauge(gauge), error.Slope, layout.Shared.Gauges[gauge].Zero.Estimate.Value.Degrees));
            }
        }

        return figure with { Shared = rest };
    }

    /// <summary>A true oar's spread, and that it may have slipped.</summary>
    private static double UnreadU(DiagnosingSettings settings)
    {
        (double healthy, double slipped) = (settings.Spreads.HealthySleeve.Degrees, settings.Spreads.Sleeve.Degrees);
        return Math.Sqrt((healthy * healthy) + (settings.Chances.Sleeve * slipped * slipped));
    }
}
