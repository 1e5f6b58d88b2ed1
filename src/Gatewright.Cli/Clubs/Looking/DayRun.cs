using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.Cli.Clubs.Looking;

/// <summary>Tells how a boat stood on a day.</summary>
internal static class DayRun
{
    private const string So = "Nothing was looked at.";

    public static async Task<Answer> RunAsync(StorePlace place, DateOnly day, string boat, CancellationToken cancellation)
    {
        var errors = new List<InputProblem>();
        OpenedClub? club = await ClubChoice.OpenAsync(place, errors, cancellation).ConfigureAwait(false);
        if (club is null || Find(club.Club, boat, errors) is not { } found)
        {
            return new Answer.Refused(errors, 0, So);
        }

        Club then = ClubOnDay.Of(club.Club, day);
        var view = new BoatView(then, found.Key);
        var document = new BoatDayDocument(
            club.Id,
            club.Name,
            day,
            found.Name,
            found.Key,
            [.. Fields(then, found.Key)],
            view.Record(MeasuringSettings.Default)?.Current.Readings.Count ?? 0,
            [.. view.Holds.Select(FactWords.Told)],
            [.. view.Jobs.Where(j => j.IsOpen).Select(j => FactWords.Told(j.Planned))]);
        return new Answer.Done(ExitStatus.Good, [.. Sentences(document)], document);
    }

    /// <summary>By the names that the boats have today.</summary>
    private static (string Key, string Name)? Find(Club club, string boat, List<InputProblem> errors)
    {
        var titles = new ThingTitles(club, Things.Boat);
        List<(string Key, string Name)> boats = [.. BoatView.Keys(club)
            .Select(key => (key, titles[key]))
            .OrderBy(b => b.Item2, StringComparer.OrdinalIgnoreCase)];
        foreach ((string, string Name) found in boats.Where(b => b.Name.Equals(boat.Trim(), StringComparison.OrdinalIgnoreCase)))
        {
            return found;
        }

        errors.Add(new("--boat", null, null, boat, $"is none of the club's boats: {string.Join(", ", boats.Select(b => b.Name))}."));
        return null;
    }

    private static IEnumerable<StatedField> Fields(Club club, string boat) => club.Everything(Subject.Boat(boat))
        .Select(r => r.Fact).OfType<ThingSet>()
        .Select(s => (s.Thing, s.Key))
        .Distinct()
        .OrderBy(t => t.Thing, StringComparer.Ordinal).ThenBy(t => t.Key, StringComparer.Ordinal)
        .Select(t => new ThingView(club, t.Thing, t.Key))
        .SelectMany(thing => thing.Fields.Order(StringComparer.Ordinal)
            .Select(field => (Field: field, Value: thing.Holding(field)))
            .Where(f => f.Value?.Value is not null)
            .Select(f => new StatedField(
                thing.Thing, thing.Key, f.Field, f.Value!.Value!, f.Value.Entry.Member, Day.Of(f.Value.Entry))));

    private static IEnumerable<string> Sentences(BoatDayDocument boat)
    {
        bool isKnown = boat.Fields.Count + boat.Readings + boat.Holds.Count + boat.OpenJobs.Count > 0;
        string head = $"{boat.Boat} at the end of {Language.English.Day(boat.Day)}";
        yield return isKnown ? $"{head}: {Counted.Of(boat.Readings, "reading")} of it as it then was." : $"{head}: nothing is on record of it by then.";
        foreach (StatedField field in boat.Fields)
        {
            string place = field.Key == boat.Key ? string.Empty : $"{field.Thing} {field.Key}, ";
            yield return $"{place}{field.Field}: {field.Value} ({field.Member}, {Language.English.Day(field.Day)}).";
        }

        foreach (ToldFact hold in boat.Holds)
        {
            yield return $"Ashore, {FactWords.Sentence(hold)}.";
        }

        foreach (ToldFact job in boat.OpenJobs)
        {
            yield return $"Open: {FactWords.Sentence(job)}.";
        }
    }
}
