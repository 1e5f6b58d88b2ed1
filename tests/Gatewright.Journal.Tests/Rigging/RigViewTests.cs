using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Rigging;

/// <summary>A boat's rig as its journal tells it.</summary>
public sealed class RigViewTests
{
    private static readonly DateOnly May4 = new(2026, 5, 4);

    [Fact]
    public void A_rig_is_what_was_last_measured_of_each_place()
    {
        RigView view = View(Of("2x", Span(1, 158, May4), Span(1, 159.5m, May4.AddDays(3)), Span(2, 159, May4)));

        Assert.Equal([(1, 159.5), (2, 159.0)], view.Current.Select(t => (t.Reading.Place.Seat, t.Reading.Value)));
        Assert.Equal([159.5, 158.0], view.History(RigMeasure.Span, new(1, null)).Select(t => t.Reading.Value));
        Assert.Equal(May4.AddDays(3), view.Current[0].Day);
        Assert.Equal("m1", view.Current[0].Record.Entry.Member);
    }

    /// <summary>Measured, set, and measured again within minutes: the rig is what it was set to.</summary>
    [Fact]
    public void Of_one_day_the_last_counts_with_those_before_it_that_agree()
    {
        RigView view = View(Of("2x", Span(1, 162, May4), Span(1, 159.4m, May4), Span(1, 159.6m, May4)));

        Assert.Equal([159.4, 159.6], view.Current.Select(t => t.Reading.Value).Order());
        Assert.Equal(Verdict.Good, BoatRig.Of(Of("2x", Span(1, 162, May4), Span(1, 159.4m, May4)), "teal").Verdict!.Verdict);
    }

    [Fact]
    public void Inches_are_converted_and_kept_as_they_were_written()
    {
        TakenMeasure taken = View(Of("8+", new MeasureTaken("teal", "spread", 3, 33, "in"))).Current.Single();

        Assert.Equal((33m, "in"), (taken.Taken.Value, taken.Taken.Unit));

        // 33 · 2.54, exact.
        Assert.Equal(83.82, taken.Reading.Value, 9);
        Assert.Equal(33m, taken.Written.Value);
    }

    [Theory]
    [InlineData("reach", "cm", 1)]
    [InlineData("span", "hands", 1)]
    [InlineData("spread", "cm", 1)]
    [InlineData("span", "cm", 3)]
    [InlineData("height", "cm", 1)]
    public void What_is_not_understood_is_kept_and_passed_over(string measure, string unit, int seat)
    {
        Club club = Of("2x", new MeasureTaken("teal", measure, seat, 159, unit));

        Assert.Empty(View(club).Taken);
        Assert.Contains(new BoatView(club, "teal").Records, r => r.Fact is MeasureTaken);
        Assert.Equal("not-measured", BoatRig.Of(club, "teal").Word);
    }

    /// <summary>Entries that stood in a journal before there were rules come back from a file of the club.</summary>
    [Fact]
    public void Old_entries_of_any_word_may_come_back()
    {
        Entry old = Journals.Entry(1, new MeasureTaken("teal", "reach", 1, 12, "hands"), 10).Entry;

        Assert.Empty(EntryRules.ProblemsOfBefore(old));
        Assert.NotEmpty(EntryRules.Problems(old));
    }

    [Fact]
    public void In_sweep_an_oar_s_only_side_need_not_be_said()
    {
        RigView view = View(Of("2-", Seat(1, "starboard"), new MeasureTaken("teal", "inboard", 1, 116, "cm")));

        Assert.Equal(Side.Starboard, view.Current.Single().Reading.Place.Side);
        Assert.Equal([(1, Side.Starboard), (2, Side.Port)], view.Places(RigMeasure.Height).Select(p => (p.Seat, p.Side!.Value)));
        Assert.Empty(view.Places(RigMeasure.Span));
    }

    /// <summary>What was measured of the gate that is gone stays on record, and nothing is judged by it.</summary>
    [Fact]
    public void A_seat_that_was_turned_is_judged_by_its_new_gate_alone()
    {
        RigView view = View(Of(
            "2-",
            Seat(1, "port"),
            Height(1, 17, Side.Port),
            new MeasureSet("teal", "inboard", 1, 115, "cm", 0.1m, Side.Port),
            Seat(1, "starboard"),
            Height(1, 19, Side.Starboard)));

        Assert.Equal([(Side.Starboard, 19.0)], view.Readings.Select(r => (r.Place.Side!.Value, r.Value)));
        Assert.Equal(2, view.Taken.Count);
        Assert.Single(view.History(RigMeasure.Height, new(1, Side.Port)));
    }

