using System.Globalization;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Gatewright.Cli.Drawing;

namespace Gatewright.Cli.Tests.Harness;

/// <summary>
/// A coloured page as a drawing for the README: what the terminal got, on a terminal's grid, so that the picture
/// cannot show what the program does not write.
/// </summary>
internal static partial class Picture
{
    private const double CellWidth = 8.4;
    private const double LineHeight = 18;
    private const double Margin = 16;

    public static string Of(string title, string coloured)
    {
        string[] lines = coloured.TrimEnd('\n').Split('\n');
        int columns = lines.Max(line => CellText.Width(Escapes.StripFrom(line + "\n").TrimEnd('\n')));
        string width = Number((2 * Margin) + (columns * CellWidth));
        string height = Number((2 * Margin) + (lines.Length * LineHeight));
        var svg = new StringBuilder();
        svg.Append($"""
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}" width="{width}" height="{height}" role="img">
            <title>{title}</title>
            <rect width="100%" height="100%" fill="#16130f" rx="10"/>
            <g font-family="'DejaVu Sans Mono','Noto Sans Mono',Menlo,Consolas,monospace" font-size="14" fill="#f0eadf">

            """.ReplaceLineEndings("\n"));
        for (int y = 0; y < lines.Length; y++)
        {
            Draw(lines[y], y, svg);
        }

        return svg.Append("</g>\n</svg>\n").ToString();
    }

    private static void Draw(string line, int y, StringBuilder svg)
    {
        string look = string.Empty;
        int x = 0;
        foreach (Match part in Parts().Matches(line))
        {
            if (part.Groups["codes"].Success)
            {
                look = part.Groups["codes"].Value;
            }
            else
            {
                int columns = CellText.Width(part.Value);
                Draw(part.Value, (x, columns, y), look, svg);
                x += columns;
            }
        }
    }

    private static void Draw(string text, (int X, int Columns, int Y) at, string look, StringBuilder svg)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return;
        }

        string left = Number(Margin + (at.X * CellWidth));
        string wide = Number(at.Columns * CellWidth);
        if (Ground().Match(look) is { Success: true } ground)
        {
            string top = Number(Margin + (at.Y * LineHeight) + 1.5);
            svg.Append(CultureInfo.InvariantCulture, $"<rect x=\"{left}\" y=\"{top}\" width=\"{wide}\" height=\"{LineHeight - 2}\" fill=\"{Colour(ground)}\" rx=\"2\"/>\n");
        }

        string fill = Ink().Match(look) is { Success: true } ink ? $" fill=\"{Colour(ink)}\"" : string.Empty;
        string weight = look.Split(';').Contains("1") ? " font-weight=\"700\"" : string.Empty;
        string baseline = Number(Margin + (at.Y * LineHeight) + 13.5);
        svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{left}\" y=\"{baseline}\" textLength=\"{wide}\" lengthAdjust=\"spacingAndGlyphs\"{fill}{weight}>{WebUtility.HtmlEncode(text)}</text>\n");
    }

    /// <summary>A colour of the 256 by its number: a cube of 6×6×6 from 16 on, greys from 232 on.</summary>
    private static string Colour(Match match)
    {
        int number = int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture);
        if (number >= 232)
        {
            int grey = 8 + (10 * (number - 232));
            return string.Create(CultureInfo.InvariantCulture, $"#{grey:x2}{grey:x2}{grey:x2}");
        }

        int[] levels = [0, 95, 135, 175, 215, 255];
        int cube = number - 16;
        return string.Create(CultureInfo.InvariantCulture, $"#{levels[cube / 36]:x2}{levels[cube / 6 % 6]:x2}{levels[cube % 6]:x2}");
    }

    private static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>An order to the terminal, a run of blanks, or text with single blanks at most: each word group stands on the grid.</summary>
    [GeneratedRegex("\e\\[(?<codes>[0-9;]*)m| +|[^\e ]+( [^\e ]+)*")]
    private static partial Regex Parts();

    [GeneratedRegex(@"38;5;(\d+)")]
    private static partial Regex Ink();

    [GeneratedRegex(@"48;5;(\d+)")]
    private static partial Regex Ground();
}
