using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Oars;
using Gatewright.Core.Rig;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Rigging;

/// <summary>What was read of oars by themselves, in the rig of the boat that they are rowed in.</summary>
public sealed class OarsInRigTests
{
    private static readonly DateOnly May4 = new(2026, 5, 4);
    private static readonly RigPlace Stroke = new(2, Side.Port);

    [Fact]
    public void An_oar_s_own_readings_are_measures_of_the_gate_it_is_rowed_at()
    {
        RigView view = View(Oar("o1", "2", "port", "blue"), Set(), Read(OarItem.Inboard, 114.5m, May4), Read(OarItem.Length, 3755, May4, "mm"));

        OtherFigure inboard = view.Other(RigMeasure.Inboard, Stroke)!;
        Assert.Equal((114.5, May4, "Blue", "Oar 1"), (inboard.Reading.Value, inboard.Day, inboard.Oar!.Set, inboard.Oar.Name));
        Assert.Equal(375.5, view.Other(RigMeasure.OarLength, Stroke)!.Reading.Value, 9);
        Assert.Contains(view.Readings, r => r is { Measure: RigMeasure.Inboard, SetU: null });
    }

    /// <remarks>A figure of an oar is as good as one taken on the boat: the same tape is laid to the same oar.</remarks>
    [Fact]
    public void They_are_as_uncertain_as_what_is_taken_on_the_boat_and_judged_as_that_is()
    {
        RigFigure ofOar = RigFigures.Of(View(Oar("o1", "2", "port"), Read(OarItem.Inboard, 114.5m, May4)).Readings).Find(RigMeasure.Inboard, Stroke)!;
        RigFigure ofBoat = RigFigures.Of(View(Taken(114.5m, May4)).Readings).Find(RigMeasure.Inboard, Stroke)!;

        Assert.Equal(ofBoat, ofOar);
        Assert.False(ofOar.IsSet);
    }

    [Fact]
    public void The_boat_s_own_reading_holds_where_it_is_newer()
    {
        Fact[] oar = [Oar("o1", "2", "port"), Read(OarItem.Inboard, 114.5m, May4)];

        RigView newer = View([.. oar, Taken(115.5m, May4.AddDays(1))]);
        RigView older = View([.. oar, Taken(115.5m, May4.AddDays(-1))]);

        Assert.Null(newer.Other(RigMeasure.Inboard, Stroke));
        Assert.Equal(115.5, newer.Readings.Single().Value);
        Assert.Equal(114.5, older.Readings.Single().Value);
        Assert.Empty(older.Current);
    }

    [Fact]
    public void Of_one_day_the_one_recorded_last_holds()
    {
        Assert.Equal(115.5, View(Oar("o1", "2", "port"), Read(OarItem.Inboard, 114.5m, May4), Taken(115.5m, May4)).Readings.Single().Value);
        Assert.Equal(114.5, View(Oar("o1", "2", "port"), Taken(115.5m, May4), Read(OarItem.Inboard, 114.5m, May4)).Readings.Single().Value);
    }

    [Fact]
    public void A_sweep_oar_needs_no_side_and_one_without_a_seat_or_of_another_boat_tells_nothing()
    {
        Fact read = Read(OarItem.Inboard, 114.5m, May4);

        Assert.Single(View(Oar("o1", "2", null), read).Others);
        Assert.Empty(View(Oar("o1", null, "port"), read).Others);
        Assert.Empty(View(Oar("o1", "2", "port", boat: "wren"), read).Others);
        Assert.Empty(View(Oar("o1", "2", "port", isOutOfUse: true), read).Others);
    }

    /// <remarks>Which of them is rowed nobody said, as with their sleeves.</remarks>
    [Fact]
    public void Of_two_oars_at_one_gate_neither_tells_anything()
    {
        RigView view = View(
            Oar("o1", "2", "port"), Oar("o2", "2", null), Read(OarItem.Inboard, 114.5m, May4), new OarRead("o2", OarItem.Length, 374, Date: May4));

        Assert.Empty(view.OfOars);
        Assert.Empty(view.Readings);
    }

    /// <remarks>The collar was moved and read again: 1 cm is more than 1.96 · √2 · 0.1.</remarks>
    [Fact]
    public void Of_an_oar_s_readings_of_one_day_the_last_holds_with_those_before_it_that_agree()
    {
        Fact[] moved = [Oar("o1", "2", "port"), Read(OarItem.Inboard, 115, May4), Read(OarItem.Inboard, 116, May4)];

        Assert.Equal(116, View(moved).Others.Single().Reading.Value, 9);
        Assert.Equal([116.0, 116.1], View([.. moved, Read(OarItem.Inboard, 116.1m, May4)]).Others.Select(o => Math.Round(o.Reading.Value, 9)).Order());
    }

    [Fact]
    public void What_a_form_states_was_not_measured()
    {
        RigView view = View(Oar("o1", "2", "port"), new ThingSet(Things.Oar, "o1", new Dictionary<string, string?> { ["inboard"] = "114" }));

        Assert.Empty(view.Readings);
    }

    [Fact]
    public void An_inboard_that_was_set_since_holds_before_the_oar_s_older_reading()
    {
        RigView view = View(
            Oar("o1", "2", "port"), Read(OarItem.Inboard, 114.5m, May4), new MeasureSet("teal", "inboard", 2, 116, "cm", 0.1m, Side.Port, May4.AddDays(1)));

        RigReading held = view.Readings.Single();
        Assert.Equal((116.0, 0.1), (held.Value, held.SetU));
    }

    [Fact]
    public void A_rig_of_which_only_oars_were_read_is_judged()
    {
        var rig = BoatRig.Of(Club(Oar("o1", "2", "port"), Read(OarItem.Inboard, 90m, May4)), "teal");

        Assert.Equal(Verdict.Adjust, rig.Verdict!.Find(RigMeasure.Inboard, Stroke)!.Verdict);
        Assert.Equal(May4, rig.LastMeasured);
    }

    private static MeasureTaken Taken(decimal value, DateOnly day) => new("teal", "inboard", 2, value, "cm", Side.Port, day);

    private static OarRead Read(OarItem item, decimal value, DateOnly day, string? unit = null) => new("o1", item, value, unit, Date: day);

    private static ThingSet Set() => new(Things.OarSet, "blue", new Dictionary<string, string?> { ["name"] = "Blue" });

    private static ThingSet Oar(string key, string? seat, string? side, string? set = null, string boat = "teal", bool isOutOfUse = false) =>
        new(Things.Oar, key, new Dictionary<string, string?>
        {
            ["name"] = "Oar 1", ["boat"] = boat, ["seat"] = seat, ["side"] = side, ["set"] = set, ["out-of-use"] = isOutOfUse ? "yes" : null,
        });

    private static RigView View(params Fact[] facts) => new(Club(facts), new BoatView(Club(facts), "teal"));

    private static Club Club(params Fact[] facts) => Replay(
        [new ThingSet(Things.Boat, "teal", new Dictionary<string, string?> { ["name"] = "Teal", ["class"] = "2-" }), .. facts]);

    private static Club Replay(Fact[] facts) => Gatewright.Journal.Replay.Club.Empty(Journals.Club).With(
        facts.Select((f, i) => Journals.Entry(i, f, new DateTimeOffset(2026, 6, 2, 8, 0, 0, TimeSpan.Zero).ToUnixTimeMilliseconds() + i)));
}
