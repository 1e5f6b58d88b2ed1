using Gatewright.Cli.Drawing;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Core.Judging;
using Gatewright.Journal.Exchange;

namespace Gatewright.Cli.PitchThroughStroke;

/// <summary>Runs <c>gatewright pitch</c>.</summary>
internal sealed class PitchRun(Terminal terminal)
{
    public int Run(PitchRequest request)
    {
        (Standard? standard, IReadOnlyList<InputProblem> errors, _) = StandardChoice.Read(request.Standard, Standard.BuiltIn);
        if (standard is null)
        {
            return InputErrors.Tell(errors, 0, request.Form, terminal);
        }

        int width = WidthOption.Of(request.Width, terminal);
        switch (request.Form)
        {
            case Form.Json:
                terminal.Output.Write(PitchJson.Of(request.Pitch));
                terminal.Output.Write('\n');
                break;
            case Form.Drawn when width >= StrokePage.LeastWidth:
                PagePrinter.Print(StrokePage.Of(request.Pitch, standard, width), terminal);
                break;
            case Form.Drawn:
                PagePrinter.Print(StrokeStatements.Of(request.Pitch, standard).Wrapped(width), terminal);
                break;
            default:
                PagePrinter.Print(StrokeStatements.Of(request.Pitch, standard).Spoken(), terminal);
                break;
        }

        return ExitStatus.Good;
    }
}
