using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Rigs;
using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Learning;
using Gatewright.Journal.Oars;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Cli.CheckShed;

/// <summary>The shed of a club in a store, judged as the club judges it.</summary>
internal static class ClubShed
{
    /// <summary>What a check of the club needs.</summary>
    /// <param name="place">The club.</param>
    /// <param name="asked">A standard or chances here come before the club's own.</param>
    public static ShedInput Read(StorePlace place, ShedRequest asked)
    {
        var errors = new List<InputProblem>();
        OpenedClub? opened = ClubChoice.Open(place, errors);
        Club club = opened?.Club ?? Club.Empty(string.Empty);
        CheckSettings settings = ClubSettings.Of(club);
        var odd = new List<InputProblem>();
        if (asked.Standard is { } name)
        {
            (Standard? chosen, IReadOnlyList<InputProblem> wrong, IReadOnlyList<InputProblem> oddStandard) =
                StandardChoice.Read(name, [.. StandardsView.Of(club).Values]);
            errors.AddRange(wrong);
            odd.AddRange(oddStandard);
            settings = settings with { Standard = chosen ?? settings.Standard };
        }

        if (asked.Chances is not null)
        {
            ClubChances table = ChancesChoice.Read(asked.Chances, errors);
            settings = settings with { Diagnosing = table.In(CheckSettings.Default.Diagnosing) };
        }

        ClubBoats boats = ClubBoats.Of(club, asked.Boats, settings.Diagnosing.Measuring);
        IReadOnlyList<ShedRig> rigs = [.. RigInput.OfClub(club, crew: null).Where(r => r.Verdict is not null && BoatChoice.IsChosen(r.Boat, asked.Boats))];
        return new(settings, errors.Count == 0 ? boats.Chosen(errors) : [], errors, 0, [.. odd, .. boats.Warnings, .. OddShelf.Of(club)])
        {
            OwnStandards = asked.Standard is null ? boats.OwnStandards : new Dictionary<string, Standard>(),
            Shelf = ClubShelf.Of(club),
            Rigs = rigs,
            SleevesOf = SleevesOf(club, settings),
            GatesOf = boat => boats.Gates[boat.Current.Boat],
        };
    }

    private static Func<string, SleevesInBoat?> SleevesOf(Club club, CheckSettings settings)
    {
        var oars = new Lazy<OarsView>(() => new(club, settings.Diagnosing.Measuring));
        var titles = new ThingTitles(club, Things.Boat);
        return boat => BoatView.Keys(club).FirstOrDefault(key => titles[key] == boat) is { } found
            ? new SleevesInBoat(oars.Value, found, BoatGates.Of(club, new BoatView(club, found)))
            : null;
    }
}
