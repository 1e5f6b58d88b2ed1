using FsCheck;
using FsCheck.Fluent;
using Gatewright.Core.Geometry;

namespace Gatewright.Core.Tests.Support;

/// <summary>A gate on a hull, read at an oar angle: everything that a pitch depends on.</summary>
public sealed record FaceCase(GateState Gate, HullAttitude Hull, OarAngle At, Side Side, Lie Lie)
{
    public Pitch Exact => PitchGeometry.At(At, Gate, Side, Hull, Lie);
}

/// <summary>A rotation vector and two vectors to turn by it.</summary>
public sealed record Turn(Vector3 By, Vector3 First, Vector3 Second);

/// <summary>Generators over the range that the geometry states for itself, its ends included.</summary>
public static class Domain
{
    /// <summary>Leans within 3°, tilts within 1°, gate pitch within 7°, the oar from the finish to beyond the catch.</summary>
    public static Arbitrary<FaceCase> Faces() => (
        from gatePitch in Degrees(-7, 7)
        from aft in Degrees(-3, 3)
        from @out in Degrees(-3, 3)
        from bowHigh in Degrees(-1, 1)
        from portLow in Degrees(-1, 1)
        from at in Degrees(-50, 70)
        from side in Gen.Elements(Side.Port, Side.Starboard)
        from lie in Gen.Elements(Lie.Upright, Lie.Inverted)
        select new FaceCase(
            GateState.FromDegrees(gatePitch, aft, @out),
            HullAttitude.FromDegrees(bowHigh, portLow),
            OarAngle.FromDegrees(at),
            side,
            lie)).ToArbitrary();

    /// <summary>A turn of up to 170°: closer to half a turn, 1 + cos φ loses digits.</summary>
    public static Arbitrary<Turn> Turns() => (
        from vector in Vectors()
        from first in Vectors()
        from second in Vectors()
        where vector.Length < 2.967
        select new Turn(vector, first, second)).ToArbitrary();

    private static Gen<Vector3> Vectors() =>
        from x in Degrees(-2, 2)
        from y in Degrees(-2, 2)
        from z in Degrees(-2, 2)
        select new Vector3(x, y, z);

    /// <summary>Thousandths of a degree, evenly, with each end given its share of chances.</summary>
    internal static Gen<double> Degrees(int lowest, int highest) => Gen.Frequency(
        (1, Gen.Constant((double)lowest)),
        (1, Gen.Constant((double)highest)),
        (8, Gen.Choose(1000 * lowest, 1000 * highest).Select(n => n / 1000.0)));
}
