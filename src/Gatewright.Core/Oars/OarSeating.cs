using Gatewright.Core.Checking;
using Gatewright.Core.Measuring;
using Gatewright.Core.Numerics;

namespace Gatewright.Core.Oars;

/// <summary>An oar given to a gate.</summary>
/// <param name="Gate">The gate.</param>
/// <param name="Oar">The oar, made for its side.</param>
/// <param name="Blade">
/// The pitch of its blade there abeam: the gate's as it was read, and the sleeve whole, as on an upright pin. Its u is that of either, and
/// of a gauge's zero that is in both; what a session or a gauge shares between oars drops out of their differences.
/// </param>
public readonly record struct SeatedOar(GatePlace Gate, Oar Oar, Estimate Blade);

/// <summary>Which oar goes to which gate, so that the blades of a boat are pitched most alike.</summary>
/// <param name="Seats">From the bow; gates for which there is no oar, and oars for which there is no gate, are left out.</param>
/// <param name="Range">From the least pitch of a blade to the largest, degrees; 0 for fewer than two.</param>
public sealed record OarSeating(IReadOnlyList<SeatedOar> Seats, double Range)
{
    /// <summary>Gives oars to the gates of a boat that were read abeam.</summary>
    /// <remarks>
    /// The least sum of squares about the middle, which is the mean of the gates and the mean of the sleeves: exact, by an assignment on
    /// either side. Where there are as many oars as gates that is the least variance there is, and a level or a zero that is off,
    /// which moves all alike, gives the same places. Oars whose side or sleeve is not known are left out.
    /// </remarks>
    public static OarSeating Of(BoatCheck check, IReadOnlyList<Oar> oars)
    {
        ArgumentNullException.ThrowIfNull(check);
        var gates = new List<(GatePlace, Estimate)>();
        foreach (CorrectedPitch read in check.Corrected.Pitches)
        {
            if (read.At.Station == Station.Abeam)
            {
                gates.Add((read.Gate, read.Estimate));
            }
        }

        return Of(gates, oars, gate => check.Readings.Readings
            .Where(r => r.Gate == gate && r is { Item: ReadItem.Gate, At.Station: Station.Abeam }).Select(r => r.Gauge));
    }

    /// <summary>Gives oars to gates whose pitch abeam is known.</summary>
    /// <param name="gates">The gates.</param>
    /// <param name="oars">The oars.</param>
    /// <param name="gaugesOf">The gauges that read a gate.</param>
    internal static OarSeating Of(
        IReadOnlyList<(GatePlace Gate, Estimate Pitch)> gates, IReadOnlyList<Oar> oars, Func<GatePlace, IEnumerable<Gauge>> gaugesOf)
    {
        ArgumentNullException.ThrowIfNull(gates);
        ArgumentNullException.ThrowIfNull(oars);
        double middle = Mean(gates.Count, i => gates[i].Pitch.Value.Degrees);
        List<Oar> known = [.. oars];
        known.RemoveAll(o => o is not { Side: not null, Sleeve: not null });
        middle += Mean(known.Count, i => known[i].Sleeve!.Value);
        var seats = new List<SeatedOar>();
        foreach (Side side in new[] { Side.Port, Side.Starboard })
        {
            List<(GatePlace Gate, Estimate Pitch)> there = [.. gates];
            there.RemoveAll(g => g.Gate.Side != side);
            Give(there, known.FindAll(o => o.Side == side), middle, gaugesOf, seats);
        }

        seats.Sort((one, other) => one.Gate.CompareTo(other.Gate));
        return new(seats, RangeOf(seats));
    }

    private static void Give(List<(GatePlace Gate, Estimate Pitch)> gates, List<Oar> oars, double middle, Func<GatePlace, IEnumerable<Gauge>> gaugesOf, List<SeatedOar> into)
    {
        bool isOarsFewer = oars.Count < gates.Count;
        double Cost(int gate, int oar) => Math.Pow(gates[gate].Pitch.Value.Degrees + oars[oar].Sleeve!.Value - middle, 2);
        int[] partners = isOarsFewer
            ? Assignment.Least(oars.Count, gates.Count, (oar, gate) => Cost(gate, oar))
            : Assignment.Least(gates.Count, oars.Count, Cost);
        for (int i = 0; i < partners.Length; i++)
        {
            ((GatePlace gate, Estimate pitch), Oar oar) = isOarsFewer ? (gates[partners[i]], oars[i]) : (gates[i], oars[partners[i]]);
            double zero = SharedZero(oar.Sleeve!, gaugesOf(gate));

            // u² + v² + 2 z²: a zero that is in both adds up in the sum.
            double u = Math.Sqrt((pitch.U.Degrees * pitch.U.Degrees) + (oar.Sleeve!.U * oar.Sleeve.U) + (2 * zero * zero));
            into.Add(new(gate, oar, Estimate.FromDegrees(pitch.Value.Degrees + oar.Sleeve.Value, u)));
        }
    }

    /// <summary>The zero's uncertainty, in degrees, where one gauge read gate and sleeve; else 0.</summary>
    private static double SharedZero(OarFigure sleeve, IEnumerable<Gauge> gauges)
    {
        foreach (Gauge gauge in gauges)
        {
            if (sleeve.Shared.Any(e => e.Key == OarFigures.ZeroOf(gauge.Name)))
            {
                return gauge.Zero.Estimate.U.Degrees;
            }
        }

        return 0;
    }

    private static double Mean(int count, Func<int, double> of)
    {
        double sum = 0;
        for (int i = 0; i < count; i++)
        {
            sum += of(i);
        }

        return count == 0 ? 0 : sum / count;
    }

    private static double RangeOf(List<SeatedOar> seats)
    {
        (double least, double most) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (SeatedOar seat in seats)
        {
            (least, most) = (Math.Min(least, seat.Blade.Value.Degrees), Math.Max(most, seat.Blade.Value.Degrees));
        }

        return most > least ? most - least : 0;
    }
}
