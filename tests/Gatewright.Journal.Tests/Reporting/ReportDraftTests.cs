using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Reporting;
using Gatewright.Journal.Tests.Replay;
using Gatewright.Words;

namespace Gatewright.Journal.Tests.Reporting;

public sealed class ReportDraftTests
{
    private static readonly ReportPlace Seat3 = new ReportPlace.AtGate(new(3, Side.Port));

    /// <summary>Boat, what, where, send: four touches.</summary>
    [Fact]
    public void Four_touches_tell_of_a_knock()
    {
        var draft = new ReportDraft();
        Assert.Equal(ReportStep.Boat, draft.Step);
        draft = draft with { Boat = "heron" };
        Assert.Equal(ReportStep.What, draft.Step);
        draft = draft.Tells(ReportSubject.Knock);
        Assert.Equal(ReportStep.Where, draft.Step);
        draft = draft with { Where = Seat3 };
        Assert.Equal(ReportStep.Send, draft.Step);

        Assert.Equal([new Reported("heron", ReportKind.Knock, 3, Side.Port)], draft.Facts(Wording.English));
    }

    [Fact]
    public void With_a_hold_the_boat_stays_ashore_in_the_same_words()
    {
        IReadOnlyList<Fact> facts = new ReportDraft("heron", ReportSubject.CrabEarly, Seat3, " dived twice ", HoldsAshore: true).Facts(Wording.English);

        Assert.Equal(
            [new Reported("heron", ReportKind.CrabEarly, 3, Side.Port, "dived twice"), new Held("heron", "A crab early in the drive at seat 3 port: dived twice")],
            facts);
    }

    [Fact]
    public void A_boat_down_to_one_side_has_a_side_and_no_gate()
    {
        ReportDraft draft = new ReportDraft("heron", Where: Seat3).Tells(ReportSubject.DownToOneSide);
        Assert.Equal(ReportStep.Where, draft.Step);

        draft = draft with { Where = new ReportPlace.OnSide(Side.Starboard) };

        Assert.Equal([new Reported("heron", ReportKind.DownToOneSide, null, Side.Starboard)], draft.Facts(Wording.English));
        Assert.Equal(ReportStep.Where, draft.Tells(ReportSubject.Knock).Step);
    }

    [Fact]
    public void Damage_is_a_note_and_holds_the_boat_unless_somebody_says_otherwise()
    {
        ReportDraft draft = new ReportDraft("heron", Text: "bow ball gone").Tells(ReportSubject.Damage) with { Where = new ReportPlace.Somewhere() };
        Assert.True(draft.HoldsAshore);

        Assert.Equal(
            [new Noted(Things.Boat, "heron", "Damage: bow ball gone"), new Held("heron", "Damage: bow ball gone")],
            draft.Facts(Wording.English));
        Assert.Equal(
            [new Noted(Things.Boat, "heron", "Damage, seat 3 port")],
            (draft with { Where = Seat3, Text = null, HoldsAshore = false }).Facts(Wording.English));
        Assert.Equal(
            [new Noted(Things.Gate, "heron/3/port", "Damage, seat 3 port")],
            (draft with { Where = Seat3, Text = null, HoldsAshore = false }).Facts(Wording.English, notesGates: true));
    }

    /// <summary>Whatever can be chosen can be put on record, in either language.</summary>
    [Fact]
    public void All_that_can_be_told_is_taken_by_the_journal()
    {
        IReadOnlyList<ReportPlace> places = [Seat3, new ReportPlace.OnSide(Side.Port), new ReportPlace.Somewhere()];
        foreach (ReportSubject what in ReportSubjects.All)
        {
            foreach (ReportPlace where in places.Where(p => ReportDraft.Takes(what, p)))
            {
                foreach (Wording say in new[] { Wording.English, Wording.German })
                {
                    IReadOnlyList<Fact> facts = new ReportDraft("heron", what, where, "text", true).Facts(say);
                    Assert.Empty(facts.SelectMany(f => EntryRules.Problems(Journals.Entry(1, f, 1).Entry)));
                }
            }
        }
    }

    [Fact]
    public void What_is_not_chosen_yet_is_not_sent() =>
        Assert.Throws<InvalidOperationException>(() => new ReportDraft("heron", ReportSubject.Knock).Facts(Wording.English));
}
