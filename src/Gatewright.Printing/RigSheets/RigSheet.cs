using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;
using Gatewright.Words;
using Gatewright.Words.Judged;

namespace Gatewright.Printing.RigSheets;

/// <summary>All that a rig sheet says of a boat, in words and figures; where it stands on the page is another matter.</summary>
/// <param name="Boat">The boat's name.</param>
/// <param name="Class">Its class; null until it is set.</param>
/// <param name="Verdict">Its verdict; null while nothing that was read of it counts, and where it would be good but for gates that were changed since they were read.</param>
/// <param name="Word">The verdict in a word.</param>
/// <param name="Rack">Where it lies, in words; null while nobody knows.</param>
/// <param name="Read">When, how and by whom it was read.</param>
/// <param name="Holds">Why it is held ashore, each with who and when; empty for not.</param>
/// <param name="Cautions">What its verdict asks for, and what was changed since; empty for nothing.</param>
/// <param name="Gates">Its gates, from the bow.</param>
/// <param name="Measures">The measures of its rig; empty while none is known.</param>
/// <param name="Oars">Its oars, a line each; then since when they are rowed there, and who said so.</param>
/// <param name="Reasons">Why gates are not good, and what else is to be seen to.</param>
/// <param name="Open">What is open on it: changes of its rig, jobs and reports.</param>
/// <param name="Judged">By what it was judged.</param>
/// <param name="LastRead">The day it was last read; null for never.</param>
/// <param name="StaysAshore">Whether it is to stay ashore: held, or by what was read.</param>
/// <param name="Waits">Whether a reading alone may let it go.</param>
/// <param name="WidestU">The largest standard uncertainty of its pitches, degrees; null while nothing was read.</param>
internal sealed record RigSheet(
    string Boat,
    BoatClass? Class,
    Verdict? Verdict,
    string Word,
    string? Rack,
    string Read,
    IReadOnlyList<string> Holds,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<SheetGate> Gates,
    IReadOnlyList<SheetMeasure> Measures,
    IReadOnlyList<string> Oars,
    IReadOnlyList<string> Reasons,
    IReadOnlyList<string> Open,
    IReadOnlyList<string> Judged,
    DateOnly? LastRead,
    bool StaysAshore,
    bool Waits,
    string? WidestU)
{
    /// <summary>The sheets of some boats.</summary>
    public static IReadOnlyList<RigSheet> Of(Club club, IEnumerable<BoatStanding> boats, Imprint imprint)
    {
        var oars = new OarTold(imprint, club);
        return [.. boats.Select(boat => Of(club, boat, oars, imprint))];
    }

    /// <summary>The sheet of a boat. Asks for its diagnosis, for what was not read.</summary>
    private static RigSheet Of(Club club, BoatStanding boat, OarTold oars, Imprint imprint)
    {
        Wording say = imprint.Say;
        BoatView view = boat.View;
        BoatCheck? check = boat.Check;
        var told = new BoatTold(imprint);
        var rig = new RigTold(imprint, BoatRig.Of(club, view));
        return new(
            view.Name,
            view.Class,
            boat.Shown,
            imprint.Word(boat),
            told.Rack(club, view),
            $"{(check is null ? imprint.Texts["Sheet.NothingRead"] : told.Read(view, check))} {rig.Measured()}".TrimEnd(),
            [.. boat.Holds.Select(told.Hold)],
            [.. told.Cautions(boat)],
            [.. BoatGates.Of(club, view).Select(gate => told.Gate(club, view, check, gate))],
            [.. rig.Measures()],
            [.. oars.Of(view.Key)],
            [.. told.Changed(boat), .. check is null ? [] : told.Reasons(check), .. rig.Reasons()],
            [.. told.Changes(club, view), .. told.Open(view)],
            [
                .. check is null ? Array.Empty<string>() : [say.Standards.Limits(check.Verdict.Standard), say.Standards.PlusMinus, say.Standards.Brackets],
                .. rig.Targets() is { } targets ? [targets] : Array.Empty<string>(),
            ],
            boat.LastRead,
            boat.StaysAshore,
            boat.WaitsForReading,
            check is null || check.Verdict.Gates.Count == 0 ? null : say.Figures.Degrees(PitchSpread.WidestU(check.Verdict)));
    }
}
