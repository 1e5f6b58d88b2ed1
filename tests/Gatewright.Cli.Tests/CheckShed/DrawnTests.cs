using System.Text.Json;
using System.Text.RegularExpressions;
using Gatewright.Cli.Drawing;
using Gatewright.Cli.Terminals;
using Gatewright.Cli.Tests.Harness;
using Gatewright.Core.Judging;

namespace Gatewright.Cli.Tests.CheckShed;

public sealed partial class DrawnTests
{
    [Fact]
    public void A_small_shed_is_drawn_as_expected() =>
        Expectation.Matches("small-shed", ProgramRun.Of("check", ExampleFiles.Small).Output);

    [Fact]
    public void All_draws_sound_boats_and_tells_every_reason() =>
        Expectation.Matches("small-shed-all", ProgramRun.Of("check", ExampleFiles.Small, "--all").Output);

    [Fact]
    public void Explain_says_where_the_uncertainty_comes_from() =>
        Expectation.Matches("small-shed-explain", ProgramRun.Of("check", ExampleFiles.Small, "--explain").Output);

    [Fact]
    public void A_wider_screen_is_used() =>
        Expectation.Matches("small-shed-100-columns", ProgramRun.Of("check", ExampleFiles.Small, "--width", "100").Output);

    [Fact]
    public void A_screen_too_narrow_to_draw_on_is_written_on() =>
        Expectation.Matches("small-shed-40-columns", ProgramRun.Of("check", ExampleFiles.Small, "--width", "40").Output);

    [Fact]
    public void A_terminal_with_colours_gets_them() =>
        Expectation.Matches(
            "small-shed-colours",
            ProgramRun.Of(["check", ExampleFiles.Small], new(Colours: Colours.Many)).Output.Replace('\e', '␛'));

    [Theory]
    [MemberData(nameof(ExampleFiles.AllAsTheory), MemberType = typeof(ExampleFiles))]
    public void Without_its_colours_a_coloured_page_is_the_plain_one(string file)
    {
        string plain = ProgramRun.Of("check", file).Output;
        foreach (Colours colours in new[] { Colours.Sixteen, Colours.Many })
        {
            string coloured = ProgramRun.Of(["check", file], new(Colours: colours)).Output;
            Assert.Contains('\e', coloured);
            Assert.Equal(plain, Escapes.StripFrom(coloured));
        }
    }

    [Theory]
    [MemberData(nameof(ExampleFiles.AllAsTheory), MemberType = typeof(ExampleFiles))]
    public void A_pipe_gets_no_escape(string file) =>
        Assert.DoesNotContain('\e', ProgramRun.Of("check", file, "--all", "--explain").Output);

    [Theory]
    [MemberData(nameof(ExampleFiles.AllAsTheory), MemberType = typeof(ExampleFiles))]
    public void No_line_is_longer_than_the_width(string file)
    {
        foreach (int width in (int[])[40, 60, 71, 72, 73, 80, 100, 131])
        {
            string asked = Figures.Degrees(width, 0);
            foreach (string line in ProgramRun.Of("check", file, "--all", "--explain", "--width", asked).Lines)
            {
                Assert.True(CellText.Width(line) <= width, $"{CellText.Width(line)} columns, {width} asked for: {line}");
            }
        }
    }

    [Fact]
    public void A_pipe_is_80_columns_wide_and_a_screen_as_wide_as_it_is_up_to_100()
    {
        string[] args = ["check", ExampleFiles.Small];
        Assert.Equal(80, ProgramRun.Of(args).Lines.Max(CellText.Width));
        Assert.Equal(90, ProgramRun.Of(args, new(Width: 90)).Lines.Max(CellText.Width));
        Assert.Equal(100, ProgramRun.Of(args, new(Width: 300)).Lines.Max(CellText.Width));
    }

    [Fact]
    public void At_every_pin_the_mark_has_its_word_beside_it()
    {
        int pins = 0;
        foreach (string line in ProgramRun.Of("check", ExampleFiles.Shed, "--all").Lines)
        {
            foreach (Match pin in PinWithMark().Matches(line))
            {
                Assert.Contains(pin.Value.Trim('─'), (string[])["good ●", "● good", "unsure ○", "○ unsure", "adjust ◆", "◆ adjust", "[STOP]"]);
                pins++;
            }
        }

        // 144 gates were read in the shed.
        Assert.Equal(144, pins);
    }

    [Fact]
    public void Every_mark_is_in_the_legend_with_its_word()
    {
        string output = ProgramRun.Of("check", ExampleFiles.Shed).Output.ReplaceLineEndings(" ");
        Assert.Contains("○ unsure, ◆ adjust, ■ stop.", output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_not_read_stands_in_brackets_and_what_was_read_does_not()
    {
        string[] lines = ProgramRun.Of("check", ExampleFiles.Small, "--boat", "Tern").Lines;
        Assert.Contains(lines, line => line.Contains("(4.0±0.5)   3.0±0.8○  (4.0±0.4)", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(ExampleFiles.AllAsTheory), MemberType = typeof(ExampleFiles))]
    public void Of_every_gate_that_is_not_good_a_reason_is_told(string file)
    {
        using JsonDocument document = JsonDocument.Parse(ProgramRun.Of("check", file, "--json").Output);
        foreach (JsonElement boat in document.RootElement.GetProperty("boats").EnumerateArray())
        {
            string drawn = ProgramRun.Of("check", file, "--boat", boat.GetProperty("boat").GetString()!).Output;
            foreach (JsonElement seat in boat.GetProperty("seats").EnumerateArray().Where(s => s.GetProperty("verdict").GetString() != "good"))
            {
                Verdict verdict = Verdicts.All.Single(v => v.Word() == seat.GetProperty("verdict").GetString());
                Assert.Contains($"{verdict.Sign().PadRight(9)}Seat {seat.GetProperty("seat")} {seat.GetProperty("side")} ", drawn, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void A_boat_that_is_not_shown_to_be_above_its_floors_is_listed_under_stop()
    {
        string[] lines = ProgramRun.Of("check", ExampleFiles.Shed).Lines;
        Assert.Contains(lines, line => line.Contains("Treat as stop until read again: Withy 2x, Fieldfare 4x, Larch 4-", StringComparison.Ordinal));
    }

    [Fact]
    public void A_boat_of_which_no_gate_was_read_is_not_called_good()
    {
        const string Oars = "boat,class,seat,side,item,reading\nHeron,1x,1,port,sleeve,0.0\nHeron,1x,1,starboard,sleeve,0.5\n";
        Expectation.Matches("oars-alone", ProgramRun.Of(["check"], new(Input: Oars)).Output);
    }

    [GeneratedRegex(@"\S* ?[●○◆\]]─+|─+[●○◆\[] ?\w*\]?")]
    private static partial Regex PinWithMark();
}
