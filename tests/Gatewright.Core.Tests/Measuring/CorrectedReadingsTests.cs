using FsCheck.Xunit;
using Gatewright.Core.Geometry;
using Gatewright.Core.Measuring;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Measuring;

[Properties(Arbitrary = [typeof(Domain), typeof(BoatCases)])]
public class CorrectedReadingsTests
{
    [Fact]
    public void Who_read_3_on_a_level_boat_sees_3()
    {
        CorrectedPitch pitch = Only(Taken.Gate(Taken.Seat(3), Station.Catch, 3));

        Assert.Equal(3.0, pitch.Pitch.Degrees);
        Assert.Equal((1, false), (pitch.Repeats, pitch.RepeatsDisagree));
    }

    // Literals: 0.5/√12 and 0.2 of the gauge, 0.0436332 of the oar held, 0.2 of the bubble, 0.2 of the zero.
    [Fact]
    public void Its_uncertainty_has_all_five_parts()
    {
        UncertaintyBudget budget = Only(Taken.Gate(Taken.Seat(3), Station.Catch, 3)).Budget;

        Close.To(
            [0.1443376, 0.2, 0.0436332, 0.2, 0.2],
            [budget.Resolution, budget.Repeatability, budget.HeldAngle, budget.Level, budget.GaugeZero],
            5e-8);
        Close.To(0.3778058, budget.CombinedDegrees, 5e-8);
    }

    [Theory]
    [InlineData(Station.Catch)]
    [InlineData(Station.Abeam)]
    [InlineData(Station.Finish)]
    public void The_level_enters_alike_wherever_the_oar_is_held(Station station) =>
        Close.To(0.7, Only(Taken.Gate(Taken.Seat(3), station, 3, Taken.ByEye)).Budget.Level, 1e-15);

    [Property]
    public void It_gives_back_the_face_that_was_read_with_a_gauge_that_is_off_on_a_hull_that_is_not_level(FaceCase face)
    {
        FaceCase upright = face with { Gate = face.Gate with { Pin = PinLean.Upright } };
        var lie = new BoatLie(face.Lie, new HullLevel.Read(face.Hull));
        Gauge off = Taken.GaugeOf("off", 0.1, 0.1, 0.35, 0.05);
        Angle shown = upright.Exact.Angle + Angle.FromDegrees(0.35);
        var reading = new Reading(ReadItem.Gate, new(2, face.Side), new(face.At, null), shown, lie, off);

        Close.To(face.Gate.GatePitch.Degrees, Only(reading).Pitch.Degrees, 1e-12);
    }

    [Fact]
    public void A_rack_corrects_as_its_level_says()
    {
        var rack = new Rack("top", HullAttitude.FromDegrees(0.5, 0), Bedding.Firm);
        var lie = new BoatLie(Lie.Inverted, new HullLevel.OfRack(rack));

        // Turned over, a high bow takes away from what is shown.
        Close.To(4.5, Only(Taken.Gate(Taken.Seat(1), Station.Abeam, 4, lie)).Pitch.Degrees, 1e-12);
    }

    [Fact]
    public void One_gauge_has_one_zero_and_the_best_known_speaks_for_all_its_readings()
    {
        Gauge before = Taken.GaugeOf("a", 0.5, 0.2, 0, 0.2);
        Gauge after = Taken.GaugeOf("a", 0.5, 0.2, 0.3, 0.05);
        Reading first = Taken.Gate(Taken.Seat(1), Station.Abeam, 4, gauge: before);
        Reading second = Taken.Gate(Taken.Seat(2), Station.Abeam, 4, gauge: after);

        foreach (Reading[] order in new Reading[][] { [first, second], [second, first] })
        {
            var corrected = CorrectedReadings.Of(order, Taken.Settings);

            Assert.All(corrected.Pitches, pitch => Close.To(3.7, pitch.Pitch.Degrees, 1e-15));
            Assert.All(corrected.Pitches, pitch => Close.To(0.05, pitch.Budget.GaugeZero, 1e-15));
        }
    }

    [Fact]
    public void Pitches_stand_from_bow_to_stern_port_first_and_from_catch_to_finish()
    {
        var corrected = CorrectedReadings.Of(
            [
                Taken.Gate(Taken.Seat(2), Station.Catch, 1),
                Taken.Gate(Taken.Seat(1, Side.Starboard), Station.Finish, 2),
                Taken.Gate(Taken.Seat(1, Side.Starboard), Station.Catch, 3),
                Taken.GateAt(Taken.Seat(1, Side.Starboard), 20, 4),
                Taken.Gate(Taken.Seat(1), Station.Abeam, 5),
            ],
            Taken.Settings);

        Assert.Equal([5, 3, 4, 2, 1], corrected.Pitches.Select(p => p.Pitch.Degrees));
        Assert.Equal(1, corrected.IndexOf(Taken.Seat(1, Side.Starboard), Station.Catch));
        Assert.Equal(-1, corrected.IndexOf(Taken.Seat(1, Side.Starboard), Station.Abeam));
        Assert.Equal(-1, corrected.IndexOf(Taken.Seat(3), Station.Catch));
    }

    [Fact]
    public void Only_faces_are_corrected_here()
    {
        Reading[] others =
        [
            .. new[] { ReadItem.PinAft, ReadItem.PinOut, ReadItem.GatePitch, ReadItem.Sleeve }
                .Select(item => Taken.Item(item, Taken.Seat(1), 1)),
        ];

        Assert.Empty(CorrectedReadings.Of(others, Taken.Settings).Pitches);
        Assert.Empty(CorrectedReadings.Of([], Taken.Settings).Pitches);
        Assert.Equal(0, CorrectedReadings.Of([], Taken.Settings).Covariances().Size);
    }

    [Property]
    public void The_order_of_readings_changes_nothing(BoatCase boat)
    {
        var one = CorrectedReadings.Of(boat.Readings, Taken.Settings);
        var other = CorrectedReadings.Of(boat.Shuffled, Taken.Settings);

        Assert.Equal(
            one.Pitches.Select(p => (p.Gate, p.At, p.Repeats, p.RepeatsDisagree)),
            other.Pitches.Select(p => (p.Gate, p.At, p.Repeats, p.RepeatsDisagree)));
        Close.To([.. one.Pitches.Select(p => p.Pitch.Degrees)], [.. other.Pitches.Select(p => p.Pitch.Degrees)], 1e-12);
        Close.To(Entries(one), Entries(other), 1e-12);
    }

    [Fact]
    public void What_is_missing_is_told()
    {
        Assert.Throws<ArgumentNullException>(() => CorrectedReadings.Of(null!, Taken.Settings));
        Assert.Throws<ArgumentNullException>(() => CorrectedReadings.Of([], null!));
    }

    private static CorrectedPitch Only(Reading reading) =>
        Assert.Single(CorrectedReadings.Of([reading], Taken.Settings).Pitches);

    private static double[] Entries(CorrectedReadings corrected) =>
        [.. from i in Enumerable.Range(0, corrected.Pitches.Count)
            from j in Enumerable.Range(0, corrected.Pitches.Count)
            select corrected.Covariance(i, j)];
}
