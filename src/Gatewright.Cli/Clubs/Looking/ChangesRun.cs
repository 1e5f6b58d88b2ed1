using Gatewright.Cli.Clubs.Keeping;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.Cli.Clubs.Looking;

/// <summary>Tells what came to a club.</summary>
internal static class ChangesRun
{
    public static async Task<Answer> RunAsync(StorePlace place, DateOnly from, DateOnly to, CancellationToken cancellation)
    {
        var errors = new List<InputProblem>();
        OpenedClub? club = await ClubChoice.OpenAsync(place, errors, cancellation).ConfigureAwait(false);
        if (club is null)
        {
            return new Answer.Refused(errors, 0, "Nothing was looked at.");
        }

        // A first day that has not come yet has nothing before the last one that counts.
        DateOnly last = to < from ? from : to;
        DateOnly before = from == DateOnly.MinValue ? from : from.AddDays(-1);
        IReadOnlyList<ThingChange> changes = Changes.Between(club.Club, before, last);
        var titles = changes.Select(c => c.About.Thing).Distinct().ToDictionary(thing => thing, thing => new ThingTitles(club.Club, thing));
        List<ChangedThing> things = [.. changes.Select(change => Changed(titles[change.About.Thing], change))];
        string days = $"from {Language.English.Day(from)} to {Language.English.Day(last)}";
        return new Answer.Done(
            ExitStatus.Good,
            [
                things.Count == 0 ? $"{club.Title}: nothing changed {days}." : $"{club.Title}: {Counted.Of(things.Count, "thing")} changed {days}.",
                .. things.SelectMany(Sentences),
            ],
            new ChangesDocument(club.Id, club.Name, from, last, things));
    }

    private static ChangedThing Changed(ThingTitles titles, ThingChange change)
    {
        string key = change.About.Key;
        return new(
            change.About.Thing,
            key,
            titles[key],
            change.Readings,
            [.. change.Fields.Select(f => new ChangedField(
                f.Thing, f.Key, f.Field, f.From, f.To?.Value, f.To?.Entry.Member, f.To is { } value ? Day.Of(value.Entry) : null))],
            [.. change.Facts.Select(FactWords.Told)]);
    }

    private static IEnumerable<string> Sentences(ChangedThing thing)
    {
        string title = Sentence.Capital($"{thing.Thing} {thing.Name}".Trim());
        if (thing.Readings > 0)
        {
            yield return $"{title}: {Counted.Of(thing.Readings, "reading")}.";
        }

        foreach (ChangedField field in thing.Fields)
        {
            string place = field.Key == thing.Key ? string.Empty : $"{field.Thing} {field.Key}, ";
            string who = field is { Member: { } member, Day: { } day } ? $", set by {member} on {Language.English.Day(day)}" : ", taken back";
            yield return $"{title}: {place}{field.Field}: {field.To ?? "nothing"}, was {field.From ?? "nothing"}{who}.";
        }

        foreach (ToldFact fact in thing.Facts)
        {
            yield return $"{title}: {FactWords.Sentence(fact)}.";
        }
    }
}