    [Fact]
    public void What_was_taken_back_does_not_hold()
    {
        Club club = Of("2x", Span(1, 162, May4)).With(Journals.Entry(99, new Retracted(Journals.Id(2)), 1000));

        Assert.Empty(View(club).Current);
    }

    [Fact]
    public void As_of_a_day_it_is_the_rig_of_that_day()
    {
        Club club = Of("2x", Span(1, 158, May4), Span(1, 159.5m, May4.AddDays(3)));

        // The class was set on the day of the first entry, which these tests make 1970: it is known by then.
        Club then = ClubOnDay.Of(club, May4.AddDays(1));

        Assert.Equal(158, View(then).Current.Single().Reading.Value);
    }

    [Fact]
    public void Targets_of_the_boat_come_before_those_of_class_and_crew_and_the_starting_ones()
    {
        Club start = Of("2x", Crewed("women"));
        Club club = Of("2x", Crewed("women"),
            TargetKey.ForCrew(BoatClass.Parse("2x"), null, RigMeasure.Span).Set(158, 1, RigUnit.Centimetres),
            TargetKey.ForCrew(BoatClass.Parse("2x"), Crew.Women, RigMeasure.Height, side: Side.Port).Set(6, 0.5m, RigUnit.Inches),
            TargetKey.ForCrew(BoatClass.Parse("2x"), Crew.Men, RigMeasure.Inboard).Set(89, 1, RigUnit.Centimetres),
            TargetKey.ForCrew(BoatClass.Parse("1x"), null, RigMeasure.Inboard).Set(89, 1, RigUnit.Centimetres),
            TargetKey.ForBoat("heron", RigMeasure.Inboard).Set(89, 1, RigUnit.Centimetres));
        Club own = Of("2x", Crewed("women"),
            TargetKey.ForBoat("teal", RigMeasure.Span, seat: 2).Set(160, 0.5m, RigUnit.Centimetres),
            TargetKey.ForCrew(BoatClass.Parse("2x"), Crew.Women, RigMeasure.Span).Set(158, 1, RigUnit.Centimetres));

        Assert.Equal((159.3, RigSource.Survey), Target(start, RigMeasure.Span, 1));
        Assert.Equal((158, RigSource.Club), Target(club, RigMeasure.Span, 1));
        Assert.Equal((87.5, RigSource.Survey), Target(club, RigMeasure.Inboard, 1));
        Assert.Equal(15.24, Target(club, RigMeasure.Height, 1).Value, 9);
        Assert.Equal((160, RigSource.Boat), Target(own, RigMeasure.Span, 2));
        Assert.Equal((158, RigSource.Club), Target(own, RigMeasure.Span, 1));
    }

    [Fact]
    public void A_target_that_is_cleared_gives_way_to_what_stood_behind_it()
    {
        TargetKey key = TargetKey.ForBoat("teal", RigMeasure.Span);
        Club club = Of("2x", Crewed("women"), key.Set(150, 1, RigUnit.Centimetres), key.Cleared());

        Assert.Equal((159.3, RigSource.Survey), Target(club, RigMeasure.Span, 1));
        Assert.Empty(TargetsView.Set(club));
    }

    [Fact]
    public void What_sets_a_target_may_enter()
    {
        ThingSet set = TargetKey.ForBoat("teal", RigMeasure.Height, RigAspect.Sides, seat: 2).Set(1, 0.5m, RigUnit.Centimetres);

        Assert.Equal("boat/teal/height/sides/2", set.Key);
        Assert.Empty(EntryRules.Problems(Journals.Entry(1, set, 10).Entry));
    }

    [Property(MaxTest = 200)]
    public Property A_key_of_a_target_reads_back() => Prop.ForAll(Keys(), key => TargetKey.Parse(key.ToString()) == key);

    [Theory]
    [InlineData("")]
    [InlineData("boat/teal")]
    [InlineData("boat//span")]
    [InlineData("boat/teal/reach")]
    [InlineData("boat/teal/span/9")]
    [InlineData("boat/teal/span/port/2")]
    [InlineData("boat/teal/span/sides/seats")]
    [InlineData("boat/teal/Span")]
    [InlineData("crew/9+/women/span")]
    [InlineData("crew/8+/everyone/spread")]
    [InlineData("rack/a/span")]
    public void No_other_text_is_a_key(string text) => Assert.Null(TargetKey.Parse(text));

