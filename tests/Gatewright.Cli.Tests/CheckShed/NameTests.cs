using Gatewright.Cli.Drawing;
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
    [InlineData("Her\e[2Kon")]
    [InlineData("Her\u009B31mon")]
    [InlineData("Her\u202Eon\u2066")]
    [InlineData("Her\u200Fon")]
    public void A_name_cannot_give_the_terminal_orders(string name)
    {
        foreach (string form in (string[])["--all", "--plain", "--width=40"])
        {
            ProgramRun run = ProgramRun.Of(["check", form], new(Input: Readings.Single(name, 1, 1, 1)));
            AssertHarmless(run.Output + run.Error);
            AssertHarmless(ProgramRun.Of("check", ExampleFiles.Small, "--boat", name).Error);
        }
    }

    /// <summary>Whatever a reader of files lets through, a line of output does not.</summary>
    [Theory]
    [InlineData("Her\e[2Kon")]
    [InlineData("Her\u009B31mon")]
    [InlineData("Her\r\non")]
    [InlineData("Her\u202Eon\u2066")]
    public void No_line_of_output_gives_the_terminal_orders(string text)
    {
        var page = new Page(80);
        page.Add(new Line().Add(text).To(20).Add(CellText.Fit(text, 5)));
        page.Paragraph(text, 2, new Line().Add(text));
        Assert.All(page.Lines, line => AssertHarmless(line.ToString()));
    }

    private static void AssertHarmless(string text)
    {
        Assert.DoesNotContain(text, c => char.IsControl(c) && c != '\n');
        Assert.DoesNotContain(text, c => c is '\u202E' or '\u2066' or '\u200F');
    }

    [Fact]
    public void In_json_a_name_stands_as_it_is() =>
        Assert.Contains(
            "\"boat\": \"漕艇部の舟\"",
            ProgramRun.Of(["check", "--json"], new(Input: Readings.Single("漕艇部の舟"))).Output,
            StringComparison.Ordinal);
}
