using FsCheck;
using FsCheck.Fluent;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Server.Boats;
using Gatewright.Server.Tests.Hosting;
using Gatewright.Store;
using Gatewright.Store.Tests;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.Server.Tests.Syncing;

/// <summary>However the network treats them, devices that have sent and fetched all are the same club as the server.</summary>
public sealed class ReplicaLawTests(Stores stores)
{
    private const int Devices = 3;

    private static readonly int Cases = LongRun.IsAsked ? 400 : 6;

    [Theory, EveryEngine]
    public async Task All_come_to_the_same_club(Engine engine)
    {
        await using RunningServer server = await RunningServer.StartAsync(await stores.NewAsync(engine));
        (Visitor Visitor, string Account)[] people = await PeopleAsync(server);
        Gen<Act[]> acts = Acts;
        int number = 0;
        await Task.Run(
            () => Check.One(
                Config.QuickThrowOnFailure.WithMaxTest(Cases),
                Prop.ForAll(acts.ToArbitrary(), plan => AgreeAsync(server, people, $"club-{++number}", plan).GetAwaiter().GetResult())),
            TestContext.Current.CancellationToken);
    }

    private static Gen<Act[]> Acts =>
        (from device in Gen.Choose(0, Devices - 1)
         from kind in Gen.Frequency((5, Gen.Constant(0)), (3, Gen.Constant(1)), (2, Gen.Constant(2)))
         from fact in Gen.Choose(0, 5)
         from seed in Gen.Choose(0, int.MaxValue - 1)
         from isLost in Gen.Elements(true, false)
         select new Act(device, kind, fact, seed, isLost)).ArrayOf(40);

    private static async Task<bool> AgreeAsync(
        RunningServer server, (Visitor Visitor, string Account)[] people, string club, Act[] plan)
    {
        Device[] devices = [.. people.Select((p, i) => new Device(p.Visitor, club, $"m-{i}"))];
        for (int i = 0; i < Devices; i++)
        {
            await server.JoinAsync(people[i].Account, club, $"m-{i}", Role.Keeper);
        }

        DateTimeOffset now = DateTimeOffset.UtcNow.AddDays(-1);
        foreach (Act act in plan)
        {
            var chance = new Random(act.Seed);
            Device device = devices[act.Device];
            await (act.Kind switch
            {
                0 => Record(device, act, chance, now = now.AddMilliseconds(chance.Next(3))),
                1 => device.SendAsync(chance, act.IsLost),
                _ => device.FetchAsync(chance.Next(1, 9), act.IsLost),
            });
        }

        foreach (Device device in devices)
        {
            await device.FinishAsync();
        }

        await Task.WhenAll(devices.Select(d => d.FetchAllAsync()));
        Club there = (await server.Services.GetRequiredService<OpenClubs>().OpenAsync(club, CancellationToken.None)).Club;
        return devices.All(d => ClubPicture.Of(d.Replica) == ClubPicture.Of(there));
    }

    private static Task Record(Device device, Act act, Random chance, DateTimeOffset now)
    {
        string boat = chance.Next(2) == 0 ? "heron" : "teal";
        Guid[] known = [.. device.Replica.All().Select(r => r.Entry.Id)];
        device.Record(
            act.Fact switch
            {
                0 when known.Length > 0 => new Retracted(known[chance.Next(known.Length)]),
                1 => new Held(boat, "knock"),
                2 => new Released(boat, "mended"),
                3 => new StockCounted("insert", 4, chance.Next(6)),
                4 => new ThingSet(Things.Boat, boat, new Dictionary<string, string?> { ["rack"] = $"r{chance.Next(3)}" }),
                _ => new ThingSet(Things.Boat, boat, new Dictionary<string, string?> { ["name"] = $"n{chance.Next(3)}" }),
            },
            now);
        return Task.CompletedTask;
    }

    private static async Task<(Visitor, string)[]> PeopleAsync(RunningServer server)
    {
        var people = new List<(Visitor, string)>();
        for (int i = 0; i < Devices; i++)
        {
            Visitor visitor = await server.MemberAsync("home", $"m-{i}", Role.Keeper);
            people.Add((visitor, await server.AccountIdAsync($"m-{i}.home")));
        }

        return [.. people];
    }

    private sealed record Act(int Device, int Kind, int Fact, int Seed, bool IsLost);
}
