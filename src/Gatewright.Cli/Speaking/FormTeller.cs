using Gatewright.Cli.Drawing;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Speaking;

/// <summary>Tells one answer in whichever form was asked for.</summary>
/// <param name="terminal">Where.</param>
/// <param name="form">The form.</param>
/// <param name="asked">Columns to write in; null leaves it to the terminal.</param>
internal sealed class FormTeller(Terminal terminal, Form form, int? asked)
{
    /// <summary>Tells it.</summary>
    /// <param name="json">It as JSON, without a line end.</param>
    /// <param name="words">It in words: spoken, and for a screen that is too narrow to draw on.</param>
    /// <param name="drawn">It drawn in so many columns; null for what is never drawn.</param>
    /// <param name="leastWidth">The columns that the drawing takes at least.</param>
    public void Tell(Func<string> json, Func<Statements> words, Func<int, Page>? drawn = null, int leastWidth = 0)
    {
        int width = WidthOption.Of(asked, terminal);
        switch (form)
        {
            case Form.Json:
                terminal.Output.Write(json());
                terminal.Output.Write('\n');
                break;
            case Form.Drawn when drawn is not null && width >= leastWidth:
                PagePrinter.Print(drawn(width), terminal);
                break;
            case Form.Drawn:
                PagePrinter.Print(words().Wrapped(width), terminal);
                break;
            default:
                PagePrinter.Print(words().Spoken(), terminal);
                break;
        }
    }
}
