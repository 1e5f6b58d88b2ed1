using Gatewright.Cli.Inputs;
using Gatewright.Cli.Speaking;
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

        new FormTeller(terminal, request.Form, request.Width).Tell(
            () => PitchJson.Of(request.Pitch),
            () => StrokeStatements.Of(request.Pitch, standard),
            width => StrokePage.Of(request.Pitch, standard, width),
            StrokePage.LeastWidth);

        return ExitStatus.Good;
    }
}
