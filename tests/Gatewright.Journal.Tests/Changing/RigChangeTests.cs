using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Changing;
using Gatewright.Core.Checking;
using Gatewright.Core.Measuring;
using Gatewright.Core.Rig;
using Gatewright.Journal.Changing;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.Journal.Tests.Changing;

/// <summary>A change of a rig kept among the jobs: from the plan to the last reading.</summary>
public sealed class RigChangeTests
{
    private static readonly DateOnly May4 = new(2026, 5, 4);
    private readonly List<Fact> _facts =
    [
        new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }),
        new MeasureTaken("teal", "spread", 1, 86, "cm", Date: May4),
        new MeasureTaken("teal", "spread", 2, 88, "cm", Date: May4),
        new MeasureTaken("teal", "height", 2, 16, "cm", Side.Port, May4),
        new BoatLaid("l1", "teal", Lie.Upright, LevelBasis.Read, 0, 0, Date: May4),
        new ReadingTaken("l1", "teal", ReadItem.Gate, 2, Side.Port, 7m, Station.Abeam),
        new ReadingTaken("l1", "teal", ReadItem.Gate, 1, Side.Starboard, 4m, Station.Abeam),
    ];

    private Club Club => Club.Empty(Journals.Club).With(
        _facts.Select((f, i) => Journals.Entry(i, f, new DateTimeOffset(2026, 6, 2, 8, 0, 0, TimeSpan.Zero).ToUnixTimeMilliseconds() + i)));

    private RigChange Change => RigChanges.Of(Club).Single();

    [Fact]
    public void A_step_done_sets_a_measure_and_claims_no_measuring()
    {
        Keep();
        Do(Step("spread"));

        Assert.Single(_facts.OfType<StepDone>());
        Assert.Equal(new MeasureSet("teal", "spread", 2, 86m, "cm", 0.3m) with { U = _facts.OfType<MeasureSet>().Single().U }, _facts.OfType<MeasureSet>().Single());

        // How well a spread is set is how well one is usually taken: RigErrors, to the hundredth.
        Assert.Equal(Math.Round((decimal)RigErrors.Usual(RigMeasure.Spread).Once, 2), _facts.OfType<MeasureSet>().Single().U);
        Assert.Equal(2, _facts.OfType<MeasureTaken>().Count(m => m.Measure == "spread"));
        Assert.Contains(new Reported("teal", Core.Diagnosing.ReportKind.Refitted, 2, Side.Port), _facts);
    }

    [Fact]
    public void What_was_set_holds_as_the_aim_and_is_unsure_until_it_is_taken()
    {
        Keep();
        Do(Step("spread"));
        var rig = BoatRig.Of(Club, "teal");

        OtherFigure set = rig.View.Other(RigMeasure.Spread, new(2, null))!;
        Assert.Equal((86.0, null), (set.Reading.Value, set.Oar));
        JudgedFigure judged = rig.Verdict!.Find(RigMeasure.Spread, new(2, null))!;
        Assert.True(judged.Figure.IsSet);
        Assert.Equal((double)_facts.OfType<MeasureSet>().Single().U, judged.Figure.Value.U, 9);
        Assert.Equal(RigReasonKind.NotTakenSince, Assert.Single(judged.Reasons, r => r.Kind == RigReasonKind.NotTakenSince).Kind);
        Assert.False(On()!.Find(RigItem.Spread, new(2, null))!.IsRead);

        _facts.Add(new MeasureTaken("teal", "spread", 2, 86.2m, "cm"));

        rig = BoatRig.Of(Club, "teal");
        Assert.Empty(rig.View.Others);
        Assert.DoesNotContain(rig.Verdict!.Find(RigMeasure.Spread, new(2, null))!.Reasons, r => r.Kind == RigReasonKind.NotTakenSince);
        Assert.Equal(86.2, On()!.Find(RigItem.Spread, new(2, null))!.Value.Value, 9);
    }

    [Fact]
    public void A_measure_of_a_day_before_the_setting_does_not_stand_for_it()
    {
        Keep();
        Do(Step("spread"));
        _facts.Add(new MeasureTaken("teal", "spread", 2, 86.2m, "cm", Date: May4.AddDays(1)));

        Assert.Equal(86.0, BoatRig.Of(Club, "teal").View.Other(RigMeasure.Spread, new(2, null))!.Reading.Value);
        Assert.Equal(ReadAgainState.Due, Again("spread").State);
    }

    [Fact]
    public void What_is_to_be_read_waits_for_its_steps_and_ticks_itself_off()
    {
        Keep();
        Assert.All(Change.Again(MeasuringSettings.Default), a => Assert.Equal(ReadAgainState.Waiting, a.State));

        Do(Step("spread"));
        Assert.Equal(ReadAgainState.Due, Again("spread").State);

        // The insert is not in yet: the pitch is not what it is to be.
        Assert.Equal(ReadAgainState.Waiting, Again("pitch-abeam").State);

        _facts.Add(new MeasureTaken("teal", "spread", 2, 87.4m, "cm"));
        Assert.Equal((ReadAgainState.Outside, 87.4), (Again("spread").State, Again("spread").Read!.Value.Value));

        _facts.Add(new MeasureTaken("teal", "spread", 2, 86.5m, "cm"));
        Assert.Equal(ReadAgainState.Done, Again("spread").State);
    }

    [Fact]
    public void A_change_is_closed_by_its_last_reading()
    {
        Keep();
        for (int i = 0; i < Change.Plan.Steps.Count; i++)
        {
            Do(i);
        }

        _facts.AddRange(
        [
            new MeasureTaken("teal", "spread", 2, 86m, "cm"),
            new MeasureTaken("teal", "height", 2, 16m, "cm", Side.Port),
            new BoatLaid("l2", "teal", Lie.Upright, LevelBasis.Read, 0, 0),
            new ReadingTaken("l2", "teal", ReadItem.Gate, 2, Side.Port, 3m, Station.Catch),
            new ReadingTaken("l2", "teal", ReadItem.Gate, 2, Side.Port, 4m, Station.Abeam),
        ]);
        Assert.True(Change.IsOpen(MeasuringSettings.Default));
        Assert.Null(Change.ClosedOn(MeasuringSettings.Default));

        _facts.Add(new ReadingTaken("l2", "teal", ReadItem.Gate, 2, Side.Port, 5m, Station.Finish));

        Assert.False(Change.IsOpen(MeasuringSettings.Default));
        Assert.Equal(new DateOnly(2026, 6, 2), Change.ClosedOn(MeasuringSettings.Default));
    }

    [Fact]
    public void A_part_is_promised_while_a_step_waits_and_drawn_when_it_is_done()
    {
        Keep();
        Assert.Equal((1, 1), Insert());

        Do(Step("insert"));

        Assert.Equal((0, 0), Insert());
        decimal stamp = Change.Plan.Steps[Step("insert")].Insert!.Value;
        Assert.Contains(new StockChanged("insert", stamp, -1, "c"), _facts);
        Assert.Equal(stamp.ToString(CultureInfo.InvariantCulture), new ThingView(Club, Things.Gate, "teal/2/port")["insert"]);
    }

    [Fact]
    public void From_an_empty_shelf_nothing_is_drawn()
    {
        Keep();
        _facts.Add(_facts.OfType<StockCounted>().Single() with { Count = 0 });
        Do(Step("insert"));

        Assert.Equal((0, 0), Insert());
    }

    [Fact]
    public void A_step_that_was_not_done_after_all_leaves_nothing_behind()
    {
        Keep();
        RigPicture before = Picture();
        Do(Step("spread"));
        Do(Step("insert"));
        Assert.NotEqual(before, Picture());

        foreach (int step in new[] { Step("insert"), Step("spread") })
        {
            _facts.AddRange(DoneSteps.Records(Club, Change, step).Select(r => new Retracted(r.Entry.Id)));
        }

        Assert.Equal(before, Picture());
    }

    [Fact]
    public void A_change_that_was_given_up_promises_no_part()
    {
        Keep();
        _facts.Add(new JobDropped("c"));

        Assert.Equal((1, 0), Insert());
        Assert.False(Change.IsOpen(MeasuringSettings.Default));
    }

    /// <summary>The largest boat with everything to be set still goes into one entry that the journal takes.</summary>
    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    public void An_eight_of_sculls_with_everything_to_be_set_is_one_entry(string language)
    {
        GatePlace[] gates = [.. Enumerable.Range(1, 8).SelectMany(seat => new GatePlace[] { new(seat, Side.Port), new(seat, Side.Starboard) })];
        RigOfBoat Rig(double by) => RigOfBoat.Of("Osprey", BoatClass.Parse("8x+"), gates, [.. RigItems.All.Where(i => i != RigItem.Spread).SelectMany(item =>
            gates.Select(g => new RigPlace(g.Seat, item.HasSide() ? g.Side : null)).Distinct().Select(p => new RigValue(item, p, new(3 + by, 0.01))))]);
        ChangePlan plan = ChangePlan.Of(Rig(0), TargetRig.Like(Rig(3), isSameBoat: false), ChangeSettings.Default);

        ChangePlanned kept = ChangeToKeep.Of("c", Club, "osprey", plan, Wording.In(language == "de" ? Language.German : Language.English));

        Assert.InRange(kept.Steps.Count, 100, 300);
        Recorded entry = Journals.Entry(0, kept, 1);
        Assert.Empty(EntryRules.Problems(entry.Entry));
        Assert.InRange(entry.Entry.Body.Length, 1, EntryLimits.Body);
    }

    /// <summary>Whoever planned it in whichever language: what to do is put down in both, and in the plan's own where nothing else is.</summary>
    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    public void Its_steps_are_read_in_either_language(string planned)
    {
        RigOfBoat now = On()!;
        ChangePlan plan = ChangePlan.Of(now, new TargetRig("Regatta", now.Gates, [new(RigItem.Spread, new(2, null), 86, 85.5, 86.5)], [], []), ChangeSettings.Default);
        Assert.NotEmpty(plan.Steps);

        ChangePlanned kept = (ChangePlanned)Journals.Entry(0, ChangeToKeep.Of("c", Club, "teal", plan, Wording.In(Language.Of(planned))), 1).Fact;

        Assert.Equal(plan.Steps.Select(Wording.English.Changes.Step), kept.Steps.Select(s => s.In(Language.English)));
        Assert.Equal(plan.Steps.Select(Wording.German.Changes.Step), kept.Steps.Select(s => s.In(Language.German)));
        Assert.NotEqual(kept.Steps[0].In(Language.English), kept.Steps[0].In(Language.German));
        Assert.Equal("as it was", (kept.Steps[0] with { Text = "as it was", Texts = null }).In(Language.German));
    }

    [Fact]
    public void Steps_in_too_many_languages_or_words_are_refused()
    {
        PlannedStep step = new("set", 3, [], Texts: Enumerable.Range(0, 11).ToDictionary(i => $"l{i}", _ => "set"));
        PlannedStep wordy = new("set", 3, [], Texts: new Dictionary<string, string> { ["de"] = new('x', 501) });

        string[] problems = [.. EntryRules.Problems(Journals.Entry(0, new ChangePlanned("c", "teal", "Regatta", [step, wordy], []), 1).Entry)];

        Assert.Equal(2, problems.Length);
        Assert.All(problems, p => Assert.StartsWith("\"steps.texts\"", p, StringComparison.Ordinal));
    }

    [Fact]
    public void A_change_that_sets_what_no_boat_has_is_refused()
    {
        ChangePlanned wrong = new("c", "teal", "Regatta", [new("set", 3, [], null, "reach", 1, 1)], [new("reach", 3, [4])]);

        string[] problems = [.. EntryRules.Problems(Journals.Entry(0, wrong, 1).Entry)];

        Assert.Equal(3, problems.Length);
        Assert.Contains(problems, p => p.StartsWith("\"steps.measure\"", StringComparison.Ordinal));
        Assert.Contains(problems, p => p.StartsWith("\"again.item\"", StringComparison.Ordinal));
        Assert.Contains(problems, p => p.StartsWith("\"again.after\"", StringComparison.Ordinal));
    }

    /// <summary>A span is of both gates of its seat: what was read of either before no longer speaks of it.</summary>
    [Fact]
    public void A_step_of_both_gates_of_a_seat_refits_both()
    {
        var plan = new ChangePlanned("c", "wren", "Regatta", [new("set the span", 1, [], null, "span", 158, 0.3m, Refits: true)], []);

        Assert.Equal(
            [Side.Port, Side.Starboard],
            DoneSteps.Facts(Club, plan, 0).OfType<Reported>().Select(r => r.Side!.Value));
    }

    /// <summary>Taken after the plan and before the step, it says nothing of what the step did; of two after it the first counts.</summary>
    [Fact]
    public void What_was_taken_before_its_step_does_not_prove_it_and_of_what_was_taken_after_the_first_day_does()
    {
        Keep();
        _facts.Add(new MeasureTaken("teal", "spread", 2, 86.1m, "cm", Date: new(2026, 6, 2)));
        Do(Step("spread"));
        Assert.Equal(ReadAgainState.Due, Again("spread").State);

        Do(Step("insert"));
        _facts.AddRange([
            new BoatLaid("l2", "teal", Lie.Upright, LevelBasis.Read, 0, 0, Date: new(2026, 6, 10)),
            new ReadingTaken("l2", "teal", ReadItem.Gate, 2, Side.Port, 4.1m, Station.Abeam),
            new BoatLaid("l3", "teal", Lie.Upright, LevelBasis.Read, 0, 0, Date: new(2026, 6, 12)),
            new ReadingTaken("l3", "teal", ReadItem.Gate, 2, Side.Port, 3.9m, Station.Abeam),
        ]);
        ReadAgain pitch = Again("pitch-abeam");
        Assert.Equal((ReadAgainState.Done, new DateOnly(2026, 6, 10)), (pitch.State, pitch.Day!.Value));
    }

    [Fact]
    public void The_days_of_a_rig_are_told_the_newest_first()
    {
        _facts.Add(new MeasureTaken("teal", "spread", 1, 86, "cm", Date: May4.AddDays(9)));

        Assert.Equal([May4.AddDays(9), May4], RigDays.Of(Club, "teal").Take(2));
    }

    /// <summary>A figure within a crew's tolerance is left as it is: 85 ± 1.5 asks nothing of 83.6.</summary>
    [Fact]
    public void What_a_crew_wants_reaches_from_the_lowest_good_figure_to_the_highest()
    {
        RigTargets targets = RigTargets.Starting(BoatClass.Parse("2-"), Crew.Men).With(new(RigMeasure.Spread, RigAspect.Value, 85, 1.5, RigSource.Club));

        RigAim aim = CrewRig.Of("men", On()!, targets, Core.Judging.Standard.Club).Find(RigItem.Spread, new(1, null), Rowing.Sweep)!;

        Assert.Equal((85, 83.5, 86.5), (aim.Value, aim.Lowest, aim.Highest));
    }

    private sealed record RigPicture(double Spread, bool IsRead, int Stock, string? Insert, bool IsGateKnown, int Steps);

    private RigPicture Picture() => new(
        On()!.Find(RigItem.Spread, new(2, null))!.Value.Value,
        On()!.Find(RigItem.Spread, new(2, null))!.IsRead,
        Insert().Count,
        new ThingView(Club, Things.Gate, "teal/2/port")["insert"],
        On()!.Find(RigItem.PitchAbeam, new(2, Side.Port)) is not null,
        Change.StepsDone.Count);

    private (int Count, int Wanted) Insert() => StoreShelf.Of(Club).Where(l => l.Part == "insert").Select(l => (l.Count, l.Wanted)).Single();

    private ReadAgain Again(string item) => Change.Again(MeasuringSettings.Default).Single(a => a.At.Item == item);

    private void Do(int step) => _facts.AddRange(DoneSteps.Facts(Club, Change.Plan, step));

    private int Step(string what) => Change.Plan.Steps.Select((s, i) => (s, i)).Single(s => what == "insert" ? s.s.Insert is not null : s.s.Measure == what).i;

    /// <summary>Stroke 2 cm too wide and 3° too much: its spread is set, and an insert put in.</summary>
    private void Keep()
    {
        RigOfBoat now = On()!;
        var target = new TargetRig("Regatta", now.Gates,
        [
            new(RigItem.Spread, new(2, null), 86, 85.5, 86.5),
            new(RigItem.PitchAbeam, new(2, Side.Port), 4, 3, 5),
        ], [], []);
        ChangePlanned plan = ChangeToKeep.Of("c", Club, "teal", ChangePlan.Of(now, target, ChangeSettings.Default), Wording.English);
        _facts.AddRange([new StockCounted("insert", plan.Steps.Single(s => s.Insert is not null).Insert!.Value, 1), plan]);
    }

    private RigOfBoat? On() => RigOnRecord.On(Club, "teal", null, CheckSettings.Default, "Teal");
}
