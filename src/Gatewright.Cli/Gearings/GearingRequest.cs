using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Core;
using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;

namespace Gatewright.Cli.Gearings;

/// <summary>What was asked of <c>gatewright gearing</c>.</summary>
/// <param name="Files">Files with measures of rigs; none where figures are given or a class's targets serve.</param>
/// <param name="Place">A club in a store instead of files.</param>
/// <param name="Boat">The boat's name, where files or a club have several.</param>
/// <param name="Seat">The seat, from the bow.</param>
/// <param name="Class">The class whose targets stand for what is not given.</param>
/// <param name="Crew">Whose targets; null for women and men together.</param>
/// <param name="Given">Figures given on the command line, in centimetres.</param>
/// <param name="Reach">The rower's reach, as far as given.</param>
/// <param name="Steps">A change.</param>
/// <param name="Wishes">What is wanted.</param>
/// <param name="Form">In which form to answer.</param>
/// <param name="Width">Columns to write in; null leaves it to the terminal.</param>
internal sealed record GearingRequest(
    IReadOnlyList<string> Files,
    StorePlace? Place,
    string? Boat,
    int Seat,
    BoatClass? Class,
    Crew? Crew,
    IReadOnlyDictionary<RigMeasure, double> Given,
    GivenReach Reach,
    IReadOnlyList<RigStep> Steps,
    IReadOnlyList<WrittenWish> Wishes,
    Form Form,
    int? Width);

/// <summary>A reach as far as it was given, in centimetres.</summary>
/// <param name="AtCatch">Beyond the heels to the stern.</param>
/// <param name="AtFinish">Back from the heels to the bow.</param>
/// <param name="Arms">From the shoulder to the hands.</param>
internal readonly record struct GivenReach(double? AtCatch, double? AtFinish, double? Arms)
{
    public Reach Of(Rowing rowing)
    {
        Reach usual = Reach.Usual(rowing);
        return usual with
        {
            AtCatch = Or(AtCatch, usual.AtCatch),
            AtFinish = Or(AtFinish, usual.AtFinish),
            Arms = Or(Arms, usual.Arms),
        };
    }

    private static Length Or(double? given, Length usual) => given is { } value ? Length.FromCentimetres(value) : usual;
}

/// <summary>A wish as it was written: a value, or more or less than now, of a ratio also in hundredths.</summary>
/// <param name="Figure">Which figure.</param>
/// <param name="Number">The number.</param>
/// <param name="IsRelative">Whether it began with + or −.</param>
/// <param name="IsPercent">Whether it ended with %.</param>
internal readonly record struct WrittenWish(StrokeFigure Figure, double Number, bool IsRelative, bool IsPercent)
{
    /// <summary>What it means for a stroke. A finish is written as degrees past abeam.</summary>
    public StrokeWish Of(StrokeGeometry now)
    {
        int sign = Figure == StrokeFigure.Finish ? -1 : 1;
        double value = now[Figure];
        return new(Figure, IsPercent ? value * (1 + (Number / 100)) : IsRelative ? value + (sign * Number) : sign * Number);
    }
}
