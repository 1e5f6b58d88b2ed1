using System.Globalization;
using Gatewright.Core.Changing;
using Gatewright.Core.Rig;
using Gatewright.Journal.Changing;
using Gatewright.Journal.Exchange.Changing;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Views;
using Gatewright.Server.Boats;
using Gatewright.Server.Hosting;
using Gatewright.Server.Members;
using Gatewright.Server.Problems;
using Gatewright.Words;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gatewright.Server.Planning;

/// <summary>From one rig to another, two rigs side by side, and a boat on the road.</summary>
internal static class ChangeEndpoints
{
    /// <summary>Adds them to the routes of a club.</summary>
    public static void MapChanges(this RouteGroupBuilder club)
    {
        club.MapGet("/boats/{boat}/change", ChangeAsync)
            .Produces<ChangeDocument>()
            .Needs(ClubRight.ReadJournal)
            .WithSummary("The fewest steps from a boat's rig to another, as gatewright.change/1: of another boat (toBoat, its key), of a day (toDay), kept under a key (to), or a crew's (toCrew). The query's language is en or de.");
        club.MapGet("/boats/{boat}/compare", CompareAsync)
            .Produces<CompareDocument>()
            .Needs(ClubRight.ReadJournal)
            .WithSummary("Two rigs side by side, as gatewright.compare/1: with another boat's (with, its key), or the boat's own on two days (on, and; left out, today).");
        club.MapGet("/boats/{boat}/travel", TravelAsync)
            .Produces<TravelDocument>()
            .Needs(ClubRight.ReadJournal)
            .WithSummary("A boat's riggers in the order in which they come off, and the quick check when it stands again, as gatewright.travel/1.");
    }

    private static async Task<Results<ContentHttpResult, ProblemHttpResult>> ChangeAsync(
        HttpContext context, OpenClubs clubs, string boat, string? to = null, string? toBoat = null, string? toDay = null, string? toCrew = null, string? language = null)
    {
        OpenClub open = await clubs.OpenAsync(ClubAccess.Of(context).Club, context.RequestAborted).ConfigureAwait(false);
        var words = Wording.In(Language.Of(language));
        if (await RigAsync(open, boat, null, words.Language, context.RequestAborted).ConfigureAwait(false) is not { } rig)
        {
            return Problem.NotFound("boat");
        }

        var wrong = new Fields();
        int given = new[] { to, toBoat, toDay, toCrew }.Count(v => v is not null);
        wrong.Expect(given == 1, "to", "a rig to come to: one of to, toBoat, toDay and toCrew");
        wrong.Expect(IsDayOrNone(toDay), "toDay", "a day, as 2026-11-25");
        wrong.Expect(toCrew is null || Crews.OfWord(toCrew) is not null, "toCrew", Crews.Choice);
        if (wrong.Any)
        {
            return Problem.Fields(wrong.Errors);
        }

        if (await TargetAsync(open, boat, rig, to, toBoat, Day(toDay), Crews.OfWord(toCrew), words, context.RequestAborted).ConfigureAwait(false) is not { } target)
        {
            return Problem.NotFound("rig");
        }

        ChangePlan plan = await Task.Run(() => ChangePlan.Of(rig, target, ChangeSettings.Default with { Stores = ClubShelf.Of(open.Club) }), context.RequestAborted).ConfigureAwait(false);
        return Json(ChangeJson.Text(ChangeMapping.Of(plan, words)));
    }

    private static async Task<Results<ContentHttpResult, ProblemHttpResult>> CompareAsync(
        HttpContext context, OpenClubs clubs, string boat, string? with = null, string? on = null, string? and = null)
    {
        OpenClub open = await clubs.OpenAsync(ClubAccess.Of(context).Club, context.RequestAborted).ConfigureAwait(false);
        var wrong = new Fields();
        wrong.Expect(IsDayOrNone(on), nameof(on), "a day, as 2026-11-25");
        wrong.Expect(IsDayOrNone(and), nameof(and), "a day, as 2026-11-25");
        wrong.Expect(with is not null || on != and, nameof(with), "another boat's key, or two days");
        if (wrong.Any)
        {
            return Problem.Fields(wrong.Errors);
        }

        RigOfBoat? first = await RigAsync(open, boat, Day(on), Language.English, context.RequestAborted).ConfigureAwait(false);
        RigOfBoat? second = await RigAsync(open, with ?? boat, Day(and), Language.English, context.RequestAborted).ConfigureAwait(false);
        return first is null || second is null || first.Class.Rowing != second.Class.Rowing
            ? Problem.NotFound("pair of rigs")
            : Json(ChangeJson.Text(ChangeMapping.Of(RigComparison.Of(first, second, isSameBoat: with is null || with == boat))));
    }

    private static async Task<Results<ContentHttpResult, ProblemHttpResult>> TravelAsync(HttpContext context, OpenClubs clubs, string boat)
    {
        OpenClub open = await clubs.OpenAsync(ClubAccess.Of(context).Club, context.RequestAborted).ConfigureAwait(false);
        return await RigAsync(open, boat, null, Language.English, context.RequestAborted).ConfigureAwait(false) is { } rig
            ? Json(ChangeJson.Text(ChangeMapping.Of(TravelSheet.Of(rig, ClubSettings.Of(open.Club, new BoatView(open.Club, boat)), ChangeSettings.Default))))
            : Problem.NotFound("boat");
    }

    /// <summary>A boat's rig on a day, named in a language; null where there is no such boat, or its class is not known.</summary>
    private static async Task<RigOfBoat?> RigAsync(OpenClub open, string boat, DateOnly? day, Language language, CancellationToken cancellation)
    {
        if (await open.Shed.BoatAsync(boat).ConfigureAwait(false) is not { } standing)
        {
            return null;
        }

        string name = day is { } on ? $"{standing.View.Name}, {language.Day(on)}" : standing.View.Name;
        return await Task.Run(() => RigOnRecord.On(open.Club, boat, day, standing.Check?.Settings ?? ClubSettings.Of(open.Club), name), cancellation).ConfigureAwait(false);
    }

    private static async Task<TargetRig?> TargetAsync(OpenClub open, string boat, RigOfBoat rig, string? kept, string? other, DateOnly? day, Crew? crew, Wording words, CancellationToken cancellation)
    {
        if (kept is not null)
        {
            return KeptRigs.For(open.Club, boat, rig.Class).FirstOrDefault(k => k.Key == kept) is { } found
                ? KeptRigs.Target(open.Club, found, boat, rig.Gates)
                : null;
        }

        if (crew is { } who)
        {
            var view = new BoatView(open.Club, boat);
            return CrewRig.Of(words.Rig.TargetsFor(who), rig, TargetsView.Of(open.Club, view, who)!, ClubSettings.Of(open.Club, view));
        }

        RigOfBoat? like = await RigAsync(open, other ?? boat, day, words.Language, cancellation).ConfigureAwait(false);
        return like is not null && like.Class.Rowing == rig.Class.Rowing && like.Class.Seats == rig.Class.Seats
            ? TargetRig.Like(like, other is null || other == boat)
            : null;
    }

    private static bool IsDayOrNone(string? text) => text is null || Day(text) is not null;

    private static DateOnly? Day(string? text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : null;

    private static ContentHttpResult Json(string text) => TypedResults.Content(text, "application/json");
}
