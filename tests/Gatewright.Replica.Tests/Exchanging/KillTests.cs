using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Shelves;
using Gatewright.Replica.Tests.World;
using Gatewright.Server.Tests.Hosting;

namespace Gatewright.Replica.Tests.Exchanging;

/// <summary>A page may die at any moment: with a flat battery, under a thumb. What was said to be recorded stays, once.</summary>
[Trait(Runs.Name, Runs.Once)]
public sealed class KillTests(ServerOfTheRun server)
{
    // More calls than any of these days makes.
    private const int MostCalls = 200;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Whatever_call_it_dies_at_nothing_is_lost_and_nothing_doubled(bool diesAfterwards)
    {
        string club = server.NewClub();
        Visitor visitor = await server.Server.MemberAsync(club, "m-1", Role.Keeper);
        Phone other = await Phone.StartAsync(new(visitor, server.Server.Address));
        await other.ExchangeAsync();

        // Enough for a snapshot to be worth it.
        await other.RecordAsync(club, [.. Enumerable.Range(0, 250).Select(i => Said.Hold($"early {i}"))]);
        await other.ShareAsync();
        int at = 1;
        while (await DiesAsync(club, visitor, other, at, diesAfterwards))
        {
            at++;
            Assert.True(at < MostCalls);
        }

        // As many as a day without a death makes, give or take those that only some deaths bring about.
        Assert.InRange(at, 25, MostCalls);
    }

    /// <summary>A day on which the page dies at a call of the shelf.</summary>
    /// <returns>Whether it came to that call.</returns>
    private async Task<bool> DiesAsync(string club, Visitor visitor, Phone other, int at, bool afterwards)
    {
        Phone phone = await Phone.StartAsync(new(visitor, server.Server.Address));
        (phone.Shelf.DiesAt, phone.Shelf.DiesAfterwards) = (at + 1, afterwards);
        string mark = $"{at}{(afterwards ? "after" : "before")}";
        var tried = new List<string>();
        var told = new List<string>();
        bool died = false;
        string? photo = null;
        Func<Task>[] day =
        [
            () => phone.ExchangeAsync(),
            () => RecordAsync("1"),
            () => RecordAsync("2"),
            async () => await phone.RecordAsync(club, new Retracted((await phone.ClubAsync(club)).Club.All().Last().Entry.Id)),
            async () =>
            {
                phone.Network.Fate = r => r.Method == HttpMethod.Post ? Fate.AnswerLost : Fate.Good;
                await phone.ExchangeAsync();
                phone.Network.Fate = _ => Fate.Good;
            },
            async () =>
            {
                await other.RecordAsync(club, Said.Hold($"other {mark}"));
                await other.ShareAsync();
            },
            () => RecordAsync("3"),
            () => phone.ExchangeAsync(),
            () =>
            {
                phone.Clock.Ahead = TimeSpan.FromHours(3);
                return RecordAsync("4");
            },
            async () => photo = await phone.Device.AddPhotoAsync(club, Said.Picture(mark), "image/png"),
            () => phone.ExchangeAsync(),
            () => RecordAsync("5"),
            async () => await (await phone.ClubAsync(club)).RestAsync(isIdle: true),
            () => phone.ExchangeAsync(),
        ];
        foreach (Func<Task> step in day)
        {
            try
            {
                await step();
            }
            catch (DeadPageException)
            {
                died = true;
                phone.Network.Fate = _ => Fate.Good;
                await phone.OpenAsync();
                if (phone.Device.Clubs.Count == 0)
                {
                    // It had not come so far as to know its club.
                    await phone.ExchangeAsync();
                }
            }
        }

        phone.Shelf.DiesAt = 0;
        await phone.ShareAsync();
        Club there = await server.ClubAsync(club);
        string[] mine = [.. Said.Holds(there).Where(r => r.StartsWith(mark + " ", StringComparison.Ordinal))];
        Assert.Equal(mine.Distinct(), mine);
        Assert.Empty(told.Except(mine));
        Assert.Empty(mine.Except(tried));
        ClubCopy copy = await phone.ClubAsync(club);
        Assert.Equal(ClubPicture.Of(there), ClubPicture.Of(copy.Club));

        if (photo is not null)
        {
            Assert.False((await phone.Shelf.PhotosAsync(club))[photo].IsUnsent, "the picture was not sent");
        }

        // What came back stands on the shelf once.
        Assert.Empty((await phone.Shelf.ReadAsync(club, ReadFrom.Beginning)).Own);

        // And as it is read from the shelf.
        await phone.OpenAsync();
        Assert.Equal(ClubPicture.Of(there), ClubPicture.Of((await phone.ClubAsync(club)).Club));
        return died;

        async Task RecordAsync(string what)
        {
            tried.Add($"{mark} {what}");
            await phone.RecordAsync(club, Said.Hold($"{mark} {what}"));
            told.Add($"{mark} {what}");
        }
    }
}
