using Gatewright.Core.Geometry;
using Gatewright.Core.Load;
using Gatewright.Core.Measuring;
using Gatewright.Core.Stroke;

namespace Gatewright.Core.Tests.Load;

/// <summary>One oar by hand: 100 cm from the pin to the hands, 200 to the blade, the pin 80 from the keel line.</summary>
public class OarLoadTests
{
    // Inboard 113 + 2 − 15 = 100; outboard 342 − 113 = 229, − 2 − 27 = 200.
    private static readonly SeatRig Rig = SeatRig.FromCentimetres(Rowing.Sweep, 80, 113, 342, 15);
    private static readonly StationAngles Drive = new(OarAngle.FromDegrees(60), OarAngle.FromDegrees(0), OarAngle.FromDegrees(-60));
    private static readonly DriveProfile Thousand = new("thousand", 1000);

    private static OarLoad Oar(Side side) => new(Rig, side, Thousand, Drive);

    /// <summary>What the hands must lift to hold the blade at its depth, of the parts that the balance takes it from.</summary>
    private static double Handle(OarLoad oar, OarAngle at, Pitch pitch) => oar.HandleShare * oar.LiftNewtons(at, pitch);

    /// <summary>The roll moment, likewise.</summary>
    private static double Roll(OarLoad oar, OarAngle at, Pitch pitch) => oar.RollLeverMetres(at) * oar.LiftNewtons(at, pitch);

    /// <summary>
    /// Abeam, half way: 1000 N at the handle are 500 at the blade. A pitch of 30° lifts half of that, 250; the hands hold twice
    /// as much, 500; 2.8 m out it rolls by 700 N m. At 30° towards the catch the pull is 1000 sin 45°, the blade 0.8 + 2 cos 30° out.
    /// </summary>
    [Theory]
    [InlineData(0, 500, 250, 500, 700)]
    [InlineData(30, 353.553391, 176.776695, 353.553391, 447.607574)]
    [InlineData(60, 0, 0, 0, 0)]
    [InlineData(-75, 0, 0, 0, 0)]
    public void Worked_by_hand(double degrees, double blade, double lift, double handle, double roll)
    {
        OarAngle at = OarAngle.FromDegrees(degrees);
        Pitch pitch = Pitch.FromDegrees(30);

        // Six decimals were written down.
        Assert.Equal(blade, Oar(Side.Port).BladeNewtons(at), 1e-6);
        Assert.Equal(lift, Oar(Side.Port).LiftNewtons(at, pitch), 1e-6);
        Assert.Equal(handle, Handle(Oar(Side.Port), at, pitch), 1e-6);
        Assert.Equal(roll, Roll(Oar(Side.Port), at, pitch), 1e-6);
        Assert.Equal(-roll, Roll(Oar(Side.Starboard), at, pitch), 1e-6);
    }

    /// <summary>
    /// By the parts instead of the whole: the oar presses its gate up with lift and handle load together, 80 cm out; the hands
    /// press rower and boat down with the handle load, where they are.
    /// </summary>
    [Theory]
    [InlineData(Side.Port, 4, 25)]
    [InlineData(Side.Starboard, 6, -20)]
    [InlineData(Side.Port, -2, 50)]
    public void Gate_and_hands_together_roll_the_boat_as_the_blade_does(Side side, double pitchDegrees, double degrees)
    {
        OarAngle at = OarAngle.FromDegrees(degrees);
        Pitch pitch = Pitch.FromDegrees(pitchDegrees);
        double lift = Oar(side).LiftNewtons(at, pitch);
        double handle = Handle(Oar(side), at, pitch);
        double handsOut = 0.8 - Math.Cos(at.Angle.Radians);

        double byParts = side.Sign() * (((lift + handle) * 0.8) - (handle * handsOut));

        Assert.Equal(byParts, Roll(Oar(side), at, pitch), 1e-9);
    }

    /// <summary>
    /// The signs from the vectors of the geometry: the water pushes the blade by −N n, N along the face's normal n; the moment
    /// about the bow's axis is y F_z. Turning about x by the right hand takes port (y) up (z).
    /// </summary>
    [Theory]
    [InlineData(Side.Port)]
    [InlineData(Side.Starboard)]
    public void Forces_and_moments_have_the_signs_of_the_vectors(Side side)
    {
        GateState gate = GateState.FromDegrees(5, 0.5, 1.5);
        foreach (double degrees in new[] { 50.0, 20, 0, -30 })
        {
            OarAngle at = OarAngle.FromDegrees(degrees);
            Vector3 normal = WorkingFace.Normal(at, gate, side);
            double blade = Oar(side).BladeNewtons(at);
            double y = side.Sign() * (0.8 + (2 * Math.Cos(at.Angle.Radians)));
            double up = -blade * normal.Z;

            Assert.Equal(up, Oar(side).LiftNewtons(at, PitchGeometry.At(at, gate, side)), 1e-9);
            Assert.Equal(y * up, Roll(Oar(side), at, PitchGeometry.At(at, gate, side)), 1e-9);
            Assert.True(up > 0);
        }
    }

    [Fact]
    public void A_sculler_s_oar_has_half_the_pull()
    {
        SeatRig scull = SeatRig.FromCentimetres(Rowing.Scull, 160, 104, 328, 15);

        // 104 + 2 − 6 = 100 and 328 − 104 − 2 − 22 = 200: the same levers.
        Assert.Equal(250, new OarLoad(scull, Side.Port, Thousand, Drive).BladeNewtons(OarAngle.FromDegrees(0)), 1e-9);
    }

    /// <summary>Hartmann et al. 1993: 1350 and 1020 N; over six minutes not above 65 to 70 % of that.</summary>
    [Fact]
    public void Peaks_are_within_what_was_published()
    {
        Assert.InRange(DriveProfile.Men.PeakNewtons, 0.65 * 1350, 0.70 * 1350);
        Assert.InRange(DriveProfile.Women.PeakNewtons, 0.65 * 1020, 0.70 * 1020);
        Assert.Equal(1350, DriveProfile.OfWord("men-maximal")!.PeakNewtons);
    }

    /// <summary>The mean of a half sine over its arc is 2/π.</summary>
    [Fact]
    public void The_nodes_take_the_mean_over_the_drive()
    {
        var nodes = new DriveNodes(Drive);

        double mean = nodes.Angles.Zip(nodes.Shares, (at, share) => share * Thousand.PullNewtons(at, Drive.Catch, Drive.Finish)).Sum();

        Assert.Equal(2000 / Math.PI, mean, 0.1);
        Assert.Equal(1, nodes.Shares.Sum(), 1e-12);
    }
}
