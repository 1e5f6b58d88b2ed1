using System.Globalization;
using AngleSharp.Dom;
using Bunit;
using Gatewright.Core.Load;
using Gatewright.Drawings.OnTheWater;

namespace Gatewright.Drawings.Tests.OnTheWater;

public sealed class LoadBarsTests : BunitContext
{
    /// <summary>The longest word in either language.</summary>
    private const string Longest = "Platz 3 Steuerbord";

    // Letters of 13 px are 0.57 of that wide on the mean in the widest of the faces that are asked for.
    private static readonly double LongestEnds = 2 + (Longest.Length * 13 * 0.57);

    [Fact]
    public void The_longest_word_stands_clear_of_the_longest_whisker_to_the_left()
    {
        IRenderedComponent<LoadBars> bars = Draw((Longest, new(-40, 6)), ("Platz 4 Backbord", new(20, 4)));

        Assert.InRange(Whisker(bars, 0).From, LongestEnds, 359);
    }

    [Fact]
    public void A_whisker_is_two_standard_uncertainties_to_each_side_of_its_bars_end()
    {
        IRenderedComponent<LoadBars> bars = Draw(("Seat 1", new(-40, 5)), ("Seat 2", new(30, 10)));
        double zero = Number(bars.Find(".gw-zero"), "x1");
        IElement rise = bars.FindAll("rect")[1];
        (double from, double to) = Whisker(bars, 1);

        // 30 ± 20 about the zero: the bar is 30 long, the whisker from 10 to 50.
        double length = Number(rise, "width");
        Assert.Equal(zero, Number(rise, "x"), 1);
        Assert.Equal(zero + (length / 3), from, 1);
        Assert.Equal(zero + (length * 5 / 3), to, 1);
    }

    private IRenderedComponent<LoadBars> Draw(params (string, LoadEstimate)[] bars) =>
        Render<LoadBars>(p => p.Add(b => b.Name, "Handle load").Add(b => b.Bars, bars));

    private static (double From, double To) Whisker(IRenderedComponent<LoadBars> bars, int index)
    {
        // "M115.5 13H201.2"
        string[] numbers = bars.FindAll(".gw-line")[index].GetAttribute("d")!.Split(['M', ' ', 'H'], StringSplitOptions.RemoveEmptyEntries);
        return (Parse(numbers[0]), Parse(numbers[2]));
    }

    private static double Number(IElement element, string attribute) => Parse(element.GetAttribute(attribute)!);

    private static double Parse(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
