using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Judging;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Exchange.Check;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Rounds;
using Gatewright.Journal.Standing;
using Gatewright.Journal.Tests.Rounds;

namespace Gatewright.Journal.Tests.Standing;

/// <summary>What kept a boat ashore is over when it was read, not when something was done to it (common practice).</summary>
public sealed class ChangedUnreadTests
{
    private static readonly GatePlace Port = new(1, Side.Port);
    private static readonly GatePlace Starboard = new(1, Side.Starboard);
    private static readonly DateOnly Next = RoundClubs.Day.AddDays(1);

    private static readonly JobPlanned Planned = new("j", RoundClubs.Boat, Cause.PinOut, "straighten-pin", ["Loosen it", "Straighten it"], [], [], 1, Side.Port);

    private static readonly Dictionary<string, Fact[]> Done = new()
    {
        ["a closed job"] = [new JobPlanned("j", RoundClubs.Boat, Cause.PinOut, "pin-straighten", [], [], [], 1, Side.Port), new JobDone("j")],
        ["a job given up"] = [new JobPlanned("j", RoundClubs.Boat, Cause.PinOut, "straighten-pin", ["Straighten it"], [], [], 1, Side.Port), new StepDone("j", 0), new JobDropped("j")],
        ["a job under way"] = [new JobPlanned("j", RoundClubs.Boat, Cause.PinOut, "straighten-pin", ["Straighten it", "Look at it"], [], [], 1, Side.Port), new StepDone("j", 0)],
        ["a mending"] = [new GateMended(RoundClubs.Boat, 1, Side.Port, Next)],
        ["a knock"] = [new Reported(RoundClubs.Boat, ReportKind.Knock, 1, Side.Port, Date: Next)],
        ["a rigger off and on again"] = [new Reported(RoundClubs.Boat, ReportKind.Refitted, 1, Side.Port, Date: Next)],
    };

    private readonly RoundClubs _clubs = RoundClubs.Of("1x");

    [Theory]
    [InlineData("a closed job")]
    [InlineData("a job under way")]
    [InlineData("a mending")]
    [InlineData("a knock")]
    [InlineData("a rigger off and on again")]
    public async Task A_gate_under_its_floor_keeps_the_boat_ashore_until_it_is_read(string what)
    {
        Read(Port, -3);
        Read(Starboard, 4);
        Assert.True((await StandingAsync()).StaysAshore);

        _clubs.Add(Done[what]);
        BoatStanding changed = await StandingAsync();
        Assert.Equal([Port], changed.Changed!.Gates);
        Assert.True(changed.StaysAshore);
        Assert.True(changed.WaitsForReading);
        Assert.Equal(DueReason.Ashore, DueBoats.Reason(changed, Next));

        Read(Port, 4, Next.AddDays(1));
        BoatStanding read = await StandingAsync();
        Assert.Empty(read.Changed!.Gates);
        Assert.False(read.StaysAshore);
    }

    /// <summary>The document says what its verdict leaves out: the gate, when, by what, and that it is to be read again.</summary>
    [Theory]
    [InlineData("a closed job", "finished-job")]
    [InlineData("a job given up", "job-given-up")]
    [InlineData("a job under way", "job-under-way")]
    [InlineData("a mending", "mending")]
    [InlineData("a knock", "knock")]
    [InlineData("a rigger off and on again", "refitting")]
    public async Task A_boat_s_document_names_the_gate_and_what_was_done_to_it(string what, string by)
    {
        Read(Port, -3);
        Read(Starboard, 4);
        _clubs.Add(Done[what]);

        CheckedBoat told = (await (await StandingAsync()).CheckedAsync())!;

        CheckedChange changed = Assert.Single(told.Changed);
        Assert.Equal((1, "port", by), (changed.Seat, changed.Side, changed.By));
        Assert.Equal(what.Contains("job", StringComparison.Ordinal) ? "2026-05-04" : "2026-05-05", changed.On);
        Assert.EndsWith("not read since: read it again.", changed.Sentence, StringComparison.Ordinal);
        Assert.Equal(("good", true), (told.Verdict, told.StaysAshore));
        BoatStanding shown = await StandingAsync();
        Assert.Null(shown.Shown);
        Assert.Equal(("read-again", true), (shown.Word, shown.IsToBeReadAgain));
    }

    [Fact]
    public async Task Its_only_reading_gone_it_stays_ashore_too()
    {
        Read(Port, -3);
        _clubs.Add(Done["a mending"]);

        BoatStanding changed = await StandingAsync();

        Assert.Null(changed.Check);
        Assert.True(changed.StaysAshore);
        Assert.Equal(("not-read", false), (changed.Word, changed.IsToBeReadAgain));
    }

    [Fact]
    public async Task A_good_gate_that_was_changed_is_due_and_keeps_nobody_ashore()
    {
        Read(Port, 4);
        Read(Starboard, 4);
        _clubs.Add(Done["a mending"]);

        BoatStanding changed = await StandingAsync();

        Assert.Equal([Port], changed.Changed!.Gates);
        Assert.False(changed.StaysAshore);
        Assert.Equal(DueReason.Changed, DueBoats.Reason(changed, Next));

        // It is seen to before a boat that is good all over.
        Read(Port, 4, Next);
        Assert.True(changed.Urgency > (await StandingAsync()).Urgency);
    }

