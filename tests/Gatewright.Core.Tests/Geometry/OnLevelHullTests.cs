using FsCheck.Xunit;
using Gatewright.Core.Geometry;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Geometry;

/// <summary>A pitch with the hull's level taken out, without knowing how the pin leans.</summary>
[Properties(Arbitrary = [typeof(Domain)])]
public class OnLevelHullTests
{
    [Property]
    public void It_undoes_the_level_exactly_on_an_upright_pin(FaceCase face)
    {
        FaceCase upright = face with { Gate = face.Gate with { Pin = PinLean.Upright } };

        // Rounding of some values near 0.1 radian, in degrees.
        Close.To(face.Gate.GatePitch.Degrees, Corrected(upright), 1e-12);
    }

    [Property(MaxTest = 1000)]
    public void On_a_leaning_pin_it_is_within_0_014_degrees(FaceCase face) =>
        Close.To(Level(face), Corrected(face), 0.014);

    [Property(MaxTest = 1000)]
    public void On_a_leaning_pin_with_at_most_5_degrees_in_the_gate_it_is_within_0_01(FaceCase face)
    {
        var gatePitch = GatePitch.FromDegrees(face.Gate.GatePitch.Degrees * 5 / 7);
        FaceCase usual = face with { Gate = face.Gate with { GatePitch = gatePitch } };

        Close.To(Level(usual), Corrected(usual), 0.01);
    }

    [Property]
    public void On_a_level_hull_what_was_read_is_what_is_shown(FaceCase face) =>
        Assert.Equal(face.Exact, PitchGeometry.OnLevelHull(face.Exact, face.At, face.Side, HullAttitude.Level, face.Lie));

    // Abeam, level along the keel simply adds, so taking it out is a subtraction: exact by hand.
    [Theory]
    [InlineData(4.5, 0.5, Lie.Upright, 4)]
    [InlineData(4.5, 0.5, Lie.Inverted, 5)]
    [InlineData(4.5, -0.5, Lie.Upright, 5)]
    public void Abeam_it_takes_the_rise_of_the_bow_out(double shown, double bowHigh, Lie lie, double level) =>
        Close.To(
            level,
            PitchGeometry.OnLevelHull(
                Pitch.FromDegrees(shown),
                OarAngle.FromDegrees(0),
                Side.Port,
                HullAttitude.FromDegrees(bowHigh, 0),
                lie).Degrees,
            1e-12);

    private static double Level(FaceCase face) => (face with { Hull = HullAttitude.Level }).Exact.Degrees;

    private static double Corrected(FaceCase face) =>
        PitchGeometry.OnLevelHull(face.Exact, face.At, face.Side, face.Hull, face.Lie).Degrees;
}
