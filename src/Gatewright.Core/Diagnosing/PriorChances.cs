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
    public double LogOdds(Cause cause)
    {
        double chance = Of(cause);
        return Math.Log(chance / (1 - chance));
    }
}
