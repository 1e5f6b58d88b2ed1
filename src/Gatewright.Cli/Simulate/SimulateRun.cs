using Gatewright.Cli.Inputs;
using Gatewright.Cli.Speaking;
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
        new FormTeller(terminal, request.Form, request.Width).Tell(
            () => FindingsJson.Of(request, findings),
            () => FindingsStatements.Of(request, findings),
            width => FindingsPage.Of(request, findings, width),
            FindingsPage.LeastWidth);

        return ExitStatus.Good;
    }
}
