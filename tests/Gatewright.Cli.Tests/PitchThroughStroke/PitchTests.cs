using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Gatewright.Cli.Drawing;
using Gatewright.Cli.Terminals;
using Gatewright.Cli.Tests.Harness;

namespace Gatewright.Cli.Tests.PitchThroughStroke;

public sealed partial class PitchTests
{
    [Fact]
    public void A_pin_that_leans_out_is_drawn_as_expected() =>
        Expectation.Matches("pitch", ProgramRun.Of("pitch", "--gate", "4", "--out", "1").Output);

    [Fact]
    public void A_boat_that_is_not_level_is_drawn_as_expected() =>
        Expectation.Matches("pitch-inverted", ProgramRun.Of(
            "pitch", "--rowing", "scull", "--side", "starboard", "--gate", "6", "--aft", "-2", "--out", "1.5",
            "--lie", "inverted", "--bow-high", "0.5", "--port-low", "-1", "--sleeve", "0.5").Output);

    [Fact]
    public void It_is_told_in_words_as_expected() =>
        Expectation.Matches("pitch-plain", ProgramRun.Of("pitch", "--gate", "4", "--out", "1", "--plain").Output);

    [Fact]
    public void It_is_written_for_programs_as_expected() =>
        Expectation.Matches("pitch-json", ProgramRun.Of("pitch", "--gate", "4", "--out", "1", "--json").Output);

    /// <summary>
    /// 4° in the gate and the pin 1° out give 4.87 at 60°, 4.00 abeam and 3.43 at −35°: derived by this project's
    /// geometry on paper, to two decimals; the first order, 4 + sin θ, agrees with them to 0.004.
    /// </summary>
    [Theory]
    [InlineData("scull", 60, 4.87)]
    [InlineData("sweep", 0, 4.00)]
    [InlineData("sweep", -35, 3.43)]
    public void One_degree_out_is_not_one_degree_at_the_catch(string rowing, double angle, double pitch) =>
        Assert.Equal(pitch, Points("--rowing", rowing, "--out", "1").Single(p => p.Angle == angle).Pitch, 0.005);

    /// <summary>Example of exact values: lean aft is whole abeam. 4 + 2 = 6, the planes being the same.</summary>
    [Fact]
    public void Abeam_a_lean_aft_is_added_whole() =>
        Assert.Equal(6, Points("--aft", "2").Single(p => p.Angle == 0).Pitch, 1e-4);

    [Fact]
    public void Turning_the_boat_over_turns_the_level_s_error_round()
    {
        foreach (Point point in Points("--bow-high", "0.8", "--port-low", "0.6", "--out", "1"))
        {
            // To first order the two errors are opposite; at tilts of 1° the rest is under 0.01°.
            Assert.NotEqual(point.Pitch, point.Upright, 0.01);
            Assert.Equal(point.Pitch, (point.Upright + point.Inverted) / 2, 0.01);
        }
    }

    [Fact]
    public void The_blade_has_what_the_sleeve_adds() =>
        Assert.All(Points("--sleeve", "0.5"), point => Assert.Equal(point.Pitch + 0.5, point.Blade, 1e-4));

    [Fact]
    public void Its_points_go_from_catch_to_finish_by_tens_and_have_the_stations()
    {
        Assert.Equal([55, 50, 40, 30, 20, 10, 0, -10, -20, -30, -35], Points().Select(p => p.Angle));
        Assert.Equal([62, 60, 50, 40, 30, 20, 10, 0, -10, -20, -30, -40, -43], Points("--rowing", "scull").Select(p => p.Angle));
    }

    [Fact]
    public void The_drawing_puts_the_face_as_far_from_plumb_as_it_leans()
    {
        string[] lines = ProgramRun.Of("pitch", "--gate", "5", "--width", "100").Lines;
        string scale = lines.Single(line => line.Contains("plumb  ", StringComparison.Ordinal));
        string[] rows = [.. lines.Where(line => line.Contains('╋', StringComparison.Ordinal) && line.Contains('°', StringComparison.Ordinal))];
        int five = scale.IndexOf("5°", StringComparison.Ordinal);
        int plumb = scale.IndexOf("plumb", StringComparison.Ordinal) + 2;
        Assert.Equal(11, rows.Length);
        Assert.All(rows, row => Assert.Equal('│', row[plumb]));
        Assert.InRange(rows[0].IndexOf('╋', StringComparison.Ordinal), five - 1, five + 1);
    }

    [Theory]
    [InlineData("-20")]
    [InlineData("0")]
    [InlineData("20")]
    public void No_line_is_longer_than_the_width_at_the_ends_of_the_range(string degrees)
    {
        foreach (string width in (string[])["40", "72", "80"])
        {
            string[] args = ["pitch", "--gate", degrees, "--aft", degrees, "--out", degrees, "--sleeve", "1", "--bow-high", degrees, "--width", width];
            Assert.All(ProgramRun.Of(args).Lines, line => Assert.True(CellText.Width(line) <= int.Parse(width, CultureInfo.InvariantCulture), line));
        }
    }

    [Fact]
    public void Without_its_colours_a_coloured_page_is_the_plain_one() =>
        Assert.Equal(
            ProgramRun.Of("pitch").Output,
            Escapes.StripFrom(ProgramRun.Of(["pitch"], new(Colours: Colours.Many)).Output));

    [Fact]
    public void In_words_it_has_no_sign_that_is_not_a_word() =>
        Assert.DoesNotMatch(NotPlain(), ProgramRun.Of("pitch", "--plain", "--bow-high", "1").Output);

    private static List<Point> Points(params string[] args)
    {
        using JsonDocument document = JsonDocument.Parse(ProgramRun.Of(["pitch", "--json", .. args]).Output);
        return [.. document.RootElement.GetProperty("points").EnumerateArray().Select(point => new Point(
            point.GetProperty("angle").GetDouble(),
            point.GetProperty("pitch").GetDouble(),
            point.GetProperty("blade").GetDouble(),
            point.GetProperty("upright").GetDouble(),
            point.GetProperty("inverted").GetDouble()))];
    }

    private sealed record Point(double Angle, double Pitch, double Blade, double Upright, double Inverted);

    [GeneratedRegex("[^ -~\n]")]
    private static partial Regex NotPlain();
}