    [Fact]
    public async Task A_job_given_up_after_a_step_was_done_leaves_its_gate_to_be_read()
    {
        Read(Port, -3);
        Read(Starboard, 4);
        _clubs.Add(Planned, new StepDone("j", 0), new JobDropped("j"));

        BoatStanding given = await StandingAsync();
        Assert.Equal([Port], given.Changed!.Gates);
        Assert.Equal([Starboard], given.Check!.Verdict.Gates.Select(g => g.Gate));
        Assert.True(given.StaysAshore);

        Read(Port, 4, Next);
        Assert.Equal((0, false), ((await StandingAsync()).Changed!.Gates.Count, (await StandingAsync()).StaysAshore));
    }

    [Fact]
    public async Task A_good_gate_of_a_job_given_up_after_a_step_is_due()
    {
        Read(Port, 4);
        Read(Starboard, 4);
        _clubs.Add(Planned, new StepDone("j", 0), new JobDropped("j"));

        Assert.Equal(DueReason.Changed, DueBoats.Reason(await StandingAsync(), Next));
    }

    /// <summary>Nobody touched the gate, or it was read after whatever was done to it; a sleeve is the oar's.</summary>
    [Theory]
    [InlineData("no step done")]
    [InlineData("a step taken back")]
    [InlineData("read since")]
    [InlineData("a sleeve")]
    public async Task A_job_that_changed_nothing_since_its_gate_was_read_leaves_the_verdict_open_and_given_up(string what)
    {
        Read(Port, 4);
        _clubs.Add(what == "a sleeve" ? Planned with { Cause = Cause.Sleeve } : Planned);
        if (what != "no step done")
        {
            _clubs.Add(new StepDone("j", 0));
        }

        if (what == "a step taken back")
        {
            _clubs.Add(new Retracted(_clubs.Club.All().Last().Entry.Id));
        }
        else if (what == "read since")
        {
            Read(Port, 4, Next);
        }

        BoatStanding open = await StandingAsync();
        _clubs.Add(new JobDropped("j"));
        BoatStanding given = await StandingAsync();

        Assert.All([open, given], stands =>
        {
            Assert.Empty(stands.Changed!.Gates);
            Assert.Equal([Port], stands.Check!.Verdict.Gates.Select(g => g.Gate));
        });
    }

    /// <summary>What was read to prove a job is a reading of its gate; who ticks a step afterwards has not changed it again.</summary>
    [Fact]
    public async Task The_re_check_of_an_open_job_is_the_reading_that_lets_the_boat_go()
    {
        Read(Port, -3);
        Read(Starboard, 4);
        _clubs.Add(Planned, new StepDone("j", 0));
        Assert.True((await StandingAsync()).StaysAshore);

        _clubs.Add(
            new BoatLaid("proof", RoundClubs.Boat, Lie.Upright, LevelBasis.Read, 0, 0, Date: RoundClubs.Day),
            new ReadingTaken("proof", RoundClubs.Boat, ReadItem.Gate, 1, Side.Port, 4, Station.Abeam, Job: "j"));
        Assert.Equal((Verdict.Good, false), ((await StandingAsync()).Shown, (await StandingAsync()).StaysAshore));

        _clubs.Add(new StepDone("j", 1));
        Assert.Equal((Verdict.Good, false), ((await StandingAsync()).Shown, (await StandingAsync()).StaysAshore));
    }

    /// <summary>The gate that kept it ashore is none any more: the seat was set to the other side, and that is filed with the boat.</summary>
    [Fact]
    public async Task What_was_read_where_no_gate_is_any_more_keeps_nobody_ashore()
    {
        var clubs = RoundClubs.Of("2-");
        clubs.Add(
            new ThingSet(Things.Seat, Things.SeatKey(RoundClubs.Boat, 1), new Dictionary<string, string?> { ["side"] = "port" }),
            new BoatLaid("l", RoundClubs.Boat, Lie.Upright, LevelBasis.Read, 0, 0, Date: RoundClubs.Day),
            new ReadingTaken("l", RoundClubs.Boat, ReadItem.Gate, 1, Side.Port, -3, Station.Abeam),
            new GateMended(RoundClubs.Boat, 1, Side.Port, Next));
        ShedVerdicts shed = ShedVerdicts.Of(clubs.Club);
        Assert.True((await shed.BoatAsync(RoundClubs.Boat))!.StaysAshore);

        clubs.Add(new ThingSet(Things.Seat, Things.SeatKey(RoundClubs.Boat, 1), new Dictionary<string, string?> { ["side"] = "starboard" }));

        Assert.False((await shed.With(clubs.Club, teaches: false).BoatAsync(RoundClubs.Boat))!.StaysAshore);
    }

    private async Task<BoatStanding> StandingAsync() => (await ShedVerdicts.Of(_clubs.Club).BoatAsync(RoundClubs.Boat))!;

    private void Read(GatePlace gate, decimal value, DateOnly? day = null)
    {
        string lying = $"l-{gate.Side}-{day:yyyyMMdd}";
        _clubs.Add(
            new BoatLaid(lying, RoundClubs.Boat, Lie.Upright, LevelBasis.Read, 0, 0, Date: day ?? RoundClubs.Day),
            new ReadingTaken(lying, RoundClubs.Boat, ReadItem.Gate, gate.Seat, gate.Side, value, Station.Abeam));
    }
}
