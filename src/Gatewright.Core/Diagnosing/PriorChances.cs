namespace Gatewright.Core.Diagnosing;

/// <summary>How often each cause is met, before anything is read.</summary>
/// <remarks>
/// The defaults are this project's judgement. A chance is that of one gate (of one boat for the level, of one gauge
/// for its zero); a story's prior odds are the product of p/(1 − p) over its parts.
/// </remarks>
public sealed record PriorChances
{
    /// <summary>The defaults.</summary>
    public static PriorChances Default { get; } = new();

    /// <summary>0.015 a gate.</summary>
    public double GatePitch { get; init; } = 0.015;

    /// <summary>0.015 a gate.</summary>
    public double PinAft { get; init; } = 0.015;

    /// <summary>0.015 a gate.</summary>
    public double PinOut { get; init; } = 0.015;

    /// <summary>0.015 a gate.</summary>
    public double Rigger { get; init; } = 0.015;

    /// <summary>0.05 for a rigger (for two: a pair) that was off and refitted; it is not asked about otherwise.</summary>
    public double WrongSeat { get; init; } = 0.05;

    /// <summary>0.015 an oar that was read.</summary>
    public double Sleeve { get; init; } = 0.015;

    /// <summary>0.03 a boat.</summary>
    public double HullLevel { get; init; } = 0.03;

    /// <summary>0.02 a gauge.</summary>
    public double GaugeZero { get; init; } = 0.02;

    /// <summary>As how many gates already checked the chances of a gate's causes count, when a club's own are added: 400.</summary>
    public double GatesBehind { get; init; } = 400;

    /// <summary>As how many oars the sleeve's chance counts: 400.</summary>
    public double OarsBehind { get; init; } = 400;

    /// <summary>As how many boats the level's chance counts: 100.</summary>
    public double BoatsBehind { get; init; } = 100;

    /// <summary>As how many gauges the zero's chance counts: 50.</summary>
    public double GaugesBehind { get; init; } = 50;

    /// <summary>The chance of a cause.</summary>
    public double Of(Cause cause) => cause switch
    {
        Cause.GatePitch => GatePitch,
        Cause.PinAft => PinAft,
        Cause.PinOut => PinOut,
        Cause.Rigger => Rigger,
        Cause.WrongSeat => WrongSeat,
        Cause.Sleeve => Sleeve,
        Cause.HullLevel => HullLevel,
        _ => GaugeZero,
    };

    /// <summary>ln (p/(1 − p)).</summary>
    /// <exception cref="ArgumentException">The chance is not from 0 to below 1.</exception>
    public double LogOdds(Cause cause) => Chance.LogOdds(Of(cause), cause.Code());

    /// <summary>The chances once a club's own finished jobs are added: 6 wrong inserts in 200 gates, 0.015 → 0.020.</summary>
    /// <remarks>
    /// Each cause is there or not, whatever else is: its chance is a Beta distribution with <see cref="GatesBehind"/> gates of weight
    /// (or oars, boats, gauges), and the posterior mean is (n₀ p + k)/(n₀ + n) for k found among n checked (Gelman et al., Bayesian Data
    /// Analysis, 3rd edition, section 2.4). So a gate at which two causes were found counts once as checked and once for each, and a
    /// story's odds are the product of each one's. Were a gate to have one cause at most, the chances together would be a Dirichlet
    /// distribution (section 3.4), whose margins are these. What was checked adds to the weight, so the order of jobs decides nothing. A rigger on another's place
    /// is left as it is: its chance is that of one exchange, and how many could have been is not counted.
    /// </remarks>
    /// <exception cref="ArgumentException">A count is below 0, or more was found than checked; or a weight is not above 0.</exception>
    public PriorChances After(FoundCauses found)
    {
        ArgumentNullException.ThrowIfNull(found);
        found.Check();
        return this with
        {
            GatePitch = Mean(GatePitch, found.GatePitch, GatesBehind, found.GatesChecked),
            PinAft = Mean(PinAft, found.PinAft, GatesBehind, found.GatesChecked),
            PinOut = Mean(PinOut, found.PinOut, GatesBehind, found.GatesChecked),
            Rigger = Mean(Rigger, found.Rigger, GatesBehind, found.GatesChecked),
            Sleeve = Mean(Sleeve, found.Sleeve, OarsBehind, found.OarsChecked),
            HullLevel = Mean(HullLevel, found.HullLevel, BoatsBehind, found.BoatsChecked),
            GaugeZero = Mean(GaugeZero, found.GaugeZero, GaugesBehind, found.GaugesChecked),
            GatesBehind = GatesBehind + found.GatesChecked,
            OarsBehind = OarsBehind + found.OarsChecked,
            BoatsBehind = BoatsBehind + found.BoatsChecked,
            GaugesBehind = GaugesBehind + found.GaugesChecked,
        };
    }

    private static double Mean(double chance, int found, double behind, int isChecked) =>
        behind > 0 && double.IsFinite(behind)
            ? isChecked == 0 ? chance : ((behind * chance) + found) / (behind + isChecked)
            : throw new ArgumentException(FormattableString.Invariant(
                $"The prior chances weigh as much as {behind} checks: it must be above 0."));
}
