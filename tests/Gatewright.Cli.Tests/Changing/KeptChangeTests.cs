using System.Text.Json;
using Gatewright.Cli.Tests.Clubs;
using Gatewright.Cli.Tests.Harness;
using Gatewright.Journal.Changing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Cli.Tests.Changing;

/// <summary>A change of rig among a club's jobs, from the terminal.</summary>
public sealed class KeptChangeTests(ClubStores stores)
{
    private const string Fours = "examples/two-fours.csv";

    [Fact]
    public async Task A_change_is_planned_ticked_and_dropped()
    {
        ClubPlace place = await StartAsync();

        ProgramRun kept = Run(place, 0, "change", "keep", "--boat", "Heron", "--to-day", "2026-05-04", "--member", "ash", "--plain");
        string job = (await ChangeAsync(place)).Key;
        Assert.Matches(@"^heron-\d{8}$", job);
        Assert.StartsWith($"Planned as {job}: tick its steps with gatewright change done {job} STEP.", kept.Lines[0], StringComparison.Ordinal);
        int steps = (await ChangeAsync(place)).Plan.Steps.Count;
        string listed = Run(place, 0, "change", "list", "--plain").Output;
        Assert.StartsWith($"Heron to Heron, 2026-05-04: 0 of {steps} steps done", listed, StringComparison.Ordinal);
        Assert.Contains($", its key {job}.", listed, StringComparison.Ordinal);

        ProgramRun ticked = Run(place, 0, "change", "done", job, "1", "2", "--member", "ash", "--plain");
        Assert.Contains("1. Done: ", ticked.Output, StringComparison.Ordinal);
        Assert.Contains("2. Done: ", ticked.Output, StringComparison.Ordinal);
        Assert.Contains("3. To do: ", ticked.Output, StringComparison.Ordinal);
        Assert.Equal([0, 1], (await ChangeAsync(place)).StepsDone.Order());

        Run(place, 0, "change", "done", job, "2", "--undo", "--member", "ash");
        Assert.Equal([0], (await ChangeAsync(place)).StepsDone);

        Run(place, 0, "change", "drop", job, "--reason", "The regatta is off.", "--member", "ash");
        Assert.Equal("No change of a rig is open.", Run(place, 0, "change", "list", "--plain").Lines[0]);
        using var told = JsonDocument.Parse(Run(place, 0, "change", "list", "--all", "--json").Output);
        JsonElement one = told.RootElement.GetProperty("changes").EnumerateArray().Single();
        Assert.Equal(("dropped", "The regatta is off."), (one.GetProperty("state").GetString(), one.GetProperty("reason").GetString()));
        Assert.Contains("was dropped on", place.Run("change", "done", job, "2", "--member", "ash").Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_change_is_closed_as_it_is_and_what_was_set_stays_unsure()
    {
        ClubPlace place = await StartAsync();
        Run(place, 0, "change", "keep", "--boat", "Heron", "--to-day", "2026-05-04", "--member", "ash");
        string job = (await ChangeAsync(place)).Key;
        Run(place, 0, "change", "done", job, "1", "--member", "ash");

        ProgramRun closed = Run(place, 0, "change", "close", job, "--member", "ash", "--plain");

        Assert.Contains("closed", closed.Output, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(new JobDone(job), (await ChangeAsync(place)).Ended!.Fact);
        Assert.Equal([0], (await ChangeAsync(place)).StepsDone);
        Assert.Equal("No change of a rig is open.", Run(place, 0, "change", "list", "--plain").Lines[0]);
        using var told = JsonDocument.Parse(Run(place, 0, "change", "list", "--all", "--json").Output);
        Assert.Equal("closed", told.RootElement.GetProperty("changes").EnumerateArray().Single().GetProperty("state").GetString());
        ProgramRun again = place.Run("change", "close", job, "--member", "ash");
        Assert.Equal(2, again.Status);
        Assert.Contains("was closed on", again.Error, StringComparison.Ordinal);
    }

    /// <summary>A step that sets a measure is on record as set; two steps that need one part take the last one once.</summary>
    [Fact]
    public async Task What_a_tick_records_is_what_the_app_records()
    {
        ClubPlace place = await StartAsync();
        Run(place, 0, "change", "keep", "--boat", "Heron", "--to-day", "2026-05-04", "--member", "ash");
        RigChange before = await ChangeAsync(place);
        int step = before.Plan.Steps.ToList().FindIndex(s => s.Measure is not null);
        Club club = await place.ClubAsync("shed");
        int count = club.Count;
        IReadOnlyList<Fact> expected = DoneSteps.Facts(club, before.Plan, step);

        Run(place, 0, "change", "done", before.Key, $"{step + 1}", "--member", "ash");

        Club after = await place.ClubAsync("shed");
        Assert.Equal(count + expected.Count, after.Count);
        MeasureSet set = after.Everything(Subject.Boat(before.Boat)).Select(r => r.Fact).OfType<MeasureSet>().Single();
        Assert.Equal((before.Plan.Steps[step].Measure, before.Plan.Steps[step].Value), (set.Measure, set.Value));
    }

    [Fact]
    public async Task Steps_are_put_down_in_the_language_that_is_asked_for()
    {
        ClubPlace place = await StartAsync();

        Run(place, 0, "change", "keep", "--boat", "Heron", "--to-day", "2026-05-04", "--member", "ash", "--language", "de");

        Assert.Contains((await ChangeAsync(place)).Plan.Steps, s => s.Text.Contains("Platz", StringComparison.Ordinal));
        Assert.DoesNotContain("Platz", Run(place, 0, "change", "show", (await ChangeAsync(place)).Key, "--plain").Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_wrong_is_told_and_nothing_recorded()
    {
        ClubPlace place = await StartAsync();
        await place.JoinAsync("shed", "cox", "coach");
        await place.JoinAsync("shed", "elm", "helper");
        Assert.Contains("is a coach of the club: its keepers and helpers plan and do changes of a rig.", place.Run("change", "keep", "--boat", "Heron", "--to-day", "2026-05-04", "--member", "cox").Error, StringComparison.Ordinal);
        Run(place, 0, "change", "keep", "--boat", "Heron", "--to-day", "2026-05-04", "--member", "ash");
        string job = (await ChangeAsync(place)).Key;
        Run(place, 0, "change", "done", job, "1", "--member", "ash");
        int count = (await place.ClubAsync("shed")).Count;

        Wrong("is none of its steps: expected 1 to", "change", "done", job, "0", "--member", "ash");
        Wrong("is none of its steps: expected 1 to", "change", "done", job, "99", "--member", "ash");
        Wrong("STEP: '1' is done already.", "change", "done", job, "1", "--member", "ash");
        Wrong("STEP: '2' is not done: there is nothing to take back.", "change", "done", job, "2", "--undo", "--member", "ash");
        Wrong("did not tick that, but ash: they or a keeper of the club take it back.", "change", "done", job, "1", "--undo", "--member", "elm");
        Wrong($"JOB: 'reed' is no change of this club: those open are {job}.", "change", "show", "reed");
        Wrong("is no member of the club shed", "change", "drop", job, "--member", "oak");
        Wrong("Say which rig to come to", "change", "keep", "--boat", "Heron", "--member", "ash");
        Wrong("--boat: 'Wren' is none of the club's boats.", "change", "list", "--boat", "Wren");
        Assert.Equal(count, (await place.ClubAsync("shed")).Count);

        void Wrong(string expected, params string[] arguments)
        {
            ProgramRun run = place.Run(arguments);
            Assert.Equal(2, run.Status);
            Assert.Contains(expected, run.Error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Where_nothing_is_to_be_done_nothing_is_put_on_record()
    {
        ClubPlace place = await StartAsync();

        ProgramRun run = Run(place, 0, "change", "keep", "--boat", "Merlin", "--to-boat", "Merlin", "--member", "ash", "--plain");

        Assert.Contains("Nothing is to be done, and nothing was put on record.", run.Output, StringComparison.Ordinal);
        Assert.Empty(RigChanges.Of(await place.ClubAsync("shed")));
    }

    [Fact]
    public async Task A_second_change_of_a_day_has_a_key_of_its_own()
    {
        ClubPlace place = await StartAsync();
        Run(place, 0, "change", "keep", "--boat", "Heron", "--to-day", "2026-05-04", "--member", "ash");
        Run(place, 0, "change", "keep", "--boat", "Heron", "--to-boat", "Merlin", "--member", "ash");

        List<string> keys = [.. RigChanges.Of(await place.ClubAsync("shed")).Select(c => c.Key)];
        Assert.Equal(2, keys.Count);
        Assert.Equal(keys[0] + "-2", keys[1]);
    }

    private async Task<ClubPlace> StartAsync()
    {
        ClubPlace place = await stores.NewAsync();
        Assert.Equal(0, place.RecordNew(Fours).Status);
        await place.JoinAsync("shed", "ash", "keeper");
        return place;
    }

    private static async Task<RigChange> ChangeAsync(ClubPlace place) => RigChanges.Of(await place.ClubAsync("shed")).Single();

    private static ProgramRun Run(ClubPlace place, int status, params string[] arguments)
    {
        ProgramRun run = place.Run(arguments);
        Assert.True(run.Status == status, run.Error + run.Output);
        return run;
    }
}
