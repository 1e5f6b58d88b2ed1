using Gatewright.Core.Measuring;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Measuring;

public class ReadingNoiseTests
{
    // Literals: 0.5/√12; 0.2; and 0.5° a radian times 5° or 1° in radians.
    [Theory]
    [InlineData(Station.Catch, 0.0436332)]
    [InlineData(Station.Abeam, 0.00872665)]
    [InlineData(Station.Finish, 0.0436332)]
    public void A_face_has_resolution_repeatability_and_the_angle_at_which_the_oar_was_held(Station station, double held)
    {
        UncertaintyBudget noise = ReadingNoise.Of(Taken.Gate(Taken.Seat(1), station, 4), Taken.Settings);

        Close.To([0.1443376, 0.2, held, 0, 0], [noise.Resolution, noise.Repeatability, noise.HeldAngle, noise.Level, noise.GaugeZero], 5e-8);
    }

    [Fact]
    public void A_face_read_between_the_stations_is_held_by_eye_as_at_the_catch() =>
        Close.To(0.0436332, ReadingNoise.Of(Taken.GateAt(Taken.Seat(1), 20, 4), Taken.Settings).HeldAngle, 5e-8);

    [Theory]
    [InlineData(ReadItem.PinAft)]
    [InlineData(ReadItem.PinOut)]
    [InlineData(ReadItem.GatePitch)]
    [InlineData(ReadItem.Sleeve)]
    public void Where_no_oar_is_held_no_held_angle_enters(ReadItem item) =>
        Assert.Equal(0, ReadingNoise.Of(Taken.Item(item, Taken.Seat(1), 1), Taken.Settings).HeldAngle);

    [Fact]
    public void The_variance_is_the_sum_of_squares() =>
        Close.To(
            (0.25 / 12) + 0.04 + 0.0019038589,
            ReadingNoise.VarianceOf(Taken.Gate(Taken.Seat(1), Station.Catch, 4), Taken.Settings),
            1e-10);

    // 3, 4, 12 and 84 make a root of whole numbers: √(9 + 16 + 144 + 7056) = 85.
    [Fact]
    public void A_budget_combines_as_the_root_of_the_sum_of_squares()
    {
        var budget = new UncertaintyBudget(3, 4, 12, 84, 0);

        Assert.Equal(85, budget.CombinedDegrees);
        Assert.Equal(85 * 85, (budget with { GaugeZero = 84, Level = 0 }).Variance);
    }
}
