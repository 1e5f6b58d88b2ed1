using FsCheck;
using FsCheck.Fluent;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Exchanging;
using Gatewright.Replica.Tests.World;
using Gatewright.Server.Tests.Hosting;

namespace Gatewright.Replica.Tests.Exchanging;

/// <summary>Whatever people do, and whatever befalls phones and network: in the end all have the same club, with each entry once.</summary>
public sealed class ReplicaLawTests(ServerOfTheRun server)
{
    private const int Phones = 3;

    private static readonly int Cases = LongRun.IsAsked ? 150 : 12;

    [Fact]
    public async Task All_come_to_the_same_club()
    {
        var people = new List<(Visitor Visitor, string Account)>();
        string home = server.NewClub();
        for (int i = 0; i < Phones; i++)
        {
            Visitor visitor = await server.Server.MemberAsync(home, $"m-{i}", Role.Keeper);
            people.Add((visitor, await server.Server.AccountIdAsync($"m-{i}.{home}")));
        }

        await Task.Run(
            () => Check.One(
                Config.QuickThrowOnFailure.WithMaxTest(Cases),
                Prop.ForAll(Acts.ToArbitrary(), acts => AgreeAsync(people, acts).GetAwaiter().GetResult())),
            TestContext.Current.CancellationToken);
    }

    private static Gen<Act[]> Acts =>
        (from phone in Gen.Choose(0, Phones - 1)
         from kind in Gen.Frequency(
             (8, Gen.Constant(Doing.Record)), (4, Gen.Constant(Doing.Exchange)), (1, Gen.Constant(Doing.Restart)),
             (1, Gen.Constant(Doing.Die)), (1, Gen.Constant(Doing.TurnClock)), (1, Gen.Constant(Doing.Rest)),
             (3, Gen.Constant(Doing.UseSecondPage)))
         from seed in Gen.Choose(0, int.MaxValue - 1)
         select new Act(phone, kind, seed)).ArrayOf(30);

    private async Task<bool> AgreeAsync(List<(Visitor Visitor, string Account)> people, Act[] acts)
    {
        // A club of its own would do, were it not that every phone takes up all clubs of whoever is signed in.
        string club = server.NewClub();
        Phone[] phones = new Phone[Phones];
        for (int i = 0; i < Phones; i++)
        {
            await server.Server.WithTablesAsync(async db =>
            {
                string account = people[i].Account;
                db.Memberships.RemoveRange(db.Memberships.Where(m => m.AccountId == account));
                await db.SaveChangesAsync();
            });
            await server.Server.JoinAsync(people[i].Account, club, $"m-{i}", Role.Keeper);
            phones[i] = await Phone.StartAsync(new(people[i].Visitor, server.Server.Address));
            await phones[i].ExchangeAsync();
        }

        var told = new List<string>();
        foreach (Act act in acts)
        {
            await DoAsync(phones[act.Phone], club, act, new(act.Seed), told);
        }

        // Twice, so that the first has what the last sent.
        foreach (Phone phone in phones.Concat(phones))
        {
            phone.Network.Fate = _ => Fate.Good;
            phone.Shelf.DiesAt = 0;
            await (await phone.ClubAsync(club)).LookAgainAsync();
            await phone.ShareAsync();
        }

        Club there = await server.ClubAsync(club);
        string[] holds = Said.Holds(there);
        Assert.Equal(holds.Distinct(), holds);
        Assert.Empty(told.Except(holds));
        string picture = ClubPicture.Of(there);
        foreach (Phone phone in phones)
        {
            Assert.Equal(picture, ClubPicture.Of((await phone.ClubAsync(club)).Club));
            await phone.OpenAsync();
            Assert.Equal(picture, ClubPicture.Of((await phone.ClubAsync(club)).Club));
        }

        return true;
    }

    private static async Task DoAsync(Phone phone, string club, Act act, Random chance, List<string> told)
    {
        try
        {
            switch (act.Kind)
            {
                case Doing.Record:
                    await RecordAsync(await phone.ClubAsync(club), chance, told);
                    break;
                case Doing.Exchange:
                    phone.Network.Fate = _ => chance.Next(4) == 0 ? (Fate)chance.Next(5) : Fate.Good;
                    await phone.ExchangeAsync();
                    break;
                case Doing.Restart:
                    await phone.OpenAsync();
                    break;
                case Doing.Die:
                    (phone.Shelf.DiesAt, phone.Shelf.DiesAfterwards) = (phone.Shelf.Calls + 1 + chance.Next(6), chance.Next(2) == 0);
                    break;
                case Doing.TurnClock:
                    phone.Clock.Ahead = TimeSpan.FromMinutes(chance.Next(-600, 600));
                    break;
                case Doing.UseSecondPage:
                    (Device device, Exchange exchange) = await phone.SecondPageAsync();
                    await RecordAsync(await device.ClubAsync(club), chance, told);
                    if (chance.Next(2) == 0)
                    {
                        phone.Network.Fate = _ => chance.Next(4) == 0 ? (Fate)chance.Next(5) : Fate.Good;
                        await exchange.RunAsync(TestContext.Current.CancellationToken);
                    }

                    break;
                default:
                    await (await phone.ClubAsync(club)).RestAsync(isIdle: true);
                    break;
            }
        }
        catch (DeadPageException)
        {
            await phone.OpenAsync();
        }
    }

    private static async Task RecordAsync(ClubCopy copy, Random chance, List<string> told)
    {
        Guid[] known = [.. copy.Club.All().Select(r => r.Entry.Id)];
        string reason = $"{chance.Next()}";
        await (chance.Next(3) switch
        {
            0 when known.Length > 0 => copy.RecordAsync(new Retracted(known[chance.Next(known.Length)])),
            1 => copy.RecordAsync(Said.Name($"n{chance.Next(5)}"), Said.Hold(reason)),
            _ => copy.RecordAsync(Said.Hold(reason)),
        });
        if (copy.Club.All().Any(r => r.Fact is Held held && held.Reason == reason))
        {
            told.Add(reason);
        }
    }

    private enum Doing
    {
        Record,
        Exchange,
        Restart,
        Die,
        TurnClock,
        Rest,
        UseSecondPage,
    }

    private sealed record Act(int Phone, Doing Kind, int Seed);
}
