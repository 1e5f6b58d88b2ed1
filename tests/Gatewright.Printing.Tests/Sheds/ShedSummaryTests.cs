using System.Globalization;
using Gatewright.Journal.Facts;
using Gatewright.Printing.Cards;
using Gatewright.Printing.RigSheets;
using Gatewright.Printing.Sheds;
using Gatewright.Printing.Tests.World;
using Gatewright.Words;

namespace Gatewright.Printing.Tests.Sheds;

public class ShedSummaryTests
{
    [Fact]
    public void Sixty_boats_stand_rack_by_rack_on_numbered_pages()
    {
        ExampleClub club = Sixty();
        using var pdf = new Poppler(ShedSummaryPrint.Of(club.Club, club.Boats(), ExampleClub.Imprint()));
        IReadOnlyList<Page> pages = pdf.Pages();
        string said = pdf.Said();

        Assert.InRange(pages.Count, 2, 4);
        Assert.All(Enumerable.Range(1, pages.Count), page => Assert.Contains($"Page {page} of {pages.Count}", said, StringComparison.Ordinal));
        Assert.Contains("60 boats: 60 not read. To stay ashore: 1.", said, StringComparison.Ordinal);

        // The racks' order is the walk's, not the alphabet's; boats go by name within each.
        int[] order = [.. Names(club).Select(name => said.IndexOf(name, StringComparison.Ordinal))];
        Assert.DoesNotContain(-1, order);
        Assert.Equal(order.Order(), order);
        Assert.Contains("Held ashore: keel line open", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("en", "Change to Regatta: 1 of 2 steps done.")]
    [InlineData("de", "Umstellung auf Regatta: 1 von 2 Schritten erledigt.")]
    public void A_change_of_the_rig_that_is_under_way_stands_under_its_boat_until_it_is_dropped(string tag, string expected)
    {
        ExampleClub club = Printed.Afresh().With(new StepDone("change-1", 0));

        Assert.Contains(expected, Said(club), StringComparison.Ordinal);
        Assert.DoesNotContain(expected, Said(club.With(new JobDropped("change-1"))), StringComparison.Ordinal);

        string Said(ExampleClub of)
        {
            using var pdf = new Poppler(ShedSummaryPrint.Of(of.Club, of.Boats("Nuthatch"), ExampleClub.Imprint(Language.Of(tag))));
            return pdf.Said();
        }
    }

    /// <summary>What the program says of a hold is printed in the paper's language, on the shed's sheet, a boat's and its card.</summary>
    [Theory]
    [InlineData("en", "A knock")]
    [InlineData("de", "Ein Stoß")]
    public void Why_a_boat_is_held_stands_in_the_language_that_is_printed(string tag, string expected)
    {
        ExampleClub club = ExampleClub.Shed();
        club.With(new Held(club.Key("Nuthatch"), "Ein Stoß", new Dictionary<string, string> { ["en"] = "A knock" }));
        Imprint imprint = ExampleClub.Imprint(Language.Of(tag));

        Assert.All<byte[]>(
            [
                ShedSummaryPrint.Of(club.Club, club.Boats("Nuthatch"), imprint),
                RigSheetPrint.Of(club.Club, club.Boats("Nuthatch"), imprint),
                PocketCardPrint.Of(club.Club, club.Boats("Nuthatch"), imprint),
            ],
            print =>
            {
                using var pdf = new Poppler(print);
                Assert.Contains(expected, pdf.Said(), StringComparison.Ordinal);
            });
    }

    [Theory]
    [InlineData("en", "No boat is on record yet.")]
    [InlineData("de", "Es ist noch kein Boot eingetragen.")]
    public void An_empty_shed_says_so(string tag, string expected)
    {
        using var pdf = new Poppler(ShedSummaryPrint.Of(ExampleClub.Empty().Club, [], ExampleClub.Imprint(Language.Of(tag))));
        Assert.Contains(expected, pdf.Said(), StringComparison.Ordinal);
    }

    /// <summary>Read from across a bay, a held boat is the one black bar on the page.</summary>
    [Fact]
    public void A_hold_is_a_black_bar()
    {
        ExampleClub club = Sixty();
        using var with = new Poppler(ShedSummaryPrint.Of(club.Club, club.Boats("Boat 30"), ExampleClub.Imprint()));
        using var without = new Poppler(ShedSummaryPrint.Of(club.Club, club.Boats("Boat 31"), ExampleClub.Imprint()));

        Assert.True(LongestRun(with.Pictures(60, "held")[0]) > 0.5);
        Assert.False(LongestRun(without.Pictures(60, "not-held")[0], thick: 6) > 0.5);
    }

    /// <summary>The share of the page's width that is black in one run through several rows of dots.</summary>
    private static double LongestRun(GreyPicture page, int thick = 6)
    {
        int longest = 0;
        for (int y = 0; y + thick <= page.Height; y++)
        {
            int run = 0;
            for (int x = 0; x < page.Width; x++)
            {
                run = Enumerable.Range(y, thick).Count(row => page.IsInk(x, row)) >= thick - 2 ? run + 1 : 0;
                longest = Math.Max(longest, run);
            }
        }

        return longest / (double)page.Width;
    }

    private static ExampleClub Sixty()
    {
        ExampleClub club = ExampleClub.Empty().With(
            new ThingSet(Things.Rack, "a", new Dictionary<string, string?> { ["name"] = "A", ["order"] = "2" }),
            new ThingSet(Things.Rack, "b", new Dictionary<string, string?> { ["name"] = "B", ["order"] = "1" }));
        for (int i = 1; i <= 60; i++)
        {
            string? rack = i % 3 == 0 ? null : i % 3 == 1 ? "a" : "b";
            club.With(new ThingSet(Things.Boat, $"boat-{i}", new Dictionary<string, string?>
            {
                ["name"] = string.Create(CultureInfo.InvariantCulture, $"Boat {i:00}"), ["class"] = i % 2 == 0 ? "8+" : "1x", ["rack"] = rack,
            }));
        }

        return club.With(new Held("boat-30", "keel line open"));
    }

    private static IEnumerable<string> Names(ExampleClub club) => club.Boats()
        .OrderBy(b => b.View.Properties["rack"] switch { "b" => 0, "a" => 1, _ => 2 })
        .ThenBy(b => b.View.Name, StringComparer.Ordinal)
        .Select(b => b.View.Name);
}
