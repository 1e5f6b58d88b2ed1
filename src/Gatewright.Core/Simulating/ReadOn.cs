using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;

namespace Gatewright.Core.Simulating;

/// <summary>How far a simulated boat was read.</summary>
/// <param name="Readings">How many readings were taken.</param>
/// <param name="IsDecided">Whether there was then nothing left to find out, as <see cref="Advice.IsDecided"/> has it.</param>
/// <param name="Check">The boat as checked by those readings.</param>
public sealed record ReadOn(int Readings, bool IsDecided, BoatCheck Check)
{
    /// <summary>Reads every gate at one station, and then what is advised until enough has been read.</summary>
    /// <param name="reader">Who reads the boat.</param>
    /// <param name="plan">The boat, and how it is read.</param>
    /// <param name="first">The station of the round.</param>
    /// <param name="settings">What the boat is checked by.</param>
    /// <param name="advising">When a reading is worth taking.</param>
    /// <param name="most">Where to stop though it was not enough.</param>
    public static ReadOn AsAdvised(
        Reader reader, BoatPlan plan, Station first, CheckSettings settings, AdvisingSettings advising, int most)
    {
        ArgumentNullException.ThrowIfNull(reader);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(advising);
        var readings = new BoatReadings("boat", plan.Class, [.. plan.Gates.Select(gate => reader.Gate(gate, first))]);
        for (int count = plan.Gates.Count; ;)
        {
            BoatCheck check = BoatCheck.Of(readings, BoatContext.None, settings);
            Advice advice = Advisor.For(check, advising);
            if (advice.Next is not { Choice: var choice } || count >= most)
            {
                return new(count, advice.IsDecided, check);
            }

            readings = AdvisedReading.Take(reader, readings, choice, settings.Diagnosing.Measuring);
            count += choice.Item.Readings();
        }
    }

    /// <summary>Reads every gate at every station in some order, until every gate has been read and all is decided.</summary>
    public static ReadOn InOrder(
        Reader reader,
        BoatPlan plan,
        IReadOnlyList<(GatePlace Gate, Station Station)> order,
        CheckSettings settings,
        AdvisingSettings advising)
    {
        ArgumentNullException.ThrowIfNull(reader);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(order);
        var readings = new List<Reading>();
        ReadOn? last = null;
        foreach ((GatePlace gate, Station station) in order)
        {
            readings.Add(reader.Gate(gate, station));
            if (readings.Select(r => r.Gate).Distinct().Count() < plan.Gates.Count)
            {
                continue;
            }

            BoatCheck check = BoatCheck.Of(new("boat", plan.Class, [.. readings]), BoatContext.None, settings);
            last = new(readings.Count, Advisor.IsDecided(check, advising), check);
            if (last.IsDecided)
            {
                break;
            }
        }

        return last ?? throw new ArgumentException("The order leaves a gate unread.", nameof(order));
    }

    /// <summary>Seat after seat, each gate at the catch, abeam and at the finish.</summary>
    public static IReadOnlyList<(GatePlace Gate, Station Station)> SeatBySeat(BoatPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. plan.Gates.SelectMany(gate => Stations.All.Select(station => (gate, station)))];
    }

    /// <summary>Station after station, each from bow to stern.</summary>
    public static IReadOnlyList<(GatePlace Gate, Station Station)> StationByStation(
        BoatPlan plan, params IReadOnlyList<Station> stations)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. stations.SelectMany(station => plan.Gates.Select(gate => (gate, station)))];
    }
}
