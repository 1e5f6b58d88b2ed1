using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Drawing;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Mend.ForPeople;
using Gatewright.Cli.Mend.InWords;
using Gatewright.Cli.Terminals;
using Gatewright.Journal.Exchange.Check;
using Gatewright.Journal.Exchange.Mend;
using Gatewright.Planning.Told;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Mend;

/// <summary>Runs <c>gatewright mend</c>: read everything, then plan, then tell; or say all that is wrong and plan nothing.</summary>
internal sealed class MendRun(Terminal terminal)
{
    public int Run(MendRequest request) =>
        request.Place is null ? Mend(request) : StoreErrors.Guard(request.Form, terminal, () => Mend(request));

    private int Mend(MendRequest request)
    {
        MendInput input = MendInput.Read(request, terminal);
        if (input.Errors.Count > 0)
        {
            return InputErrors.Tell(input.Errors, input.ErrorsBeyond, request.Form, terminal);
        }

        ShedMend shed = ShedMend.Of(input);
        Tell(shed, request);
        return shed.NeedsAttention ? ExitStatus.Attention : ExitStatus.Good;
    }

    private void Tell(ShedMend shed, MendRequest request)
    {
        int width = WidthOption.Of(request.Width, terminal);
        switch (request.Form)
        {
            case Form.Json:
                terminal.Output.Write(MendJson.Text(PlanDocument.Of(shed.Plan, shed.Check.Standard, shed.Stores, shed.Check.Warnings.Select(CheckedProblem.Of), English)));
                terminal.Output.Write('\n');
                break;
            case Form.Drawn when width >= MendPage.LeastWidth:
                PagePrinter.Print(MendPage.Of(shed, width), terminal);
                break;
            case Form.Drawn:
                PagePrinter.Print(MendStatements.Of(shed).Wrapped(width), terminal);
                break;
            default:
                PagePrinter.Print(MendStatements.Of(shed).Spoken(), terminal);
                break;
        }
    }
}
