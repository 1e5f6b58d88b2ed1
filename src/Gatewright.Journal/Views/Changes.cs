using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>A field that has another value than before.</summary>
/// <param name="Thing">The kind of thing.</param>
/// <param name="Key">Which one.</param>
/// <param name="Field">The field.</param>
/// <param name="From">Its value before; null for none.</param>
/// <param name="To">Its value after, who set it and when; null where the last setting was taken back.</param>
public sealed record FieldChange(string Thing, string Key, string Field, string? From, FieldValue? To);

/// <summary>What came to a boat, a rack or another thing.</summary>
/// <param name="About">What it is; jobs are told with their boat.</param>
/// <param name="Fields">Fields that changed, by thing and name.</param>
/// <param name="Readings">How many readings were taken.</param>
/// <param name="Facts">All else, oldest first: holds, releases, reports, jobs, notes; each with who recorded it.</param>
public sealed record ThingChange(Subject About, IReadOnlyList<FieldChange> Fields, int Readings, IReadOnlyList<Recorded> Facts);

/// <summary>What changed in a club between two days.</summary>
public static class Changes
{
    /// <summary>What is otherwise at the end of one day than at the end of another, by the days on which it was true.</summary>
    /// <param name="club">The club.</param>
    /// <param name="from">The day before the first that counts.</param>
    /// <param name="to">The last day that counts; not before <paramref name="from"/>.</param>
    /// <returns>The things that changed, by kind and key.</returns>
    public static IReadOnlyList<ThingChange> Between(Club club, DateOnly from, DateOnly to)
    {
        ArgumentNullException.ThrowIfNull(club);
        ArgumentOutOfRangeException.ThrowIfLessThan(to, from);
        Club before = ClubOnDay.Of(club, from);
        Club after = ClubOnDay.Of(club, to);
        Dictionary<string, Subject> jobs = after.All().Where(r => r.Fact is JobPlanned or ChangePlanned)
            .GroupBy(r => r.Fact is JobPlanned planned ? planned.Job : ((ChangePlanned)r.Fact).Job)
            .ToDictionary(g => g.Key, g => Subject.Of(g.First().Fact));
        ILookup<Subject, Recorded> fresh = after.All()
            .Where(r => before.Find(r.Entry.Id) is null && !after.IsRetracted(r))
            .ToLookup(r => Home(r.About, jobs));
        return [.. after.Subjects.Select(s => Home(s, jobs)).Distinct()
            .Select(s => new ThingChange(
                s,
                Fields(before, after, s),
                fresh[s].Count(r => r.Fact is ReadingTaken),
                [.. fresh[s].Where(r => r.Fact is not (ReadingTaken or ThingSet or BoatLaid or Retracted))]))
            .Where(c => c.Fields.Count + c.Readings + c.Facts.Count > 0)
            .OrderBy(c => c.About.Thing, StringComparer.Ordinal)
            .ThenBy(c => c.About.Key, StringComparer.Ordinal)];
    }

    private static Subject Home(Subject subject, Dictionary<string, Subject> jobs) =>
        subject.Thing == "job" ? jobs.GetValueOrDefault(subject.Key, subject) : subject;

    private static IReadOnlyList<FieldChange> Fields(Club before, Club after, Subject subject) =>
        [.. after.Everything(subject).Select(r => r.Fact).OfType<ThingSet>()
            .Select(s => (s.Thing, s.Key))
            .Distinct()
            .SelectMany(thing => Fields(new ThingView(before, thing.Thing, thing.Key), new ThingView(after, thing.Thing, thing.Key)))
            .OrderBy(c => c.Thing, StringComparer.Ordinal)
            .ThenBy(c => c.Key, StringComparer.Ordinal)
            .ThenBy(c => c.Field, StringComparer.Ordinal)];

    private static IEnumerable<FieldChange> Fields(ThingView before, ThingView after) => after.Fields
        .Where(field => before[field] != after[field])
        .Select(field => new FieldChange(after.Thing, after.Key, field, before[field], after.Holding(field)));
}
