using FsCheck.Xunit;
using Gatewright.Core.Geometry;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Geometry;

[Properties(Arbitrary = [typeof(Domain)])]
public class WorkingFaceTests
{
    [Property]
    public void The_normal_has_length_one(FaceCase face) =>
        Close.To(1, WorkingFace.Normal(face.At, face.Gate, face.Side).Length, 1e-14);

    // By hand: the drive is to the stern abeam, and turns out to its own side towards the catch.
    [Theory]
    [InlineData(0, Side.Port, -1, 0)]
    [InlineData(90, Side.Port, 0, 1)]
    [InlineData(90, Side.Starboard, 0, -1)]
    [InlineData(-90, Side.Port, 0, -1)]
    [InlineData(60, Side.Starboard, -0.5, -0.8660254)]
    public void A_plumb_face_looks_along_the_drive(double at, Side side, double x, double y)
    {
        Vector3 normal = WorkingFace.Normal(OarAngle.FromDegrees(at), default, side);

        Close.To([x, y, 0], [normal.X, normal.Y, normal.Z], 5e-8);
    }

    [Fact]
    public void A_face_with_pitch_looks_down_to_the_drive()
    {
        Vector3 normal = WorkingFace.Normal(OarAngle.FromDegrees(0), GateState.FromDegrees(30, 0, 0), Side.Port);

        Close.To([-0.8660254, 0, -0.5], [normal.X, normal.Y, normal.Z], 5e-8);
    }

    /// <summary>
    /// A face built at right angles to its pin looks down along it, which shows where the pin points: (−tan a, σ tan o, 1).
    /// </summary>
    [Theory]
    [InlineData(45, 0, Side.Port, -1, 0, 1)]
    [InlineData(0, 45, Side.Port, 0, 1, 1)]
    [InlineData(0, 45, Side.Starboard, 0, -1, 1)]
    [InlineData(-30, 20, Side.Starboard, 0.57735027, -0.36397023, 1)]
    public void The_top_of_the_pin_leans_aft_and_out_as_seen_square_on(
        double aft, double @out, Side side, double x, double y, double z)
    {
        Vector3 down = WorkingFace.Normal(OarAngle.FromDegrees(20), GateState.FromDegrees(90, aft, @out), side);
        double length = Math.Sqrt((x * x) + (y * y) + (z * z));

        Close.To([x / length, y / length, z / length], [-down.X, -down.Y, -down.Z], 5e-9);
    }

    [Property]
    public void A_leaning_pin_tips_the_face_without_turning_it(FaceCase face)
    {
        // The smallest rotation leaves what lies along its own axis where it was.
        Vector3 axis = Vector3.Up.Cross(-1 * WorkingFace.Normal(face.At, face.Gate with { GatePitch = GatePitch.FromDegrees(90) }, face.Side));
        Vector3 leaning = WorkingFace.Normal(face.At, face.Gate, face.Side);
        Vector3 upright = WorkingFace.Normal(face.At, face.Gate with { Pin = PinLean.Upright }, face.Side);

        Close.To(upright.Dot(axis), leaning.Dot(axis), 1e-15);
    }
}
