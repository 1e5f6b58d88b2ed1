using Gatewright.Core;
using Gatewright.Core.Judging;
using Gatewright.Core.Oars;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Members;
using Gatewright.Journal.Oars;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Oars;

/// <summary>A club's oars as its journal tells them.</summary>
public sealed class OarsViewTests
{
    private static readonly DateOnly May4 = new(2026, 5, 4);

    [Fact]
    public void A_set_has_its_oars_in_the_order_people_number_them_and_judges_them()
    {
        OarsView view = View([Set("blue"), .. Enumerable.Range(1, 10).SelectMany(i => (Fact[])[Oar($"b{i}", ("name", $"Blue {i}"), ("set", "blue")), Sleeve($"b{i}", i == 3 ? 4 : 0.5m)])]);

        OarSetView set = Assert.Single(view.Sets);
        Assert.Equal("Blue 1, Blue 2, Blue 3, Blue 4, Blue 5, Blue 6, Blue 7, Blue 8, Blue 9, Blue 10", string.Join(", ", set.Oars.Select(o => o.Title)));
        Assert.Equal(Verdict.Adjust, set.Verdict);
        Assert.Equal(Verdict.Adjust, set.VerdictOf("b3"));
        Assert.Equal(Verdict.Good, set.VerdictOf("b4"));
        Assert.True(set.Of(OarItem.Sleeve)!.Find("b3")!.IsOutlier);
        Assert.Empty(view.Loose.Oars);
    }

    /// <summary>Bow high by 1° on an upright boat with the handle out adds 1° to what is shown.</summary>
    [Fact]
    public void A_sleeve_has_the_boats_level_taken_out()
    {
        OarsView view = View([Sleeve("b1", 1.5m, bowHigh: 1), Sleeve("b2", 1.5m, bowHigh: 1, laid: OarLaid.Across)]);

        Assert.Equal(0.5, view.Oar("b1")!.Oar.Sleeve!.Value, 9);
        Assert.Equal(2.5, view.Oar("b2")!.Oar.Sleeve!.Value, 9);
        Assert.Equal(["b1", "b2"], view.Loose.Oars.Select(o => o.Key));
    }

    [Fact]
    public void The_last_occasion_counts_and_what_was_read_twice_in_it_is_averaged()
    {
        OarsView view = View([Sleeve("b1", 3, session: "old"), Sleeve("b1", 1, session: "new"), Sleeve("b1", 2, session: "new")]);

        Assert.Equal(1.5, view.Oar("b1")!.Oar.Sleeve!.Value, 9);
        Assert.Equal(3, view.Oar("b1")!.Readings.Count);
    }

    /// <remarks>1 cm is more than 1.96 · √2 times what a reading is off by itself: the collar was moved. A tenth is less.</remarks>
    [Fact]
    public void An_inboard_read_again_after_the_collar_was_moved_is_not_averaged_with_the_old()
    {
        OarRead[] read = [.. new[] { 115m, 116m, 116.1m }.Select(cm => new OarRead("b1", OarItem.Inboard, cm, Date: May4))];

        Assert.Equal(116, View([Oar("b1"), .. read.Take(2)]).Oar("b1")!.Oar.Inboard!.Value, 9);
        Assert.Equal(116.05, View([Oar("b1"), .. read]).Oar("b1")!.Oar.Inboard!.Value, 9);
    }

    [Fact]
    public void What_was_measured_comes_before_what_was_stated()
    {
        OarsView view = View([
            Oar("b1", ("length", "376"), ("inboard", "114")),
            new OarRead("b1", OarItem.Length, 3755, "mm", Date: May4)]);

        Oar oar = view.Oar("b1")!.Oar;
        Assert.Equal((375.5, May4), (oar.Length!.Value, oar.Length.Day));
        Assert.Equal((114.0, (DateOnly?)null), (oar.Inboard!.Value, oar.Inboard.Day));
        Assert.Null(oar.Sleeve);
    }

    [Fact]
    public void Who_has_which_oar_is_told_of_any_day()
    {
        Club club = Club.Empty(Journals.Club).With([
            At(1, May4, Oar("b1", ("boat", "heron"), ("seat", "2"), ("side", "port"))),
            At(2, May4, Oar("b2", ("boat", "heron"), ("seat", "1"), ("side", "starboard"))),
            At(3, May4.AddDays(5), Oar("b1", ("boat", "teal"), ("seat", "1")))]);

        Assert.Equal(["b2", "b1"], new OarsView(ClubOnDay.Of(club, May4.AddDays(1))).InBoat("heron").Select(o => o.Key));
        Assert.Equal(["b2"], new OarsView(club).InBoat("heron").Select(o => o.Key));
        OarView moved = Assert.Single(new OarsView(club).InBoat("teal"));
        Assert.Equal((1, Side.Port), (moved.Seat, moved.Side));
    }

