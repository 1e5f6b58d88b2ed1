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

        Assert.Equal(new Reported("heron", ReportKind.CrabEarly, 3, Side.Port, "dived twice"), facts[0]);
        Assert.Equal("A crab early in the drive at seat 3 port: dived twice", Assert.IsType<Held>(facts[1]).Reason);
    }

    /// <summary>Whoever holds it in whichever language: what the program says is read in the reader's, what was typed as it was typed.</summary>
    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    public void A_hold_is_read_in_either_language(string told)
    {
        Held Hold(ReportSubject what) => (Held)Journals.Entry(
            1, new ReportDraft("heron", what, Seat3, "dived twice", true).Facts(Wording.In(Language.Of(told)))[1], 1).Fact;

        Held crab = Hold(ReportSubject.CrabEarly);
        Assert.Equal("A crab early in the drive at seat 3 port: dived twice", crab.In(Language.English));
        Assert.Equal("Ein Krebs früh im Durchzug an Platz 3 Backbord: dived twice", crab.In(Language.German));
        Assert.Equal("Damage, seat 3 port: dived twice", Hold(ReportSubject.Damage).In(Language.English));
        Assert.Equal("Schaden, Platz 3 Backbord: dived twice", Hold(ReportSubject.Damage).In(Language.German));
    }

    [Fact]
    public void What_was_typed_and_what_older_entries_say_is_read_as_it_stands() =>
        Assert.All(Language.All, language => Assert.Equal("Ein Riss", new Held("heron", "Ein Riss").In(language)));

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

        IReadOnlyList<Fact> held = draft.Facts(Wording.English);
        Assert.Equal(new Noted(Things.Boat, "heron", "Damage: bow ball gone", new(Text: "bow ball gone")), held[0]);
        Assert.Equal("Damage: bow ball gone", Assert.IsType<Held>(held[1]).Reason);
        Assert.Equal(
            [new Noted(Things.Boat, "heron", "Damage, seat 3 port", new(3, Side.Port))],
            (draft with { Where = Seat3, Text = null, HoldsAshore = false }).Facts(Wording.English));
        Assert.Equal(
            [new Noted(Things.Gate, "heron/3/port", "Damage, seat 3 port", new(3, Side.Port))],
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
