using System.Globalization;
using System.Text;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Exchange.Check;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Standing;
using Gatewright.Server.Boats;
using Gatewright.Store;

namespace Gatewright.Server.Tests.Boats;

public sealed class ShedVerdictsTests
{
    private const string Name = "upper-lock";
    private static readonly string[] Boats = ["heron", "teal"];

    /// <summary>Boats that are kept are looked at between any two entries, or not: what was worked out long ago counts too.</summary>
    [Property(MaxTest = 60)]
    public Property What_is_kept_is_what_is_worked_out_anew_after_any_entries() => Prop.ForAll(
        (from count in Gen.Choose(1, 30)
         from facts in Gen.CollectToArray(Enumerable.Range(0, count), _ => Any(count))
         from looked in Gen.Elements(true, true, false).ArrayOf(count)
         select (facts, looked)).ToArbitrary(),
        async given =>
        {
            OpenClub kept = Sound();
            for (int i = 0; i < given.facts.Length; i++)
            {
                kept = kept.With([Numbered(kept.Number + 1, given.facts[i])]);
                if (given.looked[i])
                {
                    await AssertFreshAsync(kept);
                }
            }

            await AssertFreshAsync(kept);
        });

    [Fact]
    public async Task A_note_on_one_boat_leaves_the_others_as_they_are()
    {
        OpenClub before = Sound();
        BoatStanding heron = (await before.Shed.BoatAsync("heron"))!;
        BoatStanding teal = (await before.Shed.BoatAsync("teal"))!;

        OpenClub after = before.With([Numbered(before.Number + 1, new Held("heron", "knocked"))]);

        Assert.Same(teal, await after.Shed.BoatAsync("teal"));
        Assert.NotSame(heron, await after.Shed.BoatAsync("heron"));
        Assert.Single((await after.Shed.BoatAsync("heron"))!.Holds);
    }

    [Fact]
    public async Task A_boat_that_nobody_asked_for_in_between_is_kept_all_the_same()
    {
        OpenClub before = Sound();
        BoatStanding teal = (await before.Shed.BoatAsync("teal"))!;

        OpenClub after = Enumerable.Range(1, 5).Aggregate(
            before, (club, _) => club.With([Numbered(club.Number + 1, new Held("heron", "knocked"))]));

        Assert.Same(teal, await after.Shed.BoatAsync("teal"));
    }

    [Fact]
    public async Task What_a_finished_job_found_is_heeded_on_every_boat()
    {
        OpenClub before = Sound();
        double chance = (await before.Shed.BoatAsync("teal"))!.Check!.Settings.Diagnosing.Chances.GatePitch;

        OpenClub after = before.With([Numbered(before.Number + 1, new JobDone("job-1", Cause.GatePitch))]);

        Assert.True((await after.Shed.BoatAsync("teal"))!.Check!.Settings.Diagnosing.Chances.GatePitch > chance);
    }

    private static async Task AssertFreshAsync(OpenClub kept) =>
        Assert.Equal(await ToldAsync(OpenClub.Of(kept.Club, kept.Number)), await ToldAsync(kept));

