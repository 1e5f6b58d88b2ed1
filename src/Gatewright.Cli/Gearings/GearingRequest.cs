using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Core;
using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;
using Gatewright.Journal.Exchange.Gearings;

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
/// <param name="Allowed">What may be set for it, and how far; none leaves it at the usual.</param>
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
    IReadOnlyList<WrittenBounds> Allowed,
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
