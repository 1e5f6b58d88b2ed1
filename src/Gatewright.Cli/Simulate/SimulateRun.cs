using Gatewright.Cli.Drawing;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Exchange;
using Gatewright.Journal.Learning;

namespace Gatewright.Cli.Simulate;

/// <summary>Runs <c>gatewright simulate</c>.</summary>
internal sealed class SimulateRun(Terminal terminal)
{
    public int Run(SimulateRequest request)
    {
        var errors = new List<InputProblem>();
        ClubChances table = ChancesChoice.Read(request.Chances, errors);
        if (errors.Count > 0)
        {
            return InputErrors.Tell(errors, 0, request.Form, terminal, "Nothing was simulated.");
        }

        Findings findings = Findings.Of(request, table.In(DiagnosingSettings.Default));
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
