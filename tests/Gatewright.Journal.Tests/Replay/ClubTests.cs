using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Tests.Replay;

public sealed class ClubTests
{
    [Fact]
    public void Two_devices_that_set_different_fields_offline_both_have_their_way()
    {
        Club club = Club.Empty(Journals.Club).With(
        [
            Journals.Entry(1, Journals.Set("heron", "name", "Heron"), 10, device: "phone"),
            Journals.Entry(2, Journals.Set("heron", "rack", "B"), 10, device: "tablet"),
        ]);

        ThingView heron = new BoatView(club, "heron").Properties;
        Assert.Equal("Heron", heron["name"]);
        Assert.Equal("B", heron["rack"]);
    }

    [Fact]
    public void Of_two_settings_of_one_field_the_later_holds_and_the_other_stays_in_the_history()
    {
        Club club = Club.Empty(Journals.Club).With(
        [
            Journals.Entry(2, Journals.Set("heron", "name", "Grey Heron"), 20, device: "tablet"),
            Journals.Entry(1, Journals.Set("heron", "name", "Heron"), 10, device: "phone"),
        ]);

        ThingView heron = new BoatView(club, "heron").Properties;
        Assert.Equal("Grey Heron", heron["name"]);
        Assert.Equal(["Heron", "Grey Heron"], heron.History("name").Select(v => v.Value));
        Assert.Equal(["phone", "tablet"], heron.History("name").Select(v => v.Entry.Device));
    }

    [Fact]
    public void Retracting_the_latest_setting_brings_the_one_before_back()
    {
        Club club = Club.Empty(Journals.Club).With(
        [
            Journals.Entry(1, Journals.Set("heron", "name", "Heron"), 10),
            Journals.Entry(2, Journals.Set("heron", "name", "Horn"), 20),
            Journals.Entry(3, new Retracted(Journals.Id(2), "a slip"), 30),
        ]);

        Assert.Equal("Heron", new BoatView(club, "heron").Name);
    }

    [Fact]
    public void Retracting_a_retraction_makes_the_first_hold_again()
    {
        Club club = Club.Empty(Journals.Club).With(
        [
            Journals.Entry(1, Journals.Set("heron", "name", "Heron"), 10),
            Journals.Entry(2, new Retracted(Journals.Id(1), null), 20),
            Journals.Entry(3, new Retracted(Journals.Id(2), null), 30),
        ]);

        Assert.Equal("Heron", new BoatView(club, "heron").Name);
    }

    [Fact]
    public void A_chain_of_a_hundred_thousand_retractions_is_followed()
    {
        const int Length = 100_000;
        Club club = Club.Empty(Journals.Club).With(Enumerable.Range(0, Length).Select(i => i == 0
            ? Journals.Entry(0, Journals.Set("heron", "name", "Heron"), 0)
            : Journals.Entry(i, new Retracted(Journals.Id(i - 1), null), i)));

        // An odd number of retractions stands on the first entry: it does not hold.
        Assert.Null(new BoatView(club, "heron").Properties["name"]);
    }

    [Fact]
    public void A_release_lifts_every_hold_before_it_and_none_after()
    {
        Club club = Club.Empty(Journals.Club).With(
        [
            Journals.Entry(1, new Held("heron", "knocked"), 10),
            Journals.Entry(2, new Released("heron", "mended and read again"), 20),
            Journals.Entry(3, new Held("heron", "crab at seat 3"), 30),
        ]);

        Recorded hold = Assert.Single(new BoatView(club, "heron").Holds);
        Assert.Equal("crab at seat 3", ((Held)hold.Fact).Reason);
    }

    [Fact]
    public void A_count_wipes_out_what_was_recorded_before_it()
    {
        Club club = Club.Empty(Journals.Club).With(
        [
            Journals.Entry(1, new StockChanged("insert", 4, 7, null), 10),
            Journals.Entry(2, new StockCounted("insert", 4, 3), 20),
            Journals.Entry(3, new StockChanged("insert", 4, -1, "job-1"), 30),
        ]);

        Assert.Equal(2, StoresView.Of(club)[("insert", 4)]);
    }

    [Fact]
    public void Another_clubs_entry_is_refused()
    {
        Recorded stray = Journals.Entry(1, new Held("heron", "knocked"), 10);

        ArgumentException refusal = Assert.Throws<ArgumentException>(() => Club.Empty("other").With(stray));
        Assert.Equal(
            $"Entry {stray.Entry.Id} is of club club, not of other. (Parameter 'recorded')", refusal.Message);
    }
}
