using Gatewright.Journal.Rounds;
using Gatewright.Journal.Views;
using Gatewright.Printing.Labels;
using Gatewright.Printing.Tests.World;
using ZXing;
using ZXing.Common;

namespace Gatewright.Printing.Tests.Labels;

/// <summary>Codes on labels, read off the printed page by a decoder that had no part in drawing them.</summary>
public class CodeTests
{
    private const int DotsAnInch = 300;
    private const double DotsAMm = DotsAnInch / 25.4;

    public static TheoryData<string, LabelKind> Sheets =>
        [.. LabelFormat.All.Select(f => (f.Name, LabelKind.Boats)), ("63x38", LabelKind.Seats), ("63x38", LabelKind.Racks), ("63x38", LabelKind.Oars)];

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Each_label_of_a_sheet_reads_as_was_asked(string format, LabelKind kind)
    {
        LabelFormat grid = LabelFormat.Of(format)!;
        IReadOnlyList<Label> labels = [.. Printed.Labels(Printed.Full, kind, ExampleClub.Imprint(), "https://g.example").Take(grid.Count)];
        Assert.NotEmpty(labels);
        Assert.Null(LabelPrint.Fault(labels, grid));

        Assert.Equal(labels.Select(l => l.Code), Read(labels, grid, 0));
    }

    [Fact]
    public void Labels_that_are_gone_are_left_out_and_a_second_sheet_goes_on()
    {
        LabelFormat grid = LabelFormat.Of("99x68")!;
        IReadOnlyList<Label> labels = [.. Printed.Labels(Printed.Full, LabelKind.Boats, ExampleClub.Imprint()).Take(7)];
        using var pdf = new Poppler(LabelPrint.Of(labels, grid, 3, ExampleClub.Imprint()));

        IReadOnlyList<GreyPicture> pages = pdf.Pictures(DotsAnInch, "labels-skipped");

        Assert.Equal(2, pages.Count);
        Assert.Equal([null, null, null, .. labels.Take(5).Select(l => l.Code)], Enumerable.Range(0, 8).Select(i => Read(pages[0], grid, i)));
        Assert.Equal([.. labels.Skip(5).Select(l => l.Code), null], Enumerable.Range(0, 3).Select(i => Read(pages[1], grid, i)));
    }

    [Theory]
    [InlineData("https://gates.example", LabelKind.Boats)]
    [InlineData(null, LabelKind.Boats)]
    [InlineData("https://gates.example", LabelKind.Seats)]
    [InlineData(null, LabelKind.Seats)]
    public void What_is_read_off_a_label_finds_its_boat_on_a_round(string? address, LabelKind kind)
    {
        List<BoatView> boats = [.. Printed.Full.Boats().Select(b => b.View)];
        foreach (BoatView boat in boats)
        {
            IReadOnlyList<Label> labels = new ClubLabels(Printed.Full.Club, ExampleClub.Imprint(), address).Of(kind, Printed.Full.Boats(boat.Name));
            Assert.NotEmpty(labels);
            Assert.All(labels, label => Assert.Equal(boat.Key, BoatSearch.ByCode(boats, label.Code)?.Key));
            Assert.All(labels, label => Assert.Equal(boat.Key, BoatSearch.ByCode(boats, label.Typed)?.Key));
        }
    }

    [Theory]
    [InlineData("https://gates.example", LabelKind.Racks)]
    [InlineData(null, LabelKind.Racks)]
    [InlineData("https://gates.example", LabelKind.Oars)]
    [InlineData(null, LabelKind.Oars)]
    public void What_is_read_off_the_label_of_a_rack_or_an_oar_finds_that_rack_or_oar(string? address, LabelKind kind)
    {
        IReadOnlyList<Label> labels = new ClubLabels(Printed.Full.Club, ExampleClub.Imprint(), address).Of(kind, []);
        Assert.NotEmpty(labels);
        Assert.All(labels, label => Assert.Equal(label.Title, LabelSearch.Of(Printed.Full.Club, label.Code)?.Title));
        Assert.All(labels, label => Assert.Equal(label.Title, LabelSearch.Of(Printed.Full.Club, label.Typed)?.Title));
    }

