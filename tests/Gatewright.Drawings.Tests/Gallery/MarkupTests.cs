using System.Globalization;
using System.Text.RegularExpressions;
using Bunit;
using Gatewright.Core.Judging;
using Gatewright.Drawings.Icons;
using Gatewright.Drawings.Marks;

namespace Gatewright.Drawings.Tests.Gallery;

/// <summary>What holds of all that the library writes.</summary>
public sealed partial class MarkupTests : BunitContext
{
    private static readonly string Styles = GalleryPage.Text("drawings.css");

    public static TheoryData<string> Pages { get; } = [.. GalleryTests.All.Keys];

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Numbers_are_written_as_SVG_reads_them(string page)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        string plain = await GalleryTests.All[page]();
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
        try
        {
            Assert.Equal(plain, await GalleryTests.All[page]());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task No_style_stands_in_the_markup(string page)
    {
        string body = (await GalleryTests.All[page]()).Split("</head>")[1];

        Assert.DoesNotContain("style=", body, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<style", body, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("NaN", body, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Every_class_has_its_style(string page)
    {
        string body = (await GalleryTests.All[page]()).Split("</head>")[1];
        string[] used = [.. ClassAttribute().Matches(body).SelectMany(m => m.Groups[1].Value.Split(' ')).Where(c => c.StartsWith("gw-", StringComparison.Ordinal)).Distinct()];

        Assert.NotEmpty(used);
        Assert.All(used, name => Assert.Matches($@"\.{Regex.Escape(name)}(?![\w-])", Styles));
    }

    [Fact]
    public void Colours_come_from_the_page_alone()
    {
        string rules = Comment().Replace(Styles.Split("@media (forced-colors")[0], "");

        Assert.DoesNotMatch(@"#[0-9a-fA-F]{3,8}\b|rgba?\(|hsla?\(|oklch\(", rules);
        Assert.All(Custom().Matches(rules).Select(m => m.Groups[1].Value), name => Assert.Contains($"{name}:", Styles[Styles.IndexOf("@media (forced-colors", StringComparison.Ordinal)..], StringComparison.Ordinal));
    }

    [Fact]
    public void Every_icon_is_drawn_and_no_two_alike()
    {
        string[] drawn = [.. Enum.GetValues<IconKind>().Select(kind => Render<Icon>(p => p.Add(c => c.Kind, kind)).Find("path").GetAttribute("d")!)];

        Assert.All(drawn, d => Assert.StartsWith("M", d, StringComparison.Ordinal));
        Assert.Equal(drawn.Length, drawn.Distinct().Count());
    }

    [Fact]
    public void Every_verdict_has_a_shape_of_its_own()
    {
        string[] shapes =
        [
            .. new Verdict?[] { Verdict.Good, Verdict.Unsure, Verdict.Adjust, Verdict.Stop, null }.Select(v => Shape(Render<VerdictMark>(p => p.Add(c => c.Verdict, v)))),
            Shape(Render<VerdictMark>(p => p.Add(c => c.Verdict, Verdict.Good).Add(c => c.Held, true))),
        ];

        Assert.Equal(6, shapes.Distinct().Count());

        static string Shape(IRenderedComponent<VerdictMark> mark) => mark.Find("g").InnerHtml.Trim();
    }

    [Fact]
    public void A_mark_has_a_name_or_is_passed_over()
    {
        Assert.Equal("true", Render<VerdictMark>().Find("svg").GetAttribute("aria-hidden"));
        IRenderedComponent<VerdictMark> named = Render<VerdictMark>(p => p.Add(c => c.Name, "stop"));
        Assert.Equal(("img", "stop", null), (named.Find("svg").GetAttribute("role"), named.Find("svg").GetAttribute("aria-label"), named.Find("svg").GetAttribute("aria-hidden")));
    }

    [GeneratedRegex("class=\"([^\"]*)\"")]
    private static partial Regex ClassAttribute();

    [GeneratedRegex(@"/\*.*?\*/", RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"var\((--[\w-]+)\)")]
    private static partial Regex Custom();
}
