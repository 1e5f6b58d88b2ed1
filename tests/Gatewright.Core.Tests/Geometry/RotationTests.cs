using FsCheck.Xunit;
using Gatewright.Core.Geometry;
using Gatewright.Core.Tests.Support;

namespace Gatewright.Core.Tests.Geometry;

[Properties(Arbitrary = [typeof(Domain)])]
public class RotationTests
{
    /// <summary>
    /// SciPy's reference tests (scipy.spatial.transform, test_from_rotvec): the rotation vector (.2, .3, .4) is the
    /// quaternion xyzw (.09879603932153465, .14819405898230198, .19759207864306931, .9639685). The expected columns are
    /// the matrix of that quaternion, the textbook way round: 1 − 2(y² + z²), 2(xy + wz), 2(xz − wy) and so on.
    /// </summary>
    [Fact]
    public void A_rotation_vector_turns_as_its_published_quaternion_does()
    {
        (double x, double y, double z, double w) = (0.09879603932153465, 0.14819405898230198, 0.19759207864306931, 0.9639685);
        var rotation = Rotation.FromVector(new(0.2, 0.3, 0.4));

        // w is published to seven figures.
        AssertColumn([1 - (2 * ((y * y) + (z * z))), 2 * ((x * y) + (w * z)), 2 * ((x * z) - (w * y))], rotation.Apply(new(1, 0, 0)));
        AssertColumn([2 * ((x * y) - (w * z)), 1 - (2 * ((x * x) + (z * z))), 2 * ((y * z) + (w * x))], rotation.Apply(new(0, 1, 0)));
        AssertColumn([2 * ((x * z) + (w * y)), 2 * ((y * z) - (w * x)), 1 - (2 * ((x * x) + (y * y)))], rotation.Apply(new(0, 0, 1)));

        static void AssertColumn(double[] expected, Vector3 actual) => Close.To(expected, [actual.X, actual.Y, actual.Z], 1e-7);
    }

    /// <summary>SciPy's reference tests: [[0, −1, 0], [1, 0, 0], [0, 0, 1]] applied to (1, 2, 3) is (−2, 1, 3).</summary>
    [Fact]
    public void A_quarter_turn_about_the_vertical_is_as_published()
    {
        Vector3 turned = Rotation.FromVector(new(0, 0, Math.PI / 2)).Apply(new(1, 2, 3));

        Close.To([-2, 1, 3], [turned.X, turned.Y, turned.Z], 1e-15);
    }

    [Property(MaxTest = 500)]
    public void A_rotation_keeps_lengths_and_angles(Turn turn)
    {
        var rotation = Rotation.FromVector(turn.By);
        Vector3 first = rotation.Apply(turn.First);
        Vector3 second = rotation.Apply(turn.Second);

        // A part in 1e13, of vectors up to 3.5 long: dividing by 1 + cos 170° makes one rounding 66 of them.
        Close.To(turn.First.Length, first.Length, 3.5e-13);
        Close.To(turn.First.Dot(turn.Second), first.Dot(second), 1.2e-12);
    }

    [Property]
    public void A_rotation_leaves_its_own_axis_where_it_was(sbyte x, sbyte y, sbyte z)
    {
        Vector3 axis = 1 / 128.0 * new Vector3(x, y, z);
        Vector3 turned = Rotation.FromVector(axis).Apply(axis);

        Close.To([axis.X, axis.Y, axis.Z], [turned.X, turned.Y, turned.Z], 1e-14);
    }

    [Fact]
    public void No_rotation_moves_nothing()
    {
        var vector = new Vector3(1, -2, 3);

        Assert.Equal(vector, Rotation.FromVector(default).Apply(vector));
        Assert.Equal(vector, default(Rotation).Apply(vector));
    }

    [Theory]
    [InlineData(Math.PI)]
    [InlineData(4)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Half_a_turn_and_more_is_refused(double radians)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => Rotation.FromVector(new(0, radians, 0)));

        Assert.StartsWith("A rotation must be less than half a turn.", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_vector_product_is_right_handed()
    {
        Assert.Equal(new Vector3(0, 0, 1), new Vector3(1, 0, 0).Cross(new(0, 1, 0)));
        Assert.Equal(new Vector3(-3, 6, -3), new Vector3(1, 2, 3).Cross(new(4, 5, 6)));
    }

    [Fact]
    public void A_vector_is_written_with_its_three_parts() =>
        Assert.Equal("(1, -0.5, 0)", new Vector3(1, -0.5, 0).ToString());

    [Fact]
    public void A_direction_has_length_one_and_nothing_has_none()
    {
        Vector3 direction = new Vector3(3, 0, 4).Direction;

        Close.To([0.6, 0, 0.8], [direction.X, direction.Y, direction.Z], 1e-15);
        Assert.True(double.IsNaN(default(Vector3).Direction.X));
    }
}
