using System.Globalization;
using Gatewright.Printing.Labels;

namespace Gatewright.Printing.Tests.Labels;

/// <summary>The app, which has nothing of what prints, and the page of docs offer the very labels that are printed.</summary>
public class OfferedFormatsTests
{
    [Fact]
    public void The_app_offers_each_format_and_each_kind()
    {
        string page = Embedded("PrintPage.razor");
        string formats = string.Join(", ", LabelFormat.All.Select(f => string.Create(CultureInfo.InvariantCulture, $"(\"{f.Name}\", {f.Count})")));
        Assert.Contains($"Formats = [{formats}];", page, StringComparison.Ordinal);
        Assert.Contains($"Kinds {{ get; }} = [{string.Join(", ", LabelKinds.All.Select(k => $"\"{k.Word()}\""))}];", page, StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_of_docs_has_each_format_as_it_is()
    {
        string page = Embedded("printing.md");
        Assert.All(LabelFormat.All, f => Assert.Contains(
            string.Create(CultureInfo.InvariantCulture, $"| `{f.Name}` | {f.Width} × {f.Height} | {f.Across} × {f.Down} = {f.Count} |"), page, StringComparison.Ordinal));
    }

    private static string Embedded(string name)
    {
        using var reader = new StreamReader(typeof(OfferedFormatsTests).Assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }
}
