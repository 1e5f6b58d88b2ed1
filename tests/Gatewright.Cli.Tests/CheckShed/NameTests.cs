using Gatewright.Cli.Drawing;
using Gatewright.Cli.Terminals;
using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.CheckShed;

/// <summary>Names of every kind that a file may hold.</summary>
public sealed class NameTests
{
    public static TheoryData<string> Names =>
    [
        "Æger",
        "Zu\u0308rich",
        "漕艇部の舟",
        "🦢 Swan",
        "👩\u200D🚀 Two joined",
        "A name that goes on and on as if somebody had meant to write down the whole history of the boat on her bow",
        "Onewordwithoutanyblankinitthatislongerthanthewholelineofaterminalandthenabitmoretobesure",
        "Quote \" and comma, too",
        "100 % [bold]markup[/]",
    ];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_name_never_makes_a_line_too_long(string name)
    {
        foreach (double pitch in (double[])[4, 1])
        {
            ProgramRun run = ProgramRun.Of(["check", "--all"], new(Input: Readings.Single(name, pitch, pitch, pitch)));
            Assert.All(run.Lines, line => Assert.True(CellText.Width(line) <= 80, line));
            Assert.Contains(CellText.Head(name, 8), run.Output, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_sound_boat_s_plan_stands_in_the_same_column_whatever_its_name(string name)
    {
        string usual = ProgramRun.Of(["check"], new(Input: Readings.Single("Heron"))).Lines[0];
        string other = ProgramRun.Of(["check"], new(Input: Readings.Single(name))).Lines[0];
        Assert.Equal(ColumnOf("●   starboard", usual), ColumnOf("●   starboard", other));

        static int ColumnOf(string mark, string line) =>
            CellText.Width(line[..line.LastIndexOf(mark, StringComparison.Ordinal)]);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_name_cannot_give_the_terminal_orders(bool inColour)
    {
        Colours colours = inColour ? Colours.Many : Colours.None;

        // A carriage return, a colour, a line of its own, and a turn to right-to-left.
        const string Name = "Her\e[2Kon\u009B31m\u202Enroh\u2066x";
        foreach (string form in (string[])["--all", "--plain", "--width=40"])
        {
            ProgramRun run = ProgramRun.Of(["check", form], new(Input: Readings.Single(Name, 1, 1, 1), Colours: colours));
            string text = Escapes.StripFrom(run.Output);
            Assert.DoesNotContain(text, c => char.IsControl(c) && c != '\n');
            Assert.DoesNotContain(text, c => c is '\u202E' or '\u2066');
        }
    }

    [Fact]
    public void In_json_a_name_stands_as_it_is() =>
        Assert.Contains(
            "\"boat\": \"漕艇部の舟\"",
            ProgramRun.Of(["check", "--json"], new(Input: Readings.Single("漕艇部の舟"))).Output,
            StringComparison.Ordinal);
}
