using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Drawing;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Speaking;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Changing;

/// <summary>What a command about whole rigs has to say.</summary>
/// <param name="Json">For programs.</param>
/// <param name="Lines">For people; an empty one is a pause.</param>
/// <param name="Status">The exit status.</param>
internal sealed record Told(string Json, IReadOnlyList<string> Lines, int Status);

/// <summary>Reads the rigs, asks for an answer, and tells it in the form that was asked for; or tells all that is wrong.</summary>
internal static class ChangingTeller
{
    public static int Tell(Terminal terminal, ChangingRequest request, Func<KnownRigs, Told?> answer) => request.Place is null
        ? TellNow(terminal, request, answer)
        : StoreErrors.Guard(request.Form, terminal, () => TellNow(terminal, request, answer));

    private static int TellNow(Terminal terminal, ChangingRequest request, Func<KnownRigs, Told?> answer)
    {
        KnownRigs rigs = KnownRigs.Of(request, terminal);
        if (answer(rigs) is not { } told)
        {
            return InputErrors.Tell(rigs.Errors, rigs.Beyond, request.Form, terminal, "Nothing was planned.");
        }

        if (request.Form == Form.Json)
        {
            terminal.Output.Write(told.Json);
            terminal.Output.Write('\n');
        }
        else
        {
            var statements = Statements.Of(told.Lines);
            PagePrinter.Print(request.Form == Form.Drawn ? statements.Wrapped(WidthOption.Of(request.Width, terminal)) : statements.Spoken(), terminal);
        }

        return told.Status;
    }
}
