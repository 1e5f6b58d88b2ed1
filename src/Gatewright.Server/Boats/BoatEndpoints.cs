using System.Globalization;
using Gatewright.Core.Judging;
using Gatewright.Core.Load;
using Gatewright.Core.Oars;
using Gatewright.Core.Rig;
using Gatewright.Core.Simulating;
using Gatewright.Journal.Exchange.Balance;
using Gatewright.Journal.Exchange.Check;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Oars;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Views;
using Gatewright.Server.Hosting;
using Gatewright.Server.Members;
using Gatewright.Server.Problems;
using Gatewright.Words;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Gatewright.Server.Boats;

/// <summary>Boats and their verdicts, as the club's journal gives them.</summary>
internal static class BoatEndpoints
{
    /// <summary>Which gate to mend first is found by draws: the same readings give the same answer.</summary>
    private const int Seed = 1;

    private const int MostMatched = 50;

    /// <summary>Adds them to the routes of a club.</summary>
    public static void MapBoats(this RouteGroupBuilder club)
    {
        club.MapGet("/boats", ListAsync)
            .Needs(ClubRight.SeeBoats)
            .WithSummary("The boats whoever asks may see, those to stay ashore first.");
        club.MapGet("/check", CheckAsync)
            .Produces<CheckDocument>()
            .Needs(ClubRight.SeeBoats)
            .WithSummary("One boat by its key, or all: verdicts, causes, what to read next, remedies, as gatewright.check/1.");
        club.MapGet("/oars", OarsAsync)
            .Produces<OarsDocument>()
            .Needs(ClubRight.ReadJournal)
            .WithSummary("The oars and their sets: figures, which stands out, how its sleeve is turned; with match, the so many that go best together; as gatewright.oars/1.");
        club.MapGet("/boats/{boat}/rig", RigAsync)
            .Produces<RigDocument>()
            .Needs(ClubRight.SeeBoats)
            .WithSummary("The rig of a boat: measures, targets, and how they are judged, as gatewright.rig/1.");
        club.MapGearing();
        club.MapGet("/boats/{boat}/balance", BalanceAsync)
            .Produces<BalanceDocument>()
            .Needs(ClubRight.SeeBoats)
            .WithSummary("A boat on the water, by a model: roll moment, handle loads, which gate to mend first or whose sleeve to turn, as gatewright.balance/1.");
    }

    private static async Task<Results<ContentHttpResult, ProblemHttpResult>> BalanceAsync(
        HttpContext context, OpenClubs clubs, string boat, string? pull = null)
    {
        ClubAccess access = ClubAccess.Of(context);
        OpenClub open = await clubs.OpenAsync(access.Club, context.RequestAborted).ConfigureAwait(false);
        if (!access.Sees(boat) || await open.Shed.BoatAsync(boat).ConfigureAwait(false) is not { } standing)
        {
            return Problem.NotFound("boat");
        }

        if (DriveProfile.OfWord(pull ?? DriveProfile.Men.Name) is not { } profile)
        {
            return Problem.Fields(new Dictionary<string, string[]>
            {
                ["pull"] = [$"'{pull}' is none of {string.Join(", ", DriveProfile.All.Select(p => p.Name))}."],
            });
        }

        // Of a boat that was not read at every gate the document says that nothing can be said.
        BoatBalance? balance = standing.Check is not { } check ? null : await Task.Run(() =>
        {
            var rig = new RigView(open.Club, standing.View);
            var sleeves = new SleevesInBoat(new(open.Club, check.Settings.Diagnosing.Measuring), boat, rig.Gates);
            var seats = SeatsOnWater.Of(rig.Targets ?? RigTargets.Starting(check.Readings.Class, rig.Crew), rig.Readings, sleeves.Sleeve, sleeves.Name);
            return BoatBalance.Of(check, seats, profile, new Draws(new Random(Seed).NextDouble));
        }, context.RequestAborted).ConfigureAwait(false);
        string json = BalanceJson.Text(profile, [(standing.View.Name, standing.View.Class?.Name ?? string.Empty, balance)]);
        return TypedResults.Content(json, "application/json");
    }

