using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Drawing;

/// <summary>Prints pages: plain text where there are no colours, else through the terminal library.</summary>
internal static class PagePrinter
{
    public static void Print(Page page, Terminal terminal)
    {
        if (terminal.Colours != Colours.None)
        {
            ColourPrinter.Print(page, terminal);
            return;
        }

        // A piped program reads \n, whatever the machine it was written on.
        foreach (Line line in page.Lines)
        {
            terminal.Output.Write(line.ToString());
            terminal.Output.Write('\n');
        }
    }
}