    /// <remarks>
    /// Journals from before there were rules hold any figure: an oar of 110 cm with an inboard of 115 has no gearing. 380 was set in
    /// centimetres and its unit by itself to inches after.
    /// </remarks>
    [Theory]
    [InlineData("oar-length", "110", "cm")]
    [InlineData("oar-length", "380", "in")]
    [InlineData("inboard", "-115", "cm")]
    [InlineData("inboard", "400", "cm")]
    [InlineData("spread", "0", "cm")]
    public void A_kept_target_that_no_such_measure_can_have_is_passed_over(string measure, string value, string unit)
    {
        Club club = Of(
            "2-",
            new ThingSet(Things.Target, "boat/teal/" + measure, new Dictionary<string, string?> { ["value"] = value, ["tolerance"] = "1", ["unit"] = "cm" }),
            new ThingSet(Things.Target, "boat/teal/" + measure, new Dictionary<string, string?> { ["unit"] = unit }));

        RigTargets targets = View(club).Targets!;

        Assert.Equal(RigTargets.Starting(BoatClass.Parse("2-"), null).All, targets.All);
        Assert.Equal(RigMeasure.OarLength, MeasuredSeat.Of(RigFigures.Of([]), targets, 2).Assumed[2]);
    }

    /// <summary>Whichever was set last: the crew's own is the nearer.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_crew_s_own_target_holds_before_that_of_whoever_rows_the_class(bool isCrewLast)
    {
        ThingSet any = TargetKey.ForCrew(BoatClass.Parse("2x"), null, RigMeasure.Span).Set(158, 1, RigUnit.Centimetres);
        ThingSet women = TargetKey.ForCrew(BoatClass.Parse("2x"), Crew.Women, RigMeasure.Span).Set(157, 1, RigUnit.Centimetres);

        Assert.Equal((157, RigSource.Club), Target(isCrewLast ? Of("2x", Crewed("women"), any, women) : Of("2x", Crewed("women"), women, any), RigMeasure.Span, 1));
    }

    /// <remarks>Two readings of a day are 1.96 · √2 of one's own uncertainty apart by chance at most: 1.96 · 1.4142 = 2.772.</remarks>
    [Theory]
    [InlineData(2.6, 2)]
    [InlineData(2.9, 1)]
    public void Readings_of_a_day_agree_within_what_two_may_differ_by(double times, int count)
    {
        decimal apart = (decimal)(times * RigErrors.Usual(RigMeasure.Span).Own);

        Assert.Equal(count, View(Of("2x", Span(1, 159, May4), Span(1, 159 + apart, May4))).Current.Count);
    }

    private static Arbitrary<TargetKey> Keys() => (
        from isBoat in Gen.Elements(true, false)
        from boatClass in Gen.Elements<BoatClass>([.. BoatClass.All])
        from crew in Gen.Elements<Crew?>([null, .. Crews.All.Select(c => (Crew?)c)])
        from measure in Gen.Elements<RigMeasure>([.. RigMeasures.All])
        from aspect in Gen.Elements(Enum.GetValues<RigAspect>())
        from seat in Gen.Elements<int?>(null, 1, 8)
        from side in Gen.Elements<Side?>(null, Side.Port, Side.Starboard)
        select isBoat
            ? TargetKey.ForBoat("teal-3f9a04c2", measure, aspect, seat, side)
            : TargetKey.ForCrew(boatClass, crew, measure, aspect, seat, side)).ToArbitrary();

    private static (double Value, RigSource Source) Target(Club club, RigMeasure measure, int seat) =>
        View(club).Targets!.Find(measure, RigAspect.Value, new(seat, Side.Port)) is { } target ? (target.Value, target.Source) : default;

    private static RigView View(Club club) => new(club, new BoatView(club, "teal"));

    private static Club Of(string boatClass, params Fact[] facts) => Club.Empty(Journals.Club).With(
    [
        Journals.Entry(1, Journals.Set("teal", "class", boatClass), 1),
        .. facts.Select((fact, i) => Journals.Entry(i + 2, fact, i + 2)),
    ]);

    private static MeasureTaken Span(int seat, decimal value, DateOnly day) => new("teal", "span", seat, value, "cm", Date: day);

    private static MeasureTaken Height(int seat, decimal value, Side side) => new("teal", "height", seat, value, "cm", side);

    private static ThingSet Crewed(string crew) => Journals.Set("teal", "crew", crew);

    private static ThingSet Seat(int seat, string side) =>
        new(Things.Seat, FormattableString.Invariant($"teal/{seat}"), new Dictionary<string, string?> { ["side"] = side });
}
