using Gatewright.Core;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Reporting;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.Journal.Tests.Reporting;

/// <summary>A release lifts what its giver saw, and nothing that came from another device later though it was recorded before.</summary>
public sealed class ReleaseTests
{
    private const string Boat = "heron";

    private readonly Recorded _class = Journals.Entry(1, new ThingSet(Things.Boat, Boat, new Dictionary<string, string?> { ["class"] = "1x" }), 1);
    private readonly Recorded _held = Journals.Entry(2, new Held(Boat, "knocked"), 10);
    private readonly Recorded _broken = Journals.Entry(3, Broken(Side.Port), 11);

    /// <summary>Recorded while its device had no network, before the release and unseen by whoever gave it.</summary>
    private readonly Recorded _heldUnseen = Journals.Entry(4, new Held(Boat, "crack at the shoulder"), 12);
    private readonly Recorded _brokenUnseen = Journals.Entry(5, Broken(Side.Starboard), 13);

    [Fact]
    public void A_hold_that_its_giver_never_saw_keeps_the_boat_ashore()
    {
        Recorded hold = Assert.Single(View(_class, _held, _heldUnseen, Given(_class, _held)).Holds);

        Assert.Same(_heldUnseen, hold);
    }

    [Fact]
    public void Damage_that_its_giver_never_saw_is_still_to_be_seen_to()
    {
        Incident told = Assert.Single(OpenReports.Of(View(_class, _broken, _brokenUnseen, Given(_class, _broken))));

        Assert.Same(_brokenUnseen, told.Record);
    }

    [Fact]
    public void What_its_giver_saw_is_lifted_all_of_it()
    {
        BoatView boat = View(_class, _held, _broken, _heldUnseen, _brokenUnseen, Given(_class, _held, _broken, _heldUnseen, _brokenUnseen));

        Assert.Empty(boat.Holds);
        Assert.False(OpenReports.HasDamage(boat));
        Assert.True(Release.Of(boat).IsEmpty);
    }

    [Fact]
    public void A_release_of_an_old_journal_names_none_and_lifts_all_before_it()
    {
        BoatView boat = View(_class, _held, _broken, _heldUnseen, _brokenUnseen, Journals.Entry(9, new Released(Boat, "mended"), 20));

        Assert.Empty(boat.Holds);
        Assert.False(OpenReports.HasDamage(boat));
    }

    [Fact]
    public void More_than_an_entry_may_name_is_lifted_by_several()
    {
        Recorded[] holds = [.. Enumerable.Range(10, EntryRules.MostItems + 1).Select(i => Journals.Entry(i, new Held(Boat, "crab"), i))];
        IReadOnlyList<Fact> given = Release.Of(View(holds)).Facts("looked at");

        Assert.Equal([EntryRules.MostItems, 1], given.Cast<Released>().Select(r => r.Lifts!.Count));
        Assert.Empty(View([.. holds, .. given.Select((fact, i) => Journals.Entry(900 + i, fact, ms: 900 + i))]).Holds);
    }

    [Fact]
    public void An_entry_names_no_more_than_it_may()
    {
        var released = new Released(Boat, "looked at", [.. Enumerable.Range(0, EntryRules.MostItems + 1).Select(i => Journals.Id(i))]);

        Assert.StartsWith("\"lifts\" is '101 items'", Assert.Single(EntryRules.Problems(Journals.Entry(1, released, 1).Entry)), StringComparison.Ordinal);
    }

    /// <summary>The release of somebody who had these records and no others.</summary>
    private static Recorded Given(params Recorded[] seen) => Journals.Entry(9, Release.Of(View(seen)).Facts("mended")[0], 20);

    private static BoatView View(params Recorded[] records) => new(Club.Empty(Journals.Club).With(records), Boat);

    private static Fact Broken(Side side) =>
        new ReportDraft(Boat, ReportSubject.Damage, new ReportPlace.AtGate(new(1, side)), "cracked").Facts(Wording.English, notesGates: true)[0];
}
