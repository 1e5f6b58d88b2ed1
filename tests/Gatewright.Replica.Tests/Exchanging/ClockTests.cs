using Gatewright.Journal.Entries;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Tests.World;

namespace Gatewright.Replica.Tests.Exchanging;

/// <summary>A device's clock may be wrong: what it recorded gets the times it would have had.</summary>
public sealed class ClockTests(ServerOfTheRun server)
{
    // What a test takes, on a busy machine.
    private static readonly TimeSpan AMoment = TimeSpan.FromMinutes(2);

    [Theory]
    [InlineData(3)]
    [InlineData(-3)]
    [InlineData(30)]
    [InlineData(-30)]
    public async Task A_clock_that_is_hours_off_is_put_right_before_anybody_has_its_entries(int hours)
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ExchangeAsync();
        await phone.OpenAsync();
        phone.Clock.Ahead = TimeSpan.FromHours(hours);
        await phone.RecordAsync(club, Said.Hold("a"));
        await phone.RecordAsync(club, Said.Hold("b"));

        await phone.ShareAsync(tries: 0);
        await phone.RecordAsync(club, Said.Hold("c"));
        await phone.ShareAsync(tries: 0);

        Recorded[] there = [.. (await server.ClubAsync(club)).All()];
        Assert.Equal(["a", "b", "c"], there.Select(r => ((Journal.Facts.Held)r.Fact).Reason));
        Assert.All(there, r => Assert.InRange(r.Entry.Time.Instant, DateTimeOffset.UtcNow - AMoment, DateTimeOffset.UtcNow + AMoment));
        Assert.Equal(ClubPicture.Of(await server.ClubAsync(club)), ClubPicture.Of((await phone.ClubAsync(club)).Club));
    }

    [Fact]
    public async Task A_clock_that_was_ahead_and_has_gone_right_by_itself()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ExchangeAsync();
        phone.Clock.Ahead = TimeSpan.FromHours(5);
        await phone.RecordAsync(club, Said.Hold("a"));
        phone.Clock.Ahead = TimeSpan.FromHours(5) + TimeSpan.FromMinutes(10);
        await phone.RecordAsync(club, Said.Hold("b"));
        phone.Clock.Ahead = TimeSpan.Zero;

        await phone.ShareAsync(tries: 0);

        Entry[] there = [.. (await server.ClubAsync(club)).All().Select(r => r.Entry)];
        Assert.InRange(there[1].Time.Instant, DateTimeOffset.UtcNow - AMoment, DateTimeOffset.UtcNow + AMoment);
        // Ten minutes lay between them, and a moment.
        Assert.InRange(there[1].Time.Instant - there[0].Time.Instant, TimeSpan.FromMinutes(9.9), TimeSpan.FromMinutes(10) + AMoment);
    }

    /// <summary>
    /// Four minutes ahead an entry is taken. Its answer is lost, and before it is sent again the clock is found an hour ahead.
    /// </summary>
    [Fact]
    public async Task An_entry_that_was_taken_unheard_and_then_moved_is_there_once()
    {
        string club = server.NewClub();
        Phone phone = await server.PhoneAsync(club, "m-1");
        await phone.ExchangeAsync();
        await phone.OpenAsync();
        await phone.ClubAsync(club);
        phone.Clock.Ahead = TimeSpan.FromMinutes(4);
        await phone.RecordAsync(club, Said.Hold("a"));
        phone.Network.Fate = r => r.Method == HttpMethod.Post ? Fate.AnswerLost : Fate.Good;
        await phone.ExchangeAsync();
        Assert.Equal(1, (await server.ClubAsync(club)).Count);

        // It is moved on the shelf before the device hears of it.
        ClubCopy copy = await phone.ClubAsync(club);
        HybridTime sent = copy.NotShared[0].Entry.Time;
        await copy.Exchanged.RestampAsync(DateTimeOffset.UtcNow - TimeSpan.FromHours(1), all: true);
        Assert.NotEqual(sent, copy.NotShared[0].Entry.Time);
        phone.Network.Fate = _ => Fate.Good;
        await phone.ShareAsync();

        Assert.Equal(["a"], Said.Holds(await server.ClubAsync(club)));
        Assert.Equal(sent, Assert.Single(copy.Club.All()).Entry.Time);
    }

    [Fact]
    public void Nothing_is_moved_before_what_had_been_seen_or_made()
    {
        DateTimeOffset now = DateTimeOffset.FromUnixTimeMilliseconds(1_760_000_000_000);
        OwnEntry Made(int ms, HybridTime seen, bool isRight) => new()
        {
            Place = ms,
            Seen = seen,
            IsTimeRight = isRight,
            Entry = new()
            {
                Id = Guid.CreateVersion7(now), Club = "c", Member = "m", Device = "d", Kind = "hold", Version = 1, Body = "{}"u8.ToArray(),
                Time = new(now.AddMilliseconds(ms).ToUnixTimeMilliseconds(), 0),
            },
        };
        HybridTime At(int ms, int counter = 0) => new(now.AddMilliseconds(ms).ToUnixTimeMilliseconds(), counter);

        // An hour ahead. The second was made in sight of something of half a second ago; the third's time is right.
        IReadOnlyList<OwnEntry> moved = Restamping.Moved(
            [Made(3_599_000, default, false), Made(3_599_100, At(-500), false), Made(3_600_000, At(-500), true)],
            o => !o.IsTimeRight,
            now.AddHours(1),
            now,
            At(-1100));

        Assert.Equal([At(-1000), At(-500, 1)], moved.Select(o => o.Entry.Time));
    }
}
