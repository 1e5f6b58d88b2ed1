using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Mend.ForPeople;
using Gatewright.Cli.Mend.InWords;
using Gatewright.Cli.Speaking;
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

    private void Tell(ShedMend shed, MendRequest request) =>
        new FormTeller(terminal, request.Form, request.Width).Tell(
            () => MendJson.Text(PlanDocument.Of(shed.Plan, shed.Check.Standard, shed.Stores, shed.Check.Warnings.Select(CheckedProblem.Of), English)),
            () => MendStatements.Of(shed),
            width => MendPage.Of(shed, width),
            MendPage.LeastWidth);
}
