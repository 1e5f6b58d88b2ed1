using Gatewright.Cli.Drawing;
using Gatewright.Cli.Terminals;
using Gatewright.Journal.Exchange.Check;
using Gatewright.Store.Faults;

namespace Gatewright.Cli.Clubs.Telling;

/// <summary>Tells that a store cannot be used, and what to do.</summary>
internal static class StoreErrors
{
    /// <summary>Runs what works on a store.</summary>
    /// <returns>Its exit status, or that of a store that cannot be used.</returns>
    public static int Guard(Form form, Terminal terminal, Func<int> run)
    {
        try
        {
            return run();
        }
        catch (StoreException cannot)
        {
            return Tell(cannot, form, terminal);
        }
    }

    /// <returns>The exit status.</returns>
    public static int Tell(StoreException cannot, Form form, Terminal terminal)
    {
        if (form == Form.Json)
        {
            var problem = CheckedProblem.Of(new("store", null, null, null, cannot.Message));
            terminal.Output.Write(CheckJson.Text(new ProblemsDocument(ProblemsDocument.Name, [problem], 0)));
            terminal.Output.Write('\n');
        }

        terminal.Error.Write(CellText.Tame(cannot.Message) + "\n");
        return ExitStatus.StoreUnusable;
    }
}