    [Fact]
    public void What_is_out_of_use_is_compared_with_nothing()
    {
        OarsView view = View([Set("blue"), Oar("b1", ("set", "blue")), Oar("b2", ("set", "blue"), ("out-of-use", "yes")), Sleeve("b1", 0), Sleeve("b2", 5)]);

        Assert.Equal("b1", Assert.Single(view.Sets.Single().Oars).Key);
        Assert.Null(view.Sets.Single().Verdict);
        Assert.Equal(2, view.All.Count);
    }

    [Fact]
    public void A_reading_that_was_taken_back_does_not_hold()
    {
        Club club = Of([Sleeve("b1", 1), Sleeve("b1", 3, session: "later")]);

        Assert.Equal(1, new OarsView(club.With(Journals.Entry(50, new Retracted(Journals.Id(2)), 1000))).Oar("b1")!.Oar.Sleeve!.Value, 9);
    }

    [Theory]
    [InlineData("""{"oar":"o1","item":"sleeve","value":25,"session":"s"}""", "\"value\" is '25': no sleeve is that: give -20 to 20")]
    [InlineData("""{"oar":"o1","item":"sleeve","value":2}""", "\"session\" is missing: name the occasion: its readings share the boat's level")]
    [InlineData("""{"oar":"o1","item":"sleeve","value":2,"session":"s","level":"rack"}""", "\"rack\" is missing: name the rack whose level is meant")]
    [InlineData("""{"oar":"o1","item":"length","value":376,"unit":"mm"}""", "\"value\" is '376': no length is that: give 1000 to 4500")]
    [InlineData("""{"oar":"o1","item":"inboard","value":88,"unit":"hands"}""", "\"unit\" is 'hands': give cm, mm or in")]
    [InlineData("""{"oar":"o1","item":"weight","value":2.4,"unit":"kg","lie":"upright"}""", "\"unit\" is 'kg': leave it out: a sleeve is in degrees, a weight in kilograms; \"item\" is 'weight': only a sleeve is read on a boat with a gauge: leave boat, lie, level, rack, laid and gauge out")]
    public void Everything_wrong_with_a_reading_is_said(string body, string problems)
    {
        var entry = new Entry
        {
            Id = Journals.Id(1), Club = Journals.Club, Member = "m1", Device = "phone", Time = default, Kind = "oar-read", Version = 1,
            Body = System.Text.Encoding.UTF8.GetBytes(body),
        };

        Assert.Equal(problems, string.Join("; ", EntryRules.Problems(entry)));
    }

    [Fact]
    public void A_helper_reads_oars_and_a_coach_does_not()
    {
        var read = new OarRead("o1", OarItem.Weight, 2.4m);

        Assert.True(RecordingRules.May(Role.Helper, read));
        Assert.False(RecordingRules.May(Role.Coach, read));
        Assert.False(RecordingRules.May(Role.Crew, read));
    }

    private static OarsView View(Fact[] facts) => new(Of(facts));

    private static Club Of(Fact[] facts) => Club.Empty(Journals.Club).With(facts.Select((fact, i) => Journals.Entry(i + 1, fact, i + 1)));

    private static Recorded At(int number, DateOnly day, Fact fact) =>
        Journals.Entry(number, fact, new DateTimeOffset(day, TimeOnly.MinValue, TimeSpan.Zero).ToUnixTimeMilliseconds());

    private static ThingSet Set(string key) => new(Things.OarSet, key, new Dictionary<string, string?> { ["name"] = key });

    private static ThingSet Oar(string key, params (string Field, string Value)[] fields) =>
        new(Things.Oar, key, fields.ToDictionary(f => f.Field, f => (string?)f.Value));

    private static OarRead Sleeve(string oar, decimal value, decimal bowHigh = 0, OarLaid? laid = null, string session = "s") =>
        new(oar, OarItem.Sleeve, value, Session: session, Level: LevelBasis.Read, BowHigh: bowHigh, Laid: laid);
}
