using FsCheck.Xunit;
using Gatewright.Core.Geometry;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Geometry;

[Properties(Arbitrary = [typeof(Domain)])]
public class PitchGeometryTests
{
    /// <summary>Some roundings of values near 0.1 radian, in degrees.</summary>
    private const double Rounding = 1e-12;

    [Property]
    public void On_an_upright_pin_and_a_level_hull_pitch_is_what_is_built_into_the_gate(FaceCase face) =>
        Close.To(
            face.Gate.GatePitch.Degrees,
            PitchGeometry.At(face.At, face.Gate with { Pin = PinLean.Upright }, face.Side, lie: face.Lie).Degrees,
            Rounding);

    [Property]
    public void Turning_the_boat_over_turns_the_effect_of_its_level_round(FaceCase face)
    {
        var other = HullAttitude.FromDegrees(-face.Hull.BowHigh.Degrees, -face.Hull.PortLow.Degrees);
        Lie over = face.Lie == Lie.Upright ? Lie.Inverted : Lie.Upright;

        Close.To(face.Exact.Degrees, (face with { Lie = over, Hull = other }).Exact.Degrees, Rounding);
    }

    [Property]
    public void Turning_a_level_boat_over_changes_nothing(FaceCase face)
    {
        FaceCase level = face with { Hull = HullAttitude.Level };

        Close.To((level with { Lie = Lie.Upright }).Exact.Degrees, (level with { Lie = Lie.Inverted }).Exact.Degrees, Rounding);
    }

    [Property]
    public void Port_and_starboard_are_mirror_images(FaceCase face)
    {
        var mirrored = HullAttitude.FromDegrees(face.Hull.BowHigh.Degrees, -face.Hull.PortLow.Degrees);

        Close.To(face.Exact.Degrees, (face with { Side = face.Side.Opposite(), Hull = mirrored }).Exact.Degrees, Rounding);
    }

    [Property]
    public void A_sleeve_error_adds_to_the_gate_pitch(FaceCase face)
    {
        var added = GatePitch.FromDegrees(face.Gate.GatePitch.Degrees + 1.25);

        Close.To(
            (face with { Gate = face.Gate with { GatePitch = added } }).Exact.Degrees,
            PitchGeometry.At(face.At, face.Gate, face.Side, face.Hull, face.Lie, SleeveError.FromDegrees(1.25)).Degrees,
            Rounding);
    }

    // Each row by hand: the face is turned as a whole, so abeam everything along the keel simply adds.
    [Theory]
    [InlineData(4, 0, 1, Lie.Upright, 5)]
    [InlineData(4, 0, 1, Lie.Inverted, 3)]
    [InlineData(4, 2, 0, Lie.Upright, 6)]
    [InlineData(4, 2, 0, Lie.Inverted, 6)]
    [InlineData(4, -2, 0.5, Lie.Upright, 2.5)]
    [InlineData(4, -2, 0.5, Lie.Inverted, 1.5)]
    public void Abeam_the_lean_aft_adds_and_a_bow_that_is_high_adds_upright_and_takes_away_inverted(
        double gatePitch, double aft, double bowHigh, Lie lie, double shown) =>
        Close.To(
            shown,
            PitchGeometry.At(
                OarAngle.FromDegrees(0),
                GateState.FromDegrees(gatePitch, aft, 0),
                Side.Port,
                HullAttitude.FromDegrees(bowHigh, 0),
                lie).Degrees,
            Rounding);

    // A gate without pitch, the oar along the keel: only the roll is seen, whole, with a sign for each side and lie.
    [Theory]
    [InlineData(Side.Port, Lie.Upright, 1)]
    [InlineData(Side.Starboard, Lie.Upright, -1)]
    [InlineData(Side.Port, Lie.Inverted, -1)]
    [InlineData(Side.Starboard, Lie.Inverted, 1)]
    public void With_the_oar_along_the_keel_only_the_roll_is_seen(Side side, Lie lie, double shown) =>
        Close.To(
            shown,
            PitchGeometry.At(OarAngle.FromDegrees(90), default, side, HullAttitude.FromDegrees(0.7, 1), lie).Degrees,
            Rounding);

    [Fact]
    public void A_rolled_hull_looks_like_lean_out_on_one_side_and_lean_in_on_the_other()
    {
        var atCatch = OarAngle.FromDegrees(55);
        var level = GateState.FromDegrees(4, 0, 0);
        var rolled = HullAttitude.FromDegrees(0, 1);

        double port = PitchGeometry.At(atCatch, level, Side.Port, rolled).Degrees;
        double starboard = PitchGeometry.At(atCatch, level, Side.Starboard, rolled).Degrees;

        // Within what the first-order form leaves out at a degree.
        Close.To(PitchGeometry.At(atCatch, GateState.FromDegrees(4, 0, 1), Side.Port).Degrees, port, 0.01);
        Close.To(PitchGeometry.At(atCatch, GateState.FromDegrees(4, 0, -1), Side.Starboard).Degrees, starboard, 0.01);
    }
}
