using Gatewright.Cli.Drawing;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Speaking;
using Gatewright.Cli.Terminals;
using Gatewright.Store.Faults;

namespace Gatewright.Cli.Clubs.Telling;

/// <summary>Runs a command on a club and tells what it comes to.</summary>
internal static class ClubTeller
{
    /// <returns>The exit status.</returns>
    public static async Task<int> TellAsync(Terminal terminal, Manner manner, Func<Task<Answer>> command)
    {
        try
        {
            return await command().ConfigureAwait(false) switch
            {
                Answer.Refused refused => InputErrors.Tell(refused.Errors, refused.Beyond, manner.Form, terminal, refused.So),
                Answer.Done done => Tell(done, terminal, manner),
                _ => throw new InvalidOperationException("There are two answers."),
            };
        }
        catch (StoreException cannot)
        {
            return StoreErrors.Tell(cannot, manner.Form, terminal);
        }
    }

    private static int Tell(Answer.Done done, Terminal terminal, Manner manner)
    {
        var statements = new Statements();
        foreach (string sentence in done.Sentences)
        {
            statements.Add(CellText.Tame(sentence));
        }

        switch (manner.Form)
        {
            case Form.Json:
                terminal.Output.Write(ClubJson.Of(done.Document));
                terminal.Output.Write('\n');
                break;
            case Form.Drawn:
                PagePrinter.Print(statements.Wrapped(WidthOption.Of(manner.Width, terminal)), terminal);
                break;
            default:
                PagePrinter.Print(statements.Spoken(), terminal);
                break;
        }

        return done.Status;
    }
}
