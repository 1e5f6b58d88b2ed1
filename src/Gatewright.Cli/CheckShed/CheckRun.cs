using Gatewright.Cli.CheckShed.InWords;
using Gatewright.Cli.CheckShed.ForPeople;
using Gatewright.Cli.CheckShed.ForPrograms;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Drawing;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.CheckShed;

/// <summary>Runs <c>gatewright check</c>: read everything, then judge, then tell; or say all that is wrong and judge nothing.</summary>
internal sealed class CheckRun(Terminal terminal)
{
    public int Run(CheckRequest request) =>
        request.Place is null ? Check(request) : StoreErrors.Guard(request.Form, terminal, () => Check(request));

    private int Check(CheckRequest request)
    {
        ShedInput input = ShedInput.Read(
            new("gatewright check", request.Files, request.Standard, request.Chances, request.Boats, request.Place), terminal);
        if (input.Errors.Count > 0)
        {
            return InputErrors.Tell(input.Errors, input.ErrorsBeyond, request.Form, terminal);
        }

        ShedCheck shed = ShedCheck.Of(input);
        Tell(shed, request);
        return shed.NeedsAttention ? ExitStatus.Attention : ExitStatus.Good;
    }

    private void Tell(ShedCheck shed, CheckRequest request)
    {
        int width = WidthOption.Of(request.Width, terminal);
        switch (request.Form)
        {
            case Form.Json:
                terminal.Output.Write(ShedJson.Of(shed));
                terminal.Output.Write('\n');
                break;
            case Form.Drawn when width >= BoatPlan.LeastWidth:
                PagePrinter.Print(ShedPage.Of(shed, request, width), terminal);
                break;
            case Form.Drawn:
                PagePrinter.Print(ShedStatements.Of(shed, request).Wrapped(width), terminal);
                break;
            default:
                PagePrinter.Print(ShedStatements.Of(shed, request).Spoken(), terminal);
                break;
        }
    }
}
