using System.Globalization;

namespace Gatewright.App.Tests.Look;

/// <summary>The colours can be read, and told apart by whatever eyes.</summary>
public sealed class ColourTests
{
    private static readonly string[] Verdicts = ["good", "unsure", "adjust", "stop"];
    private static readonly string[] Inks = ["ink", "ink-soft", "touch", .. Verdicts];

    // Machado, Oliveira and Fernandes, "A Physiologically-based Model for Simulation of Color Vision Deficiency", 2009,
    // table for severity 1 (from memory): without red, green, blue cones.
    private static readonly double[][,] Eyes =
    [
        new[,] { { 1.0, 0, 0 }, { 0, 1.0, 0 }, { 0, 0, 1.0 } },
        new[,] { { 0.152286, 1.052583, -0.204868 }, { 0.114503, 0.786281, 0.099216 }, { -0.003882, -0.048116, 1.051998 } },
        new[,] { { 0.367322, 0.860646, -0.227968 }, { 0.280085, 0.672501, 0.047413 }, { -0.011820, 0.042940, 0.968881 } },
        new[,] { { 1.255528, -0.076749, -0.178779 }, { -0.078411, 0.930809, 0.147602 }, { 0.004733, 0.691367, 0.303900 } },
    ];

    [Fact]
    public void Contrast_is_as_its_definition_says()
    {
        // WCAG 2.2, definition "contrast ratio": from 1:1 to 21:1.
        Assert.Equal(21, Colour.Parse("#000000").Contrast(Colour.Parse("#ffffff")), 6);
        Assert.Equal(1, Colour.Parse("#874519").Contrast(Colour.Parse("#874519")), 6);
    }

    [Theory]
    [InlineData("light")]
    [InlineData("dark")]
    [InlineData("light, with more contrast")]
    public void All_text_can_be_read(string look)
    {
        IReadOnlyDictionary<string, Colour> tokens = look switch { "light" => Tokens.Light, "dark" => Tokens.Dark, _ => Tokens.Contrasting };
        string[] weak = [.. from ink in Inks
                            from ground in new[] { "ground", "sheet", "stop-ground" }
                            where tokens[ink].Contrast(tokens[ground]) < 4.5 // WCAG 2.2, 1.4.3
                            select $"{ink} on {ground}"];
        Assert.Empty(weak);
        Assert.True(tokens["on-touch"].Contrast(tokens["touch"]) >= 4.5);
        Assert.All(Verdicts, v => Assert.True(tokens["on-verdict"].Contrast(tokens[v]) >= 3, v)); // 1.4.11: the bar of a mark
        Assert.True(tokens["edge"].Contrast(tokens["ground"]) >= 3); // 1.4.11: the border of a field
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Verdicts_stay_apart_for_any_eyes(bool isDark)
    {
        IReadOnlyDictionary<string, Colour> tokens = isDark ? Tokens.Dark : Tokens.Light;
        double closest = Eyes.Min(eye => (from one in Verdicts
                                          from other in Verdicts
                                          where string.CompareOrdinal(one, other) < 0
                                          select tokens[one].Through(eye).Difference(tokens[other].Through(eye))).Min());

        // Some 2 can just be told side by side (from memory); the page of the look promises 14.
        Assert.True(closest >= 14, closest.ToString(CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Dark_by_choice_is_dark_as_the_device_has_it() => Assert.Equal(Tokens.Dark, Tokens.ChosenDark);

    /// <summary>More contrast for whoever asks for it, by day; the dusk's own is not taken from under its colours.</summary>
    [Fact]
    public void More_contrast_is_black_on_white()
    {
        Assert.Equal(21, Tokens.Contrasting["ink"].Contrast(Tokens.Contrasting["ground"]), 6);
        Assert.All(Inks, ink => Assert.True(Tokens.Contrasting[ink].Contrast(Tokens.Contrasting["ground"]) > Tokens.Light[ink].Contrast(Tokens.Light["ground"]), ink));
    }

    [Fact]
    public void The_bar_of_the_browser_has_the_colour_of_the_ground()
    {
        string page = Tokens.Read("src/Gatewright.App/wwwroot/index.html");
        Colour Bar(string look) => Colour.Parse(page.Split($"prefers-color-scheme: {look})\" content=\"")[1][..7]);

        Assert.Equal(Tokens.Light["ground"], Bar("light"));
        Assert.Equal(Tokens.Dark["ground"], Bar("dark"));
    }

    [Fact]
    public void The_page_of_the_look_says_what_the_tokens_are()
    {
        string page = Tokens.Read("docs/design/README.md");
        string css = Tokens.Read("src/Gatewright.App/wwwroot/look.css");
        foreach (string ink in Inks)
        {
            string row = page.Split('\n').Single(l => l.StartsWith($"| {ink} | #", StringComparison.Ordinal));
            string[] cells = [.. row.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];
            Assert.Equal(Tokens.Light[ink], Colour.Parse(cells[1]));
            Assert.Equal(Tokens.Dark[ink], Colour.Parse(cells[3]));
            Assert.Contains(cells[1], css, StringComparison.Ordinal);

            // Written with one decimal.
            Assert.Equal(Tokens.Light[ink].Contrast(Tokens.Light["ground"]), double.Parse(cells[2], CultureInfo.InvariantCulture), 0.0501);
            Assert.Equal(Tokens.Dark[ink].Contrast(Tokens.Dark["ground"]), double.Parse(cells[4], CultureInfo.InvariantCulture), 0.0501);
        }
    }
}
