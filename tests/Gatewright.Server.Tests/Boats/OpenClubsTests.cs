using System.Data.Common;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Replay.Snapshots;
using Gatewright.Server.Boats;
using Gatewright.Store;
using Gatewright.Store.Schema;
using Gatewright.Store.Snapshots;
using Gatewright.Store.Tests;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging.Abstractions;

namespace Gatewright.Server.Tests.Boats;

public sealed class OpenClubsTests(Stores stores)
{
    private const string Name = "upper-lock";
    private const int Many = 2500;

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Theory]
    [EveryEngine]
    public async Task A_long_journal_gets_a_snapshot_and_is_opened_from_it(Engine engine)
    {
        StoreLocation location = await FilledAsync(engine, Name, Many);
        Club replayed = await OpenedAsync(location);
        Assert.Equal(Many, await SnapshotAsync(location));

        // What the snapshot has is not read from the journal again: it would be missed.
        await DoAsync(location, $"DELETE FROM entries WHERE \"Number\" < {Many}");

        AssertSame(replayed, await OpenedAsync(location));
    }

    [Fact]
    public async Task A_short_journal_gets_none()
    {
        StoreLocation location = await FilledAsync(Engine.Sqlite, Name, 1900);
        await OpenedAsync(location);

        Assert.Null(await new SnapshotStore(location).GetAsync(Name, Cancellation));
    }

    [Theory]
    [EveryEngine]
    public async Task Whatever_is_done_to_a_snapshot_the_club_is_the_same_and_a_good_one_is_made(Engine engine)
    {
        string empty = engine == Engine.Sqlite ? "X''" : "''::bytea";
        string shorter = engine == Engine.Sqlite
            ? "CAST(substr(\"Bytes\", 1, length(\"Bytes\") - 1) AS BLOB)"
            : "substring(\"Bytes\" FROM 1 FOR length(\"Bytes\") - 1)";
        StoreLocation location = await FilledAsync(engine, Name, Many);
        Club replayed = await OpenedAsync(location);
        await SnapshotAsync(location);
        foreach (string done in new[]
        {
            "DELETE FROM snapshots",
            $"UPDATE snapshots SET \"Bytes\" = {empty}",
            $"UPDATE snapshots SET \"Bytes\" = {shorter}",
            $"UPDATE snapshots SET \"Number\" = {Many - 1}",
            $"UPDATE snapshots SET \"Number\" = {Many * 2}",
        })
        {
            await DoAsync(location, done);

            AssertSame(replayed, await OpenedAsync(location));
            Assert.Equal(Many, await SnapshotAsync(location));
        }
    }

    [Fact]
    public async Task The_snapshot_of_another_club_is_not_gone_on_from()
    {
        StoreLocation location = await FilledAsync(Engine.Sqlite, Name, Many);
        await FillAsync(location, "weir-side", Many);
        Club replayed = await OpenedAsync(location);
        await OpenedAsync(location, "weir-side");
        await DoAsync(location, $"DELETE FROM snapshots WHERE \"Club\" = '{Name}'");
        await DoAsync(location, $"UPDATE snapshots SET \"Club\" = '{Name}'");

        AssertSame(replayed, await OpenedAsync(location));
    }

    [Fact]
    public async Task A_snapshot_that_fits_its_place_and_is_of_another_club_or_lacks_entries_is_not_gone_on_from()
    {
        StoreLocation location = await FilledAsync(Engine.Sqlite, Name, Many);
        Club replayed = await OpenedAsync(location);
        var snapshots = new SnapshotStore(location);
        foreach (Club wrong in new[] { Club.Empty("weir-side").With(Made("weir-side", Many).Select(Recorded.Of)), Club.Empty(Name) })
        {
            await DoAsync(location, "DELETE FROM snapshots");
            Assert.True(await snapshots.PutAsync(Name, Many, to => ClubSnapshot.Write(wrong, Many, to), Cancellation));

            AssertSame(replayed, await OpenedAsync(location));
            Assert.Equal(Many, await SnapshotAsync(location));
        }
    }

    [Fact]
    public async Task What_was_appended_since_is_added_and_after_enough_of_it_a_further_snapshot_is_made()
    {
        StoreLocation location = await FilledAsync(Engine.Sqlite, Name, Many);
        using SnapshotWriter writer = Writer(location);
        await writer.StartAsync(Cancellation);
        var clubs = new OpenClubs(new(location), new(location), writer);
        await clubs.OpenAsync(Name, Cancellation);
        Assert.Equal(Many, await SnapshotAsync(location));

        foreach (int until in new[] { Many + 1, Many + 1500, Many + 2001 })
        {
            await AppendAsync(location, Made(Name, until));
            OpenClub open = await clubs.OpenAsync(Name, Cancellation);
            Assert.Equal((until, until), (open.Number, open.Club.Count));
            AssertSame(Club.Empty(Name).With(Made(Name, until).Select(Recorded.Of)), open.Club);
        }

        Assert.Equal(Many + 2001, await SnapshotAsync(location, Many + 2001));
        await writer.StopAsync(Cancellation);
    }

    [Fact]
    public async Task A_club_with_nothing_new_is_the_same_object_and_many_who_ask_at_once_get_one()
    {
        StoreLocation location = await FilledAsync(Engine.Sqlite, Name, Many);
        using SnapshotWriter writer = Writer(location);
        var clubs = new OpenClubs(new(location), new(location), writer);

        OpenClub[] opened = await Task.WhenAll(Enumerable.Range(0, 20).Select(_ => Task.Run(() => clubs.OpenAsync(Name, Cancellation))));

        Assert.All(opened, open => Assert.Same(opened[0], open));
        Assert.Same(opened[0], await clubs.OpenAsync(Name, Cancellation));
    }

    [Fact]
    public async Task A_journal_that_was_put_back_to_an_earlier_state_is_read_anew()
    {
        StoreLocation location = await FilledAsync(Engine.Sqlite, Name, Many);
        using SnapshotWriter writer = Writer(location);
        var clubs = new OpenClubs(new(location), new(location), writer);
        await clubs.OpenAsync(Name, Cancellation);
        await DoAsync(location, "DELETE FROM entries WHERE \"Number\" > 100");
        await DoAsync(location, "UPDATE clubs SET \"Last\" = 100");

        OpenClub open = await clubs.OpenAsync(Name, Cancellation);

        Assert.Equal((100, 100), (open.Number, open.Club.Count));
    }

    [Fact]
    public void The_clubs_used_last_are_kept_as_many_as_there_is_room_for()
    {
        var kept = new KeptClubs(3, 100);
        kept.Keep(Of("a", 40));
        kept.Keep(Of("b", 40));
        kept.Keep(Of("a", 50));
        Assert.Equal(["a", "b"], kept.Names);

        kept.Keep(Of("c", 20));
        Assert.Equal(["c", "a"], kept.Names);
        Assert.Equal(50, kept.Find("a")!.Number);
        Assert.Null(kept.Find("b"));

        kept.Keep(Of("d", 1));
        kept.Keep(Of("e", 1));
        Assert.Equal(["e", "d", "a"], kept.Names);

        kept.Keep(Of("f", 1000));
        Assert.Equal(["f"], kept.Names);
    }

    private static OpenClub Of(string club, int count) =>
        OpenClub.Of(Club.Empty(club).With(Made(club, count).Select(Recorded.Of)), count);

    private static SnapshotWriter Writer(StoreLocation location) => new(new(location), NullLogger<SnapshotWriter>.Instance);

    /// <summary>As a server that starts anew opens it, and writes what it writes before it stops.</summary>
    private static async Task<Club> OpenedAsync(StoreLocation location, string club = Name)
    {
        using SnapshotWriter writer = Writer(location);
        await writer.StartAsync(Cancellation);
        OpenClub open = await new OpenClubs(new(location), new(location), writer).OpenAsync(club, Cancellation);
        if (open.Number > 2000)
        {
            await SnapshotAsync(location, open.Number, club);
        }

        await writer.StopAsync(Cancellation);
        return open.Club;
    }

    /// <summary>How far the snapshot goes, which is written while nobody waits for it: a test does.</summary>
    private static async Task<long> SnapshotAsync(StoreLocation location, long until = Many, string club = Name)
    {
        var snapshots = new SnapshotStore(location);
        for (int left = 600; ; left--)
        {
            KeptSnapshot? kept = await snapshots.GetAsync(club, Cancellation);
            if (kept is { Content: { } content } && kept.Number == until && IsWhole(content))
            {
                return kept.Number;
            }

            Assert.True(left > 0, $"The snapshot goes to {kept?.Number}.");
            await Task.Delay(50, Cancellation);
        }
    }

    private static bool IsWhole(Stream snapshot)
    {
        try
        {
            (string club, long number, int count) = ClubSnapshot.Look(snapshot);
            return number == count && club.Length > 0;
        }
        catch (SnapshotException)
        {
            return false;
        }
    }

    private static void AssertSame(Club expected, Club actual)
    {
        Assert.Equal(expected.Name, actual.Name);
        Assert.Equal(expected.All().Select(Line), actual.All().Select(Line));
        Assert.Equal(expected.Subjects.ToHashSet(), actual.Subjects.ToHashSet());
        Assert.All(expected.Subjects, s => Assert.Equal(expected.About(s).Select(Line), actual.About(s).Select(Line)));
    }

    private static string Line(Recorded recorded) => Convert.ToBase64String(EntryJson.ToLine(recorded.Entry));

    private async Task<StoreLocation> FilledAsync(Engine engine, string club, int count)
    {
        StoreLocation location = await stores.NewAsync(engine);
        await FillAsync(location, club, count);
        return location;
    }

    private static Task<IReadOnlyList<long>> FillAsync(StoreLocation location, string club, int count) => AppendAsync(location, Made(club, count));

    private static Task<IReadOnlyList<long>> AppendAsync(StoreLocation location, Entry[] entries) =>
        new JournalStore(location).AppendAsync(entries[0].Club, entries, Cancellation);

    /// <summary>Entries by number: the same number is always the same entry; every tenth takes another back.</summary>
    private static Entry[] Made(string club, int count) => [.. Enumerable.Range(1, count).Select(number =>
    {
        Fact fact = number % 10 == 0 ? new Retracted(Id(number - 3), null) : new Held($"boat-{number % 7}", $"knock {number}");
        (string kind, int version, byte[] body) = FactKinds.Write(fact);
        return new Entry
        {
            Id = Id(number), Club = club, Member = "m1", Device = "phone", Time = new(1_700_000_000_000 + number, 0),
            Kind = kind, Version = version, Body = body,
        };
    })];

    private static Guid Id(int number) => Guid.Parse(FormattableString.Invariant($"01900000-0000-7000-8000-{number:x12}"));

    private static async Task DoAsync(StoreLocation location, string sql)
    {
        await using StoreDb db = location.Open();
        await db.Database.OpenConnectionAsync(Cancellation);
        await using DbCommand command = db.Database.GetDbConnection().CreateCommand();
        command.CommandText = sql;
        Assert.NotEqual(0, await command.ExecuteNonQueryAsync(Cancellation));
    }
}
