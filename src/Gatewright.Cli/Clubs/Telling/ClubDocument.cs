using System.Text.Json.Serialization;

namespace Gatewright.Cli.Clubs.Telling;

/// <summary>What a command on a club tells programs; docs/club.md describes it. A property here is a key there.</summary>
/// <param name="Format">The format's name and version.</param>
internal abstract record ClubDocument([property: JsonPropertyOrder(-1)] string Format);

/// <summary>The clubs of a store.</summary>
internal sealed record ClubsDocument(string Store, IReadOnlyList<ListedClub> Clubs) : ClubDocument("gatewright.clubs/1");

/// <summary>One of them.</summary>
internal sealed record ListedClub(
    string Club, string? Name, long Entries, DateOnly? LastDay, IReadOnlyDictionary<string, int> Members);

/// <summary>A club that was written to files.</summary>
internal sealed record ExportedDocument(string Club, string? Name, IReadOnlyList<string> Files, long Entries, long Photos)
    : ClubDocument("gatewright.club-exported/1");

/// <summary>A club's file that was taken into a store.</summary>
internal sealed record ImportedDocument(
    string Club, string? Name, string File, long Entries, long NewEntries, long Photos, long NewPhotos, IReadOnlyList<string> Problems)
    : ClubDocument("gatewright.club-imported/1");

/// <summary>Files that were recorded in a club.</summary>
internal sealed record RecordedDocument(
    string Club, string? Name, string Member, int NewEntries, IReadOnlyDictionary<string, int> Kinds, IReadOnlyList<string> Warnings)
    : ClubDocument("gatewright.club-recorded/1");

/// <summary>A document that was printed.</summary>
internal sealed record PrintedDocument(string Document, string File, int Count) : ClubDocument("gatewright.printed/1");

/// <summary>What was found when a store was looked through.</summary>
internal sealed record StoreReportDocument(
    string Did,
    string Store,
    string? File,
    bool Sound,
    long Clubs,
    long Entries,
    long Photos,
    long Faults,
    long Notices,
    IReadOnlyList<ListedFinding> Findings)
    : ClubDocument("gatewright.store-report/1");

/// <summary>What changed in a club.</summary>
internal sealed record ChangesDocument(
    string Club, string? Name, DateOnly From, DateOnly To, IReadOnlyList<ChangedThing> Things) : ClubDocument("gatewright.club-changes/1");

/// <summary>A thing that changed.</summary>
internal sealed record ChangedThing(
    string Thing, string Key, string Name, int Readings, IReadOnlyList<ChangedField> Fields, IReadOnlyList<ToldFact> Facts);

/// <summary>A field that has another value than before.</summary>
internal sealed record ChangedField(
    string Thing, string Key, string Field, string? From, string? To, string? Member, DateOnly? Day);

/// <summary>Something that was recorded.</summary>
internal sealed record ToldFact(string Kind, string Words, string Member, DateOnly Day);

/// <summary>A boat as it was on a day.</summary>
internal sealed record BoatDayDocument(
    string Club,
    string? Name,
    DateOnly Day,
    string Boat,
    string Key,
    IReadOnlyList<StatedField> Fields,
    int Readings,
    IReadOnlyList<ToldFact> Holds,
    IReadOnlyList<ToldFact> OpenJobs)
    : ClubDocument("gatewright.club-day/1");

/// <summary>A field's value, and who said so.</summary>
internal sealed record StatedField(string Thing, string Key, string Field, string Value, string Member, DateOnly Day);

/// <summary>One thing that was found.</summary>
internal sealed record ListedFinding(string Weight, string? Club, long? Number, string What, string Remedy);

/// <summary>Changes of rig that stand among a club's jobs.</summary>
internal sealed record KeptChangesDocument(string Club, string? Name, IReadOnlyList<KeptChange> Changes) : ClubDocument("gatewright.kept-changes/1");

/// <summary>One of them.</summary>
internal sealed record KeptChange(
    string Job,
    string Boat,
    string Rig,
    string Member,
    DateOnly Day,
    string State,
    DateOnly? ClosedOn,
    string? Reason,
    IReadOnlyList<KeptStep> Steps,
    IReadOnlyList<string> Parts,
    IReadOnlyList<KeptReading> Again);

/// <summary>One of its steps.</summary>
internal sealed record KeptStep(int Number, string Text, bool Done);

/// <summary>Something to read again after it.</summary>
internal sealed record KeptReading(
    string Item, int Seat, string? Side, string State, decimal? From, decimal? To, double? Value, double? U, DateOnly? Day);
