using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Exchange;

/// <summary>What the rows of a lying say of the level by themselves.</summary>
internal sealed class StatedLevel(Problems problems)
{
    /// <summary>What they state, or where they state nothing, how the rack lies that they name; else by eye.</summary>
    /// <returns>Null when it cannot be told.</returns>
    public HullLevel? Of(Lying lying) => lying.Key.Level.Source switch
    {
        LevelSource.Read => new HullLevel.Read(lying.Key.Level.Attitude),
        LevelSource.Bubble => new HullLevel.BubbleCentred(),
        LevelSource.Rack => OfRack(lying.Key.Rack!, lying),
        LevelSource.Blank when lying.Key.Rack is not null => OfRack(lying.Key.Rack, lying),
        _ => new HullLevel.ByEye(),
    };

    private HullLevel.OfRack? OfRack(RackRows rack, Lying lying)
    {
        if (rack.On(lying.Key.Date) is Rack known)
        {
            return new(known);
        }

        if (!rack.IsFaulty)
        {
            new Reporter(problems, lying.First).RackUnknown(rack);
        }

        return null;
    }
}
