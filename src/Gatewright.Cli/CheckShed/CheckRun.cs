using Gatewright.Cli.CheckShed.InWords;
using Gatewright.Cli.CheckShed.ForPeople;
using Gatewright.Cli.CheckShed.ForPrograms;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Speaking;
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

    private void Tell(ShedCheck shed, CheckRequest request) =>
        new FormTeller(terminal, request.Form, request.Width).Tell(
            () => ShedJson.Of(shed),
            () => ShedStatements.Of(shed, request),
            width => ShedPage.Of(shed, request, width),
            BoatPlan.LeastWidth);
}
