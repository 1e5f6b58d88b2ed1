using Gatewright.Core.Rig;

namespace Gatewright.Cli.Rigs.ForPeople;

/// <summary>Where the columns of a rig's table end: a label, a column a seat with room for a verdict's mark, the uncertainty.</summary>
/// <param name="Seats">How many seats.</param>
/// <param name="InInches">Whether lengths are in inches, which take a digit more.</param>
internal sealed record RigColumns(int Seats, bool InInches)
{
    private const int UncertaintyWidth = 6;

    /// <summary>Where there is room, a side has its measure's name before it.</summary>
    public int LabelWidth => Seats <= 4 ? 22 : 17;

    /// <summary>Where the uncertainty ends.</summary>
    public int End => EndOf(Seats) + UncertaintyWidth;

    /// <summary>Where a seat's figure ends.</summary>
    public int EndOf(int seat) => LabelWidth + (seat * (InInches ? 7 : 6)) - 1;

    /// <summary>The unit in which a measure is told.</summary>
    public RigUnit UnitOf(RigMeasure measure) => RigTargetWords.UnitOf(measure, InInches);
}
