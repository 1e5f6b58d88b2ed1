using System.CommandLine;
using Gatewright.Cli.Changing.Kept;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Changing;

/// <summary>The grammar of <c>gatewright change</c>.</summary>
internal static class ChangeCommand
{
    public static Command Of(Terminal terminal)
    {
        var options = new ChangingOptions("The boat to change; it may be left out where there is one.");
        var wanted = new WantedOptions();
        var command = new Command(
            "change",
            "Plan the way from a boat's rig to another: the fewest steps in working order, with parts, what each does, and what to read again. keep puts it among a club's jobs. Exit status: 0 nothing to do, 1 there is, 2 the input is wrong, 74 the store cannot be used.")
        {
            KeepCommand.Of(terminal),
            KeptCommands.List(terminal),
            KeptCommands.Show(terminal),
            KeptCommands.Done(terminal),
            KeptCommands.Close(terminal),
            KeptCommands.Drop(terminal),
        };
        wanted.AddTo(command);
        options.AddTo(command);
        command.SetAction(result =>
        {
            ChangingRequest request = options.Of(result);
            return ChangingTeller.Tell(terminal, request, rigs => ChangeRun.Told(rigs, request.Boat, wanted.Of(result)));
        });
        return command;
    }
}
