using FsCheck.Xunit;
using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Learning;

namespace Gatewright.Journal.Tests.Learning;

/// <summary>What finished jobs make of a table of chances.</summary>
public sealed class JobRecordTests
{
    private static readonly DateOnly Day = new(2026, 5, 2);

    /// <summary>Worked by hand from (n₀ p + k)/(n₀ + n).</summary>
    [Fact]
    public void Each_kind_of_thing_teaches_its_own_chance()
    {
        ClubChances table = ClubChances.Default with
        {
            Jobs = JobRecord.Empty.And(
            [
                .. Enumerable.Range(0, 99).Select(n => Gate(n)),
                Gate(99, Cause.PinOut),
                new(new CheckedThing.OfOar("Heron", BoatClass.Parse("8+"), new(3, Side.Port)), Day, Cause.Sleeve),
                new(new CheckedThing.OfLevel("Heron"), Day, Cause.HullLevel),
                new(new CheckedThing.OfLevel("Osprey"), Day, null),
                new(new CheckedThing.OfGauge("G1"), Day, null),
            ]),
        };
        PriorChances now = table.Now;

        Assert.Equal(7.0 / 500, now.PinOut, 1e-15);
        Assert.Equal(6.0 / 500, now.GatePitch, 1e-15);
        Assert.Equal(7.0 / 401, now.Sleeve, 1e-15);
        Assert.Equal(4.0 / 102, now.HullLevel, 1e-15);
        Assert.Equal(1.0 / 51, now.GaugeZero, 1e-15);
        Assert.Equal((500, 401, 102, 51), (now.GatesBehind, now.OarsBehind, now.BoatsBehind, now.GaugesBehind));
    }

    [Fact]
    public void A_rigger_on_another_s_place_counts_its_gate_and_teaches_nothing_of_itself()
    {
        FoundCauses found = JobRecord.Empty.And([Gate(0, Cause.WrongSeat)]).Found;
        Assert.Equal(new FoundCauses { GatesChecked = 1 }, found);
        Assert.Equal(0.05, (ClubChances.Default with { Jobs = JobRecord.Empty.And([Gate(0, Cause.WrongSeat)]) }).Now.WrongSeat);
    }

    /// <summary>A Beta distribution of weight 400 each: (400 · 0.015 + 1)/401 for what was found, 400 · 0.015/401 for what was not.</summary>
    [Fact]
    public void A_gate_with_two_causes_counts_once_as_checked_and_once_for_each()
    {
        var table = ClubChances.Default with { Jobs = JobRecord.Empty.And([FinishedJob.Of(Gate(0).Thing, Day, [Cause.PinAft, Cause.GatePitch])]) };

        Assert.Equal(new FoundCauses { GatesChecked = 1, GatePitch = 1, PinAft = 1 }, table.Jobs.Found);
        Assert.Equal((7.0 / 401, 7.0 / 401, 6.0 / 401), (table.Now.GatePitch, table.Now.PinAft, table.Now.PinOut));
        Assert.Equal(401, table.Now.GatesBehind);
    }

    [Fact]
    public void The_order_of_causes_makes_no_other_finding()
    {
        var one = FinishedJob.Of(Gate(0).Thing, Day, [Cause.PinAft, Cause.GatePitch]);
        var other = FinishedJob.Of(Gate(0).Thing, Day, [Cause.GatePitch, Cause.PinAft]);

        Assert.Equal(one, other);
        Assert.Equal("gate-pitch + pin-aft", other.FoundCode);
        Assert.Equal(1, JobRecord.Empty.And([one, other]).Count);
        Assert.Throws<ArgumentException>(() => JobRecord.Empty.And([one, Gate(0, Cause.PinAft)]));
    }

    [Property]
    public void Jobs_told_twice_and_in_any_order_teach_the_same(int seed)
    {
        var random = new Random(seed);
        FinishedJob[] jobs = [.. Enumerable.Range(0, 40).Select(n => Any(random, n))];
        FinishedJob[] mixed = [.. jobs, .. jobs.Where(_ => random.Next(2) == 0)];
        random.Shuffle(mixed);
        JobRecord atOnce = JobRecord.Empty.And(jobs);
        JobRecord bit = mixed.Aggregate(JobRecord.Empty, (record, job) => record.And([job]));

        Assert.Equal(40, bit.Count);
        Assert.Equal(atOnce.Jobs, bit.Jobs);
        Assert.Equal(atOnce.Found, bit.Found);
    }

    [Theory]
    [InlineData("heron", "HERON")]
    [InlineData("Heron 2", "Heron2")]
    public void A_name_s_case_and_spaces_make_no_other_job(string one, string other) => Assert.Equal(
        1, JobRecord.Empty.And([Level(one), Level(other)]).Count);

    [Fact]
    public void Another_day_place_or_kind_of_thing_is_another_job() => Assert.Equal(5, JobRecord.Empty.And(
    [
        Gate(0),
        Gate(1),
        new(Gate(0).Thing, Day.AddDays(1), null),
        new(new CheckedThing.OfOar("Heron 0", BoatClass.Parse("8+"), new(1, Side.Port)), Day, null),
        Level("Heron 0"),
    ]).Count);

    [Fact]
    public void Two_findings_in_one_thing_on_one_day_are_refused() => Assert.Equal(
        "pin-aft was found in Heron 0 on 2026-05-02, and none in the same gate.",
        Assert.Throws<ArgumentException>(() => JobRecord.Empty.And([Gate(0), Gate(0, Cause.PinAft)])).Message);

    [Fact]
    public void A_cause_is_found_in_one_kind_of_thing_alone()
    {
        CheckedThing[] things = [Gate(0).Thing, new CheckedThing.OfOar("Heron", BoatClass.Parse("8+"), new(3, Side.Port)), Level("Heron").Thing, new CheckedThing.OfGauge("G1")];
        Assert.Equal(Causes.All, things.SelectMany(thing => thing.Causes));
        Assert.All(things, thing => Assert.All(Causes.All.Except(thing.Causes), cause =>
            Assert.Throws<ArgumentException>(() => new FinishedJob(thing, Day, cause))));
    }

    private static FinishedJob Gate(int boat, Cause? found = null) => new(
        new CheckedThing.OfGate(FormattableString.Invariant($"Heron {boat}"), BoatClass.Parse("8+"), new(1, Side.Port)), Day, found);

    private static FinishedJob Level(string boat) => new(new CheckedThing.OfLevel(boat), Day, null);

    private static FinishedJob Any(Random random, int n)
    {
        string name = FormattableString.Invariant($"Boat {n}");
        var gate = new GatePlace(random.Next(1, 9), random.Next(2) == 0 ? Side.Port : Side.Starboard);
        CheckedThing thing = random.Next(4) switch
        {
            0 => new CheckedThing.OfGate(name, BoatClass.Parse("8+"), gate),
            1 => new CheckedThing.OfOar(name, BoatClass.Parse("8+"), gate),
            2 => new CheckedThing.OfLevel(name),
            _ => new CheckedThing.OfGauge(name),
        };
        int found = random.Next(thing.Causes.Count + 1);
        return new(thing, Day.AddDays(random.Next(300)), found == thing.Causes.Count ? null : thing.Causes[found]);
    }
}
