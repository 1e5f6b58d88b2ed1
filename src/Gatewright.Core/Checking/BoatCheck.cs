using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Checking;

/// <summary>
/// A boat checked: what it is where it was read, how that is judged, and, when asked, what is probably wrong.
/// </summary>
/// <remarks>
/// The two questions stay apart. The verdict on a station that was read rests on the reading alone; the diagnosis
/// brings in what is usual among gates, and is not even computed for a boat read at every station until it is asked for.
/// </remarks>
public sealed class BoatCheck
{
    private readonly Lazy<Diagnosis> _diagnosis;

    private BoatCheck(BoatReadings boat, BoatContext context, CheckSettings settings)
    {
        Readings = boat;
        Context = context;
        Settings = settings;
        MeasuringSettings measuring = settings.Diagnosing.Measuring;
        Corrected = CorrectedReadings.Of(boat.Readings, measuring);
        _diagnosis = new(() => Diagnosis.Of(boat, context, settings.Diagnosing));
        Verdict = new Judge(settings.Standard, settings.Rule, measuring).Boat(boat, Corrected, new WhenAsked(_diagnosis), context.Changes);
    }

    /// <summary>What was read.</summary>
    public BoatReadings Readings { get; }

    /// <summary>What was known beside.</summary>
    public BoatContext Context { get; }

    /// <summary>What it was checked by.</summary>
    public CheckSettings Settings { get; }

    /// <summary>The gate readings, corrected.</summary>
    public CorrectedReadings Corrected { get; }

    /// <summary>How the boat was judged.</summary>
    public BoatVerdict Verdict { get; }

    /// <summary>What is probably wrong, and what each gate probably is.</summary>
    public Diagnosis Diagnosis => _diagnosis.Value;

    /// <summary>Checks a boat.</summary>
    /// <exception cref="ArgumentException">Nothing was read.</exception>
    public static BoatCheck Of(BoatReadings boat, BoatContext context, CheckSettings settings)
    {
        ArgumentNullException.ThrowIfNull(boat);
        ArgumentNullException.ThrowIfNull(context);
        ArgumentNullException.ThrowIfNull(settings);
        return boat.Readings.Count == 0
            ? throw new ArgumentException($"Nothing was read on {boat.Boat}.", nameof(boat))
            : new(boat, context, settings);
    }

    private sealed class WhenAsked(Lazy<Diagnosis> diagnosis) : IPitchForecast
    {
        public GaussianMixture At(GatePlace gate, OarAngle at) => diagnosis.Value.At(gate, at);
    }
}
