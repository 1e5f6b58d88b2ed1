using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using static Gatewright.Core.Tests.Diagnosing.Boats;

namespace Gatewright.Core.Tests.Diagnosing;

/// <summary>Riggers that were off and came back on another's place.</summary>
public sealed class WrongSeatTests
{
    private static readonly Dictionary<int, PinLean> Before = new()
    {
        [2] = PinLean.FromDegrees(1.2, 1.0),
        [3] = PinLean.FromDegrees(0, 0),
        [6] = PinLean.FromDegrees(-0.8, -1.0),
        [7] = PinLean.FromDegrees(1.0, -0.8),
    };

    [Fact]
    public void Riggers_exchanged_on_one_side_bring_each_others_leans()
    {
        Diagnosis diagnosis = After(
            new() { [2] = Before[6], [6] = Before[2] },
            refitted: [2, 3, 6, 7]);
        AssertExchanged(diagnosis, 2, 6);
    }

    /// <summary>A rigger goes across the boat by being turned end for end: what leaned aft leans forward, out stays out.</summary>
    [Fact]
    public void Riggers_exchanged_across_the_boat_bring_their_leans_fore_and_aft_reversed()
    {
        Diagnosis diagnosis = After(
            new() { [2] = PinLean.FromDegrees(-1.0, -0.8), [7] = PinLean.FromDegrees(-1.2, 1.0) },
            refitted: [2, 3, 6, 7]);
        AssertExchanged(diagnosis, 2, 7);
    }

    [Fact]
    public void Riggers_put_back_on_their_own_places_are_not_suspected()
    {
        Diagnosis diagnosis = After([], refitted: [2, 3, 6, 7]);
        Assert.True(diagnosis.Stories[0].IsNone);

        // An upright pin turned end for end is upright: that one reads the same, and stays as likely as it was.
        CausePart unseen = new(Cause.WrongSeat, Gate(3));
        Assert.Equal(0.05, diagnosis.Probability(p => p == unseen), 0.03);
        Assert.True(diagnosis.Probability(p => p.Cause == Cause.WrongSeat && p != unseen) < 0.05);
    }

    [Fact]
    public void An_exchange_is_not_asked_about_where_nothing_was_refitted()
    {
        Diagnosis diagnosis = After(new() { [2] = Before[6], [6] = Before[2] }, refitted: []);
        Assert.Equal(548, diagnosis.StoryCount);
        Assert.Equal(0, diagnosis.Probability(p => p.Cause == Cause.WrongSeat));
    }

    /// <summary>Where nothing is known from before, both leans of both are open, and it can only be told that something is wrong.</summary>
    [Fact]
    public void Of_riggers_not_known_from_before_an_exchange_is_one_story_among_others()
    {
        BoatReadings boat = Readings(new() { [2] = PinLean.FromDegrees(2, 2), [6] = PinLean.FromDegrees(-2, -2) });
        Diagnosis diagnosis = Diagnose(boat, new() { Reports = Reports([2, 6]) });
        Assert.Contains(diagnosis.Stories, s => s.Parts is [{ Cause: Cause.WrongSeat }]);
        Assert.True(diagnosis.At(Gate(2)).Wrong > 0.9);
        Assert.True(diagnosis.At(Gate(6)).Wrong > 0.9);
    }

    /// <summary>A lean set on purpose is the gate's own; an exchange brings the other's, whatever was meant.</summary>
    [Fact]
    public void An_exchange_moves_the_pin_to_the_others_lean_from_wherever_it_was_meant_to_be()
    {
        var context = new BoatContext
        {
            Reports = Reports([2, 6]),
            LastGood = Before.ToDictionary(pair => Gate(pair.Key), pair => pair.Value),
            Targets = new Dictionary<GatePlace, GateState> { [Gate(2)] = GateState.FromDegrees(4, 0.5, 0.5) },
        };
        StoryWeights weights = Diagnose(Readings([]), context).Weights;
        Opening exchange = weights.Openings.Single(o => o.Part == new CausePart(Cause.WrongSeat, Gate(2), Gate(6)));
        Assert.Equal([-0.8 - 0.5, -1.0 - 0.5, 1.2 + 0.8, 1.0 + 1.0], exchange.Shifts, new Tolerance(1e-12));
    }

    private static Diagnosis After(Dictionary<int, PinLean> changed, int[] refitted) => Diagnose(Readings(changed), new()
    {
        Reports = Reports(refitted),
        LastGood = Before.ToDictionary(pair => Gate(pair.Key), pair => pair.Value),
    });

    private static Report[] Reports(int[] refitted) => [.. refitted.Select(seat => new Report(ReportKind.Refitted, Gate(seat)))];

    /// <summary>A boat read at all stations, gates of 4, pins as they were before unless changed, to a tenth of a degree.</summary>
    private static BoatReadings Readings(Dictionary<int, PinLean> changed) => Eight(Stations.All, (seat, at) =>
    {
        PinLean pin = changed.TryGetValue(seat, out PinLean now) ? now : Before.GetValueOrDefault(seat);
        OarAngle angle = Usual.Sweep.At(at);
        return Math.Round(PitchGeometry.At(angle, new(GatePitch.FromDegrees(4), pin), Gate(seat).Side).Degrees, 1);
    });

    private static void AssertExchanged(Diagnosis diagnosis, int one, int other)
    {
        double found = diagnosis.Probability(p => p == new CausePart(Cause.WrongSeat, Gate(one), Gate(other)));
        Assert.True(found > 0.9, FormattableString.Invariant($"{found}: {string.Join("; ", diagnosis.Stories.Take(5))}"));
        Assert.Equal(Cause.WrongSeat, diagnosis.At(Gate(one)).Causes[0].Cause);
        Assert.Equal(Cause.WrongSeat, diagnosis.At(Gate(other)).Causes[0].Cause);
    }

    private sealed class Tolerance(double tolerance) : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) <= tolerance;

        public int GetHashCode(double obj) => 0;
    }
}
