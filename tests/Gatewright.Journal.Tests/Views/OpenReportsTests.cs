using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Reporting;
using Gatewright.Journal.Tests.Rounds;
using Gatewright.Journal.Views;
using Gatewright.Words;

namespace Gatewright.Journal.Tests.Views;

/// <summary>A report is open until its gate is mended or read.</summary>
public sealed class OpenReportsTests
{
    private static readonly DateOnly Next = RoundClubs.Day.AddDays(1);
    private readonly RoundClubs _clubs = RoundClubs.Of("1x");

    public OpenReportsTests() => _clubs.ReadAll(4, RoundClubs.Day);

    [Fact]
    public void Where_nothing_was_told_nothing_is_open() => Assert.Empty(OpenReports.Of(_clubs.View));

    [Fact]
    public void What_was_told_after_the_reading_is_open_newest_first()
    {
        Tell(Side.Port, Next);
        Tell(Side.Starboard, Next.AddDays(1));

        Assert.Equal([Next.AddDays(1), Next], OpenReports.Of(_clubs.View).Select(r => r.Day));
    }

    [Fact]
    public void What_was_told_before_the_reading_is_not()
    {
        Tell(Side.Port, RoundClubs.Day.AddDays(-1));

        Assert.Empty(OpenReports.Of(_clubs.View));
    }

    [Fact]
    public void A_mending_closes_it_at_its_gate_alone()
    {
        Tell(Side.Port, Next);
        Tell(Side.Starboard, Next);
        _clubs.Add(new GateMended(RoundClubs.Boat, 1, Side.Port, Next.AddDays(1)));

        Assert.Equal(Side.Starboard, ((Reported)Assert.Single(OpenReports.Of(_clubs.View)).Record.Fact).Side);
    }

    [Fact]
    public void A_reading_closes_it()
    {
        Tell(Side.Port, Next);
        _clubs.ReadAll(4, Next.AddDays(1));

        Assert.Empty(OpenReports.Of(_clubs.View));
    }

    [Theory]
    [InlineData("en")]
    [InlineData("de")]
    public void Damage_is_open_in_whichever_language_it_was_told(string tag)
    {
        _clubs.Add(Broken(Wording.OnScreen(Language.Of(tag))));

        Assert.IsType<Noted>(Assert.Single(OpenReports.Of(_clubs.View)).Record.Fact);
        Assert.True(OpenReports.HasDamage(_clubs.View));
    }

    [Theory]
    [InlineData("Damage, seat 1 port: cracked")]
    [InlineData("Schaden, Platz 1 Backbord: cracked")]
    public void An_older_note_of_damage_is_known_by_its_first_word(string text)
    {
        _clubs.Add(new Noted(Things.Gate, Things.GateKey(RoundClubs.Boat, new(1, Side.Port)), text));

        Assert.True(OpenReports.HasDamage(_clubs.View));
    }

    [Fact]
    public void Damage_is_told_in_the_language_of_whoever_reads_it()
    {
        var told = (Noted)Broken(Wording.German);

        Assert.Equal("Schaden, Platz 1 Backbord: cracked", told.Text);
        Assert.Equal("Damage, seat 1 port: cracked", Damage.In(told, Wording.English));
        Assert.Equal("Griff lose", Damage.In(new(Things.Boat, RoundClubs.Boat, "Griff lose"), Wording.English));
    }

    /// <summary>Crew note on boats alone; the gate is in what they told.</summary>
    [Fact]
    public void What_crew_told_of_a_gate_is_seen_to_there()
    {
        _clubs.Add(new ReportDraft(RoundClubs.Boat, ReportSubject.Damage, new ReportPlace.AtGate(new(1, Side.Port))).Facts(Wording.English));
        _clubs.Add(new GateMended(RoundClubs.Boat, 1, Side.Starboard, Next));
        Assert.True(OpenReports.HasDamage(_clubs.View));

        _clubs.Add(new GateMended(RoundClubs.Boat, 1, Side.Port, Next));
        Assert.False(OpenReports.HasDamage(_clubs.View));
    }

    [Theory]
    [InlineData("Damages were looked for: none")]
    [InlineData("No damage")]
    public void Another_note_is_no_damage(string text)
    {
        _clubs.Add(new Noted(Things.Boat, RoundClubs.Boat, text));

        Assert.Empty(OpenReports.Of(_clubs.View));
    }

    [Fact]
    public void A_reading_sees_to_no_damage()
    {
        _clubs.Add(Broken(Wording.English));
        _clubs.ReadAll(4, Next.AddDays(1));

        Assert.True(OpenReports.HasDamage(_clubs.View));
    }

    [Fact]
    public void Work_at_another_gate_sees_to_no_damage()
    {
        _clubs.Add(Broken(Wording.English), new GateMended(RoundClubs.Boat, 1, Side.Starboard, Next));

        Assert.True(OpenReports.HasDamage(_clubs.View));
    }

    private static readonly Dictionary<string, Fact[]> SeesToIt = new()
    {
        ["a release"] = [new Released(RoundClubs.Boat, "splinted")],
        ["a mending"] = [new GateMended(RoundClubs.Boat, 1, Side.Port, RoundClubs.Day)],
        ["a job"] = [new JobPlanned("j", RoundClubs.Boat, Cause.PinOut, "pin-straighten", [], [], [], 1, Side.Port), new JobDone("j")],
    };

    [Theory]
    [InlineData("a release")]
    [InlineData("a mending")]
    [InlineData("a job")]
    public void Damage_is_seen_to_by_work_at_its_place_and_by_whoever_says_what_was_done(string what)
    {
        _clubs.Add(Broken(Wording.English));
        _clubs.Add(SeesToIt[what]);

        Assert.False(OpenReports.HasDamage(_clubs.View));

        _clubs.Add(Broken(Wording.English));
        Assert.Single(OpenReports.Of(_clubs.View));
    }

    private static Fact Broken(Wording say) => new ReportDraft(RoundClubs.Boat, ReportSubject.Damage, new ReportPlace.AtGate(new(1, Side.Port)), "cracked")
        .Facts(say, notesGates: true)[0];

    private void Tell(Side side, DateOnly day) => _clubs.Add(new Reported(RoundClubs.Boat, ReportKind.Knock, 1, side, Date: day));
}
