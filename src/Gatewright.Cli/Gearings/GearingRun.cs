using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Drawing;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Speaking;
using Gatewright.Cli.Terminals;
using Gatewright.Core;
using Gatewright.Core.Stroke;
using Gatewright.Journal.Exchange.Gearings;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Gearings;

/// <summary>Runs <c>gatewright gearing</c>.</summary>
internal sealed class GearingRun(Terminal terminal)
{
    private const string NothingTold = "Nothing was told.";

    public int Run(GearingRequest request) =>
        request.Place is null ? Show(request) : StoreErrors.Guard(request.Form, terminal, () => Show(request));

    private int Show(GearingRequest request)
    {
        GearingInput input = GearingInput.Read(request, terminal);
        if (input.Seat is not { } seat)
        {
            return InputErrors.Tell(input.Errors, input.Beyond, request.Form, terminal, NothingTold);
        }

        Rowing rowing = seat.Rig.Rowing;
        MeasuredStroke? stroke = MeasuredStroke.Of(seat, request.Reach.Of(rowing), OarPoints.Usual(rowing));
        if (stroke is null)
        {
            return Wrong("gearing", English.Stroke.NoStroke);
        }

        StrokeChange? change = null;
        if (request.Steps.Count > 0 && (change = StrokeChange.Of(stroke, request.Steps)) is null)
        {
            return Wrong("--change", English.Stroke.NoStroke);
        }

        if (WrittenBounds.Of(request.Allowed, seat.Rig) is not { } allowed)
        {
            return Wrong("--allow", "each measure of the seat once, and no measure of another kind of boat.");
        }

        if (request.Wishes.Count > allowed.Count)
        {
            return Wrong("--want", $"there are {Figures.Degrees(allowed.Count, 0)} measures to set: expected no more wishes than that.");
        }

        IReadOnlyList<StrokeWish> wishes = [.. request.Wishes.Select(w => w.Of(stroke.Geometry))];
        WishFound? found = wishes.Count > 0 ? WishSearch.Of(stroke.Geometry, wishes, allowed) : null;
        NearestRig? nearest = found is { Answers.Count: 0 } ? NearestRig.Of(stroke.Geometry, wishes, allowed) : null;
        Tell(new(input.Boat, request.Seat, stroke, change, wishes, allowed, found, nearest), request);
        return found is { Answers.Count: 0 } ? ExitStatus.Attention : ExitStatus.Good;

        int Wrong(string source, string what) =>
            InputErrors.Tell([new(source, null, null, null, what)], 0, request.Form, terminal, NothingTold);
    }

    private void Tell(GearingTold told, GearingRequest request) =>
        new FormTeller(terminal, request.Form, request.Width).Tell(() => GearingJson.Of(told), () => GearingStatements.Of(told));
}
