using Gatewright.Core.Changing;
using Gatewright.Core.Rig;

namespace Gatewright.Core.Tests.Changing;

public class RigOfBoatTests
{
    private static readonly GatePlace Seat3 = Rigs.Gates(BoatClass.Parse("4-"))[2];
    private static readonly RigPlace Here = new(3, Seat3.Side);
    private static readonly RigPlace Turned = new(3, Seat3.Side == Side.Port ? Side.Starboard : Side.Port);

    /// <summary>A seat that was turned may be known on both sides; each then is its own.</summary>
    [Fact]
    public void In_sweep_a_figure_of_the_very_side_comes_before_one_of_the_other()
    {
        RigOfBoat rig = Rigs.Even("4-").With(RigItem.Height, Turned, 19);

        Assert.Equal((17, 19), (rig.Find(RigItem.Height, Here)!.Value.Value, rig.Find(RigItem.Height, Turned)!.Value.Value));
        var target = TargetRig.Like(rig, isSameBoat: true);
        Assert.Equal(
            (17, 19),
            (target.Find(RigItem.Height, Here, Rowing.Sweep)!.Value, target.Find(RigItem.Height, Turned, Rowing.Sweep)!.Value));
    }

    [Fact]
    public void In_sweep_a_figure_of_the_other_side_holds_where_there_is_no_other()
    {
        RigOfBoat rig = Rigs.Even("4-");

        Assert.Equal(17, rig.Find(RigItem.Height, Turned)!.Value.Value);
        Assert.Equal(17, TargetRig.Like(rig, isSameBoat: true).Find(RigItem.Height, Turned, Rowing.Sweep)!.Value);
    }

    [Fact]
    public void In_sculling_each_side_is_its_own()
    {
        RigOfBoat rig = Rigs.Even("1x") with { Values = [new(RigItem.Height, new(1, Side.Port), new(17, 0.1))] };

        Assert.Null(rig.Find(RigItem.Height, new(1, Side.Starboard)));
        Assert.Null(TargetRig.Like(rig, isSameBoat: true).Find(RigItem.Height, new(1, Side.Starboard), Rowing.Scull));
    }
}