    [Fact]
    public void A_code_that_the_club_has_set_stands_on_the_label_as_it_is()
    {
        Label label = new ClubLabels(Printed.Full.Club, ExampleClub.Imprint(), "https://gates.example").Of(LabelKind.Boats, Printed.Full.Boats("Nuthatch")).Single();
        Assert.Equal(("N-17", "N-17"), (label.Code, label.Typed));
    }

    [Fact]
    public void A_code_too_fine_for_its_label_is_refused_with_what_it_would_take()
    {
        var label = new Label("Heron", "8+", "https://" + new string('a', 180), "heron");
        Assert.Contains("choose a larger one", LabelPrint.Fault([label], LabelFormat.Of("38x21")!), StringComparison.Ordinal);
        Assert.Null(LabelPrint.Fault([label], LabelFormat.Of("105x74")!));
    }

    /// <summary>Common practice for A4 sheets of labels: so many a sheet, and none over the edge.</summary>
    [Theory]
    [InlineData("70x37", 24)]
    [InlineData("63x38", 21)]
    [InlineData("99x68", 8)]
    [InlineData("105x74", 8)]
    [InlineData("48x25", 40)]
    [InlineData("38x21", 65)]
    public void A_sheet_has_as_many_labels_as_are_sold_on_it(string format, int count)
    {
        LabelFormat grid = LabelFormat.Of(format)!;
        Assert.Equal(count, grid.Count);
        Assert.InRange(grid.Left, 0, 12);
        Assert.InRange(grid.Top, 0, 25);
        Assert.True(grid.Width <= grid.StepAcross && grid.Height <= grid.StepDown, "labels lie on one another");
    }

    private static IEnumerable<string?> Read(IReadOnlyList<Label> labels, LabelFormat grid, int skip)
    {
        using var pdf = new Poppler(LabelPrint.Of(labels, grid, skip, ExampleClub.Imprint()));
        GreyPicture page = Assert.Single(pdf.Pictures(DotsAnInch, $"labels-{grid.Name}"));
        return [.. Enumerable.Range(skip, labels.Count).Select(i => Read(page, grid, i))];
    }

    /// <summary>What a decoder reads off the part of a label that is its code: as near as a phone is held to one.</summary>
    private static string? Read(GreyPicture page, LabelFormat grid, int index)
    {
        int left = (int)Math.Max(0, (grid.Left + (index % grid.Across * grid.StepAcross)) * DotsAMm);
        int top = (int)Math.Max(0, (grid.Top + (index / grid.Across * grid.StepDown)) * DotsAMm);
        int width = Math.Min((int)(grid.Width * DotsAMm * 0.47), page.Width - left);
        int height = Math.Min((int)(grid.Height * DotsAMm), page.Height - top);
        byte[] dots = new byte[width * height];
        for (int y = 0; y < height; y++)
        {
            Array.Copy(page.Dots, ((top + y) * page.Width) + left, dots, y * width, width);
        }

        // The decoder's search now and then takes modules inside a code for one of its corners; told that all it sees is a
        // code, it reads the same modules. What it reads either way is checked letter for letter by the code itself.
        var source = new RGBLuminanceSource(dots, width, height, RGBLuminanceSource.BitmapFormat.Gray8);
        return Decode(source, isPure: false) ?? Decode(source, isPure: true);
    }

    private static string? Decode(LuminanceSource source, bool isPure) => new BarcodeReaderGeneric
    {
        Options = new DecodingOptions { PossibleFormats = [BarcodeFormat.QR_CODE], TryHarder = true, PureBarcode = isPure },
    }.Decode(source)?.Text;
}
