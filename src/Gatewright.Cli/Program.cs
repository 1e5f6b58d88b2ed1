using System.CommandLine;
using Gatewright.Cli.Chances;
using Gatewright.Cli.Balances;
using Gatewright.Cli.Changing;
using Gatewright.Cli.CheckShed;
using Gatewright.Cli.Clubs;
using Gatewright.Cli.Clubs.Recording;
using Gatewright.Cli.Gearings;
using Gatewright.Cli.Mend;
using Gatewright.Cli.Oars;
using Gatewright.Cli.PitchThroughStroke;
using Gatewright.Cli.Print;
using Gatewright.Cli.Rigs;
using Gatewright.Cli.Serve;
using Gatewright.Cli.Simulate;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli;

/// <summary>The program: what it can do, each in a folder of its own.</summary>
internal static class Program
{
    public static int Main(string[] args) => Run(args, Terminal.OfThisProcess());

    /// <summary>Runs the program against a terminal, or what stands for one.</summary>
    public static int Run(string[] args, Terminal terminal) => CommandLine.Run(Commands(terminal), args, terminal);

    /// <summary>The commands.</summary>
    public static RootCommand Commands(Terminal terminal) =>
        new("Gatewright reads the pitch of every gate of a shed's boats and says which have to stay ashore, and why.")
        {
            CheckCommand.Of(terminal),
            MendCommand.Of(terminal),
            RigCommand.Of(terminal),
            TargetsCommand.Of(terminal),
            OarsCommand.Of(terminal),
            ChangeCommand.Of(terminal),
            CompareCommand.Of(terminal),
            TravelCommand.Of(terminal),
            RecordCommand.Of(terminal),
            PrintCommand.Of(terminal),
            ClubCommand.Of(terminal),
            ServeCommand.Of(terminal),
            PitchCommand.Of(terminal),
            GearingCommand.Of(terminal),
            BalanceCommand.Of(terminal),
            ChancesCommand.Of(terminal),
            SimulateCommand.Of(terminal),
        };
}
