using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Drawing;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Rigs.ForPeople;
using Gatewright.Cli.Rigs.InWords;
using Gatewright.Cli.Speaking;
using Gatewright.Cli.Terminals;
using Gatewright.Journal.Exchange.Check;

namespace Gatewright.Cli.Rigs;

/// <summary>Runs <c>gatewright rig</c>: read everything, then judge, then tell; or say all that is wrong and judge nothing.</summary>
internal sealed class RigRun(Terminal terminal)
{
    public int Run(RigRequest request) =>
        request.Place is null ? Show(request) : StoreErrors.Guard(request.Form, terminal, () => Show(request));

    private int Show(RigRequest request)
    {
        RigInput input = RigInput.Read(request, terminal);
        if (input.Errors.Count > 0)
        {
            return InputErrors.Tell(input.Errors, input.Beyond, request.Form, terminal);
        }

        Tell(input, request);
        return input.Rigs.Any(r => r.NeedsAttention) ? ExitStatus.Attention : ExitStatus.Good;
    }

    private void Tell(RigInput input, RigRequest request) =>
        new FormTeller(terminal, request.Form, request.Width).Tell(
            () => CheckJson.Text(new RigDocument(
                RigDocument.Name, [.. input.Rigs.Select(r => r.Written)], [.. input.Warnings.Select(CheckedProblem.Of)])),
            () => InWords(input, request.InInches),
            width => Drawn(input, width, request.InInches),
            RigSection.LeastWidth(request.InInches));

    private static Page Drawn(RigInput input, int width, bool inInches)
    {
        var page = new Page(width);
        foreach (ShedRig rig in input.Rigs)
        {
            RigSection.Write(page, rig, inInches);
        }

        foreach (string warning in input.Warnings.Select(w => w.ToString()))
        {
            page.Paragraph(warning, 1, new Line().Add(" ").Add("warning ", Ink.Strong));
        }

        page.Paragraph(Words.Wording.English.Rig.Precedence);
        return page;
    }

    private static Statements InWords(RigInput input, bool inInches)
    {
        var statements = new Statements();
        foreach (ShedRig rig in input.Rigs)
        {
            RigStatements.Add(statements, rig, inInches);
        }

        foreach (string warning in input.Warnings.Select(w => w.ToString()))
        {
            statements.Add($"Warning: {warning}");
        }

        statements.Add(Words.Wording.English.Rig.Precedence);
        return statements;
    }
}