    private static async Task<Results<ContentHttpResult, ProblemHttpResult>> RigAsync(HttpContext context, OpenClubs clubs, string boat)
    {
        ClubAccess access = ClubAccess.Of(context);
        OpenClub open = await clubs.OpenAsync(access.Club, context.RequestAborted).ConfigureAwait(false);
        if (!access.Sees(boat) || await open.Shed.BoatAsync(boat).ConfigureAwait(false) is not { } standing)
        {
            return Problem.NotFound("boat");
        }

        CheckedRig? rig = RigMapping.Of(standing.View.Name, BoatRig.Of(open.Club, standing.View), saysWho: access.Boats is null);
        return TypedResults.Content(CheckJson.Text(new RigDocument(RigDocument.Name, rig is null ? [] : [rig], [])), "application/json");
    }

    private static async Task<Results<ContentHttpResult, ProblemHttpResult>> OarsAsync(HttpContext context, OpenClubs clubs, int? match = null)
    {
        var wrong = new Fields();
        wrong.Expect(match is null or (>= 1 and <= MostMatched), nameof(match), string.Create(CultureInfo.InvariantCulture, $"how many oars, from 1 to {MostMatched}"));
        if (wrong.Any)
        {
            return Problem.Fields(wrong.Errors);
        }

        OpenClub open = await clubs.OpenAsync(ClubAccess.Of(context).Club, context.RequestAborted).ConfigureAwait(false);
        var view = new OarsView(open.Club);
        OarsDocument told = OarsMapping.Of(open.Club, view, []);
        if (match is { } count)
        {
            Oar[] pool = [.. view.All.Where(o => !o.IsOutOfUse).Select(o => o.Oar)];
            told = told with { Match = OarsMapping.Of(await Task.Run(() => OarMatching.Best(pool, count), context.RequestAborted).ConfigureAwait(false), count) };
        }

        return TypedResults.Content(CheckJson.Text(told), "application/json");
    }

    private static async Task<Ok<BoatListed[]>> ListAsync(HttpContext context, OpenClubs clubs)
    {
        ClubAccess access = ClubAccess.Of(context);
        OpenClub open = await clubs.OpenAsync(access.Club, context.RequestAborted).ConfigureAwait(false);
        return TypedResults.Ok<BoatListed[]>([.. (await SeenAsync(open.Shed, access).ConfigureAwait(false)).Select(Listed)]);
    }

    private static async Task<Results<ContentHttpResult, ProblemHttpResult>> CheckAsync(
        HttpContext context, OpenClubs clubs, string? boat = null)
    {
        ClubAccess access = ClubAccess.Of(context);
        OpenClub open = await clubs.OpenAsync(access.Club, context.RequestAborted).ConfigureAwait(false);
        ShedVerdicts shed = open.Shed;
        IReadOnlyList<BoatStanding> boats = boat is null ? await SeenAsync(shed, access).ConfigureAwait(false)
            : access.Sees(boat) && await shed.BoatAsync(boat).ConfigureAwait(false) is { } one ? [one] : [];
        if (boat is not null && boats.Count == 0)
        {
            return Problem.NotFound("boat");
        }

        Standard standard = ClubSettings.OfClub(open.Club);
        CheckedBoat?[] told = await Task.WhenAll(boats.Select(b => b.CheckedAsync())).ConfigureAwait(false);
        string json = CheckJson.Text(new CheckDocument(
            CheckDocument.Name,
            CheckedStandard.Of(standard),
            [.. told.OfType<CheckedBoat>()],
            [],
            [.. boats.Select(b => BoatRig.Of(open.Club, b.View))
                .Where(r => r.Verdict is not null)
                .Select(r => RigMapping.Of(r.View.Boat.Name, r, saysWho: false))
                .OfType<CheckedRig>()]));
        return TypedResults.Content(json, "application/json");
    }

    /// <summary>The boats that whoever asks may see.</summary>
    internal static async Task<IReadOnlyList<BoatStanding>> SeenAsync(ShedVerdicts shed, ClubAccess access)
    {
        if (access.Boats is not { } theirs)
        {
            return await shed.AllAsync().ConfigureAwait(false);
        }

        BoatStanding?[] seen = await Task.WhenAll(theirs.Order(StringComparer.Ordinal).Select(shed.BoatAsync)).ConfigureAwait(false);
        return [.. seen.OfType<BoatStanding>()];
    }

    private static BoatListed Listed(BoatStanding boat) => new(
        boat.View.Key,
        boat.View.Name,
        boat.View.Class?.Name,
        boat.Word,
        boat.StaysAshore,
        [.. boat.Holds.Select(h => ((Held)h.Fact).In(Language.English))],
        boat.LastRead,
        boat.Check?.Verdict.Standard.Name);
}
