using System.Globalization;
using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;
using Gatewright.Journal.Exchange.Gearings;
using Gatewright.Journal.Rigging;
using Gatewright.Server.Hosting;
using Gatewright.Server.Members;
using Gatewright.Server.Problems;
using Microsoft.AspNetCore.Http.HttpResults;
using RigStep = Gatewright.Core.Stroke.RigStep;

namespace Gatewright.Server.Boats;

/// <summary>A seat's gearing and arc, what a change does to them, and which change gives what is wanted.</summary>
internal static class GearingEndpoint
{
    private const string Reached = "a change that leaves a stroke a rower can row";

    /// <summary>Adds it to the routes of a club.</summary>
    public static void MapGearing(this RouteGroupBuilder club) => club.MapGet("/boats/{boat}/gearing", AnswerAsync)
        .Produces<GearingDocument>()
        .Needs(ClubRight.SeeBoats)
        .WithSummary("A seat's gearing and arc, what a change does (change: spread=-1), and which change gives what is wanted (want: catch=+2; allow: inboard=113..117), as gatewright.gearing/1. Each of the three as often as need be, its + as %2B.");

    private static async Task<Results<ContentHttpResult, ProblemHttpResult>> AnswerAsync(
        HttpContext context, OpenClubs clubs, string boat, int seat = 1, string[]? change = null, string[]? want = null, string[]? allow = null)
    {
        ClubAccess access = ClubAccess.Of(context);
        OpenClub open = await clubs.OpenAsync(access.Club, context.RequestAborted).ConfigureAwait(false);
        if (!access.Sees(boat) || await open.Shed.BoatAsync(boat).ConfigureAwait(false) is not { } standing
            || new RigView(open.Club, standing.View) is not { Targets: { } targets } view)
        {
            return Problem.NotFound("boat");
        }

        var wrong = new Fields();
        wrong.Expect(seat >= 1 && seat <= targets.Class.Seats, nameof(seat), string.Create(CultureInfo.InvariantCulture, $"a seat from 1 to {targets.Class.Seats}"));
        IReadOnlyList<RigStep> steps = Read(change, WrittenStep.Parse, nameof(change), WrittenStep.Expected, wrong);
        IReadOnlyList<WrittenWish> wishes = Read(want, WrittenWish.Parse, nameof(want), WrittenWish.Expected, wrong);
        IReadOnlyList<WrittenBounds> bounds = Read(allow, WrittenBounds.Parse, nameof(allow), WrittenBounds.Expected, wrong);
        wrong.Expect(steps.All(s => s.Measure.IsOf(targets.Class.Rowing)), nameof(change), $"measures of a {targets.Class}");
        if (wrong.Any)
        {
            return Problem.Fields(wrong.Errors);
        }

        MeasuredSeat known = MeasuredSeat.Of(RigFigures.Of(view.Readings), targets, seat);
        GearingTold? told = await Task.Run(() => Told(standing.View.Name, seat, known, steps, wishes, bounds, wrong), context.RequestAborted).ConfigureAwait(false);
        return told is null ? Problem.Fields(wrong.Errors) : TypedResults.Content(GearingJson.Of(told), "application/json");
    }

    private static GearingTold? Told(
        string boat, int seatNumber, MeasuredSeat seat, IReadOnlyList<RigStep> steps, IReadOnlyList<WrittenWish> wanted, IReadOnlyList<WrittenBounds> bounds, Fields wrong)
    {
        MeasuredStroke? stroke = MeasuredStroke.Of(seat, Reach.Usual(seat.Rig.Rowing), OarPoints.Usual(seat.Rig.Rowing));
        wrong.Expect(stroke is not null, "boat", "a rig that a rower of the usual reach can row");
        IReadOnlyList<AllowedStep>? allowed = WrittenBounds.Of(bounds, seat.Rig);
        wrong.Expect(allowed is not null, "allow", "each measure of the seat once, and no measure of another kind of boat");
        wrong.Expect(allowed is null || wanted.Count <= allowed.Count, "want", "no more wishes than measures that may be set");
        StrokeChange? change = stroke is null || steps.Count == 0 ? null : StrokeChange.Of(stroke, steps);
        wrong.Expect(steps.Count == 0 || change is not null, "change", Reached);
        if (wrong.Any)
        {
            return null;
        }

        IReadOnlyList<StrokeWish> wishes = [.. wanted.Select(w => w.Of(stroke!.Geometry))];
        WishFound? found = wishes.Count > 0 ? WishSearch.Of(stroke!.Geometry, wishes, allowed!) : null;
        NearestRig? nearest = found is { Answers.Count: 0 } ? NearestRig.Of(stroke!.Geometry, wishes, allowed!) : null;
        return new(boat, seatNumber, stroke!, change, wishes, allowed!, found, nearest);
    }

    private static IReadOnlyList<T> Read<T>(string[]? texts, Func<string, T?> parse, string field, string expected, Fields wrong)
        where T : struct
    {
        T?[] read = Array.ConvertAll(texts ?? [], text => parse(text));
        wrong.Expect(Array.TrueForAll(read, r => r is not null), field, expected);
        return [.. read.OfType<T>()];
    }
}
