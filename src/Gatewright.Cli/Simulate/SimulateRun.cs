using Gatewright.Cli.Drawing;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Simulate;

/// <summary>Runs <c>gatewright simulate</c>.</summary>
internal sealed class SimulateRun(Terminal terminal)
{
    public int Run(SimulateRequest request)
    {
        Findings findings = Findings.Of(request);
        int width = WidthOption.Of(request.Width, terminal);
        switch (request.Form)
        {
            case Form.Json:
                terminal.Output.Write(FindingsJson.Of(request, findings));
                terminal.Output.Write('\n');
                break;
            case Form.Drawn when width >= FindingsPage.LeastWidth:
                PagePrinter.Print(FindingsPage.Of(request, findings, width), terminal);
                break;
            case Form.Drawn:
                PagePrinter.Print(FindingsStatements.Of(request, findings).Wrapped(width), terminal);
                break;
            default:
                PagePrinter.Print(FindingsStatements.Of(request, findings).Spoken(), terminal);
                break;
        }

        return ExitStatus.Good;
    }
}
