using Gatewright.Cli.Terminals;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace Gatewright.Cli.Drawing;

/// <summary>Prints pages in colour. The only place that knows colours; a piped run never loads what it needs.</summary>
internal static class ColourPrinter
{
    public static void Print(Page page, Terminal terminal)
    {
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.Yes,
            ColorSystem = terminal.Colours == Colours.Many ? ColorSystemSupport.EightBit : ColorSystemSupport.Standard,
            Interactive = InteractionSupport.No,
            Enrichment = new ProfileEnrichment { UseDefaultEnrichers = false },
            Out = new AnsiConsoleOutput(terminal.Output),
        });
        console.Profile.Width = Math.Max(page.Width, page.Lines.Max(line => line.Width)) + 1;
        console.Write(new Sheet(page));
    }

    /// <summary>
    /// Middle tones of the 256-colour cube, since a terminal's ground may be dark or light: each stands out from black
    /// and from white by at least 3 to 1.
    /// </summary>
    private static Style Style(Ink ink) => ink switch
    {
        Ink.Quiet => new(foreground: Color.FromInt32(244)),
        Ink.Strong => new(decoration: Decoration.Bold),
        Ink.Good => new(foreground: Color.FromInt32(30)),
        Ink.Unsure => new(foreground: Color.FromInt32(67), decoration: Decoration.Bold),
        Ink.Adjust => new(foreground: Color.FromInt32(166), decoration: Decoration.Bold),
        Ink.Stop => new(foreground: Color.FromInt32(231), background: Color.FromInt32(125), decoration: Decoration.Bold),
        _ => Spectre.Console.Style.Plain,
    };

    private sealed class Sheet(Page page) : IRenderable
    {
        public Measurement Measure(RenderOptions options, int maxWidth) => new(maxWidth, maxWidth);

        public IEnumerable<Segment> Render(RenderOptions options, int maxWidth)
        {
            foreach (Line line in page.Lines)
            {
                foreach (Run run in line.Runs)
                {
                    yield return new Segment(run.Text, Style(run.Ink));
                }

                yield return Segment.LineBreak;
            }
        }
    }
}