    private static async Task<string> ToldAsync(OpenClub open)
    {
        var text = new StringBuilder();
        BoatStanding?[] asked = await Task.WhenAll(Boats.Select(open.Shed.BoatAsync));
        foreach (BoatStanding boat in asked.Concat(await open.Shed.AllAsync()).OfType<BoatStanding>())
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"{boat.View.Key} {boat.View.Name} {boat.Word} {boat.StaysAshore} {boat.IsOutOfUse} {boat.View.Jobs.Count(j => j.IsOpen)}");
            text.AppendJoin(' ', boat.Holds.Select(h => h.Entry.Id)).AppendLine();
            if (boat.Check is { } check)
            {
                CheckedBoat told = (await boat.CheckedAsync())!;
                text.AppendLine(CheckJson.Text(new CheckDocument(CheckDocument.Name, CheckedStandard.Of(check.Settings.Standard), [told], [], [])));
            }
        }

        return text.ToString();
    }

    /// <summary>Two single sculls, each laid and read.</summary>
    private static OpenClub Sound()
    {
        List<Fact> facts = [];
        foreach (string boat in Boats)
        {
            facts.Add(new ThingSet(Things.Boat, boat, new Dictionary<string, string?> { ["name"] = boat, ["class"] = "1x" }));
            facts.Add(new BoatLaid($"{boat}-0", boat, Lie.Inverted, LevelBasis.Rack, Rack: "rack-a"));
            facts.AddRange(Stations.All.SelectMany(station => new[] { Side.Port, Side.Starboard }.Select(side =>
                new ReadingTaken($"{boat}-0", boat, ReadItem.Gate, 1, side, 4, station, Gauge: "gauge-1"))));
        }

        var numbered = facts.Select((fact, i) => Numbered(i + 1, fact)).ToList();
        return OpenClub.Of(Journal.Replay.Club.Empty(Name), 0).With(numbered);
    }

    private static Gen<Fact> Any(int count) => Gen.OneOf(
        Set(Things.Boat, Boats, "name", "a", "b", null),
        Set(Things.Boat, Boats, "standard", "race", "ours", null),
        Set(Things.Boat, Boats, "class", "1x", "2x"),
        Set(Things.Boat, Boats, "out-of-use", "yes", null),
        Set(Things.Rack, ["rack-a", "rack-b"], "bed", "soft", "firm"),
        Set(Things.Rack, ["rack-a", "rack-b"], "name", "a", "b", null),
        Set(Things.Gauge, ["gauge-1", "gauge-2"], "resolution", "0.1", "0.5", null),
        Set(Things.Gauge, ["gauge-1", "gauge-2"], "name", "a", "b", null),
        Set(Things.Standard, ["ours", "race", "club"], "catch-lowest", "3.2", "4.5", null),
        Set(Things.Settings, ["club"], "standard", "race", "ours", null),
        Set(Things.Settings, ["chances"], "reset", "1", "2"),
        from rack in Gen.Elements("rack-a", "rack-b")
        from low in Gen.Elements(-0.5m, 0m, 0.8m)
        select (Fact)new RackLevelRead(rack, 0, low),
        from gauge in Gen.Elements("gauge-1", "gauge-2")
        from turned in Gen.Elements(0.1m, 0.6m)
        select (Fact)new GaugeReversed(gauge, 0.2m, turned),
        from boat in Gen.Elements(Boats)
        from lying in Gen.Choose(0, 2)
        from rack in Gen.Elements("rack-a", "rack-b", null)
        from round in Gen.Elements("round-1", null)
        select (Fact)new BoatLaid($"{boat}-{lying}", boat, Lie.Upright, rack is null ? LevelBasis.BubbleCentred : LevelBasis.Rack, Rack: rack, Round: round),
        from boat in Gen.Elements(Boats)
        from lying in Gen.Choose(0, 2)
        from side in Gen.Elements(Side.Port, Side.Starboard)
        from station in Gen.Elements<Station>([.. Stations.All])
        from value in Gen.Elements(1m, 3.5m, 4m, 6m)
        from gauge in Gen.Elements("gauge-1", "gauge-2", null)
        select (Fact)new ReadingTaken($"{boat}-{lying}", boat, ReadItem.Gate, 1, side, value, station, Gauge: gauge),
        Gen.Elements(Boats).Select(boat => (Fact)new Held(boat, "knock")),
        Gen.Elements(Boats).Select(boat => (Fact)new Released(boat, "seen to")),
        Gen.Elements(Boats).Select(boat => (Fact)new Reported(boat, ReportKind.Knock, 1, Side.Port)),
        Gen.Elements(Boats).Select(boat => (Fact)new GateMended(boat, 1, Side.Port)),
        from boat in Gen.Elements(Boats)
        from job in Gen.Choose(1, 2)
        select (Fact)new JobPlanned($"job-{job}", boat, Cause.GatePitch, "insert-swap", ["swap it"], [], [], 1, Side.Port),
        from job in Gen.Choose(1, 2)
        from found in Gen.Elements<Cause?>(Cause.GatePitch, Cause.PinAft, null)
        select (Fact)new JobDone($"job-{job}", found),
        Gen.Choose(1, 2).Select(job => (Fact)new StepDone($"job-{job}", 0)),
        Gen.Choose(1, 2).Select(job => (Fact)new JobDropped($"job-{job}")),
        Gen.Choose(1, 16 + count).Select(number => (Fact)new Retracted(Id(number), null)),
        Gen.Elements("rack-a", "heron").Select(key => (Fact)new Noted(Things.Rack, key, "paint")));

    private static Gen<Fact> Set(string thing, string[] keys, string field, params string?[] values) =>
        from key in Gen.Elements(keys)
        from value in Gen.Elements(values)
        select (Fact)new ThingSet(thing, key, new Dictionary<string, string?> { [field] = value });

    private static Guid Id(long number) => Guid.Parse(FormattableString.Invariant($"01900000-0000-7000-8000-{number:x12}"));

    private static Numbered Numbered(long number, Fact fact)
    {
        (string kind, int version, byte[] body) = FactKinds.Write(fact);
        return new(number, new()
        {
            Id = Id(number), Club = Name, Member = "m1", Device = "phone", Time = new(1_700_000_000_000 + (number * 3_600_000), 0),
            Kind = kind, Version = version, Body = body,
        });
    }
}
