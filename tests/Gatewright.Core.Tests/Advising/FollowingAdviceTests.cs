using Gatewright.Core.Advising;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Geometry;
using Gatewright.Core.Simulating;
using Gatewright.Core.Tests.Simulating;

namespace Gatewright.Core.Tests.Advising;

/// <summary>How many readings it takes to decide what is wrong with a simulated eight, with the advice and without.</summary>
/// <remarks>
/// A gate and one of its four causes are drawn, thrown by more than 1.5° in all. With the advice: a round abeam, then
/// what is advised until it says enough; a level or a reversal counts as two readings. Without: everything, seat by
/// seat at catch, abeam and finish, until as much is decided; a boat that 24 readings do not decide counts 24.
/// Decided is that every gate judged other than good has its cause found: one cause at 0.9, or pin and rigger together
/// with both leans known to 0.5°; or, where all were judged good, that hidden faults are unlikely (0.05).
/// In 2,000 boats 12.4 readings with the advice, 23.0 seat by seat, 18.2 station by station abeam first; decided 81, 55 and
/// 60 per cent of them. The true cause is then the likeliest of its gate in 62 per cent, and in 64 after all 24 readings.
/// A mean is known to 0.1 reading, a share to 1.1 per cent.
/// </remarks>
[Trait(Runs.Name, Runs.Once)]
public sealed class FollowingAdviceTests
{
    private static readonly BoatPlan Eight = new(BoatClass.Parse("8+"));

    private static readonly Lazy<List<Tried>> Boats = new(() =>
        [.. Enumerable.Range(0, SeededDraws.Boats(100)).Select(Try)]);

    [Fact]
    public void Following_the_advice_decides_in_at_most_two_thirds_of_the_readings_that_reading_everything_takes()
    {
        List<Tried> boats = Boats.Value;
        double advised = boats.Average(b => b.Advised.Readings);
        double seatBySeat = boats.Average(b => b.SeatBySeat.Readings);
        double afterTheSameRound = boats.Average(b => b.AfterTheSameRound.Readings);
        string found = FormattableString.Invariant(
            $"readings: advised {advised:0.00}, seat by seat {seatBySeat:0.00}, abeam then catch then finish {afterTheSameRound:0.00}; ")
            + string.Join("; ", Told("advised", b => b.Advised), Told("seat by seat", b => b.SeatBySeat), Told("abeam, catch, finish", b => b.AfterTheSameRound));
        TestContext.Current.TestOutputHelper?.WriteLine(found);

        Assert.True(advised <= 2.0 / 3 * seatBySeat, found);

        // Against a fixed order that begins with the same eight readings, and counts 24 for what it does not decide, the
        // ratio is 0.68 in 2,000 boats, and known to 0.03 from the 100 of a short run, which are the same ones every time.
        Assert.True(advised <= 0.72 * afterTheSameRound, found);

        string Told(string how, Func<Tried, ReadOn> of) => FormattableString.Invariant(
            $"{how}: decided {boats.Count(b => of(b).IsDecided)}, right {boats.Count(b => b.IsRight(of(b).Check))} of {boats.Count}");
    }

    /// <remarks>Fewer readings must not be bought with wrong answers: three standard errors of the difference are 0.1 in 200 boats.</remarks>
    [Fact]
    public void Fewer_readings_find_the_true_cause_as_often_as_all_of_them_do()
    {
        List<Tried> boats = Boats.Value;
        double advised = boats.Count(b => b.IsRight(b.Advised.Check)) / (double)boats.Count;
        double everything = boats.Count(b => b.IsRight(b.Everything)) / (double)boats.Count;
        string found = FormattableString.Invariant($"right: advised {advised:0.000}, all 24 readings {everything:0.000}");
        TestContext.Current.TestOutputHelper?.WriteLine(found);

        Assert.True(advised > everything - 0.1, found);
    }

    private static Tried Try(int seed)
    {
        Draws draws = SeededDraws.Of(1000 + seed);
        TrueBoat boat = BoatDraw.WithFaultyGate(Eight, draws, Angle.FromDegrees(1.5));
        var reader = new Reader(boat, Eight, draws);
        CheckSettings settings = CheckSettings.Default;
        AdvisingSettings advising = AdvisingSettings.Default;
        return new(
            boat.Wrong[0],
            ReadOn.AsAdvised(reader, Eight, Station.Abeam, settings, advising, most: 40),
            ReadOn.InOrder(reader, Eight, ReadOn.SeatBySeat(Eight), settings, advising),
            ReadOn.InOrder(reader, Eight, ReadOn.StationByStation(Eight, Station.Abeam, Station.Catch, Station.Finish), settings, advising),
            BoatCheck.Of(reader.Round("boat"), BoatContext.None, settings));
    }

    private sealed record Tried(CausePart Truth, ReadOn Advised, ReadOn SeatBySeat, ReadOn AfterTheSameRound, BoatCheck Everything)
    {
        /// <summary>Whether the true cause is then the likeliest of its gate.</summary>
        public bool IsRight(BoatCheck check) =>
            check.Diagnosis.Gates.Single(g => g.Gate == Truth.Gate).Causes[0].Cause == Truth.Cause;
    }
}
