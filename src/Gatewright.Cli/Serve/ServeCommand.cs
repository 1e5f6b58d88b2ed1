using System.CommandLine;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Serve;

/// <summary>
/// <c>gatewright serve</c> is a program of its own, which the command at the root starts without coming here; this says so
/// to whoever runs this program alone.
/// </summary>
internal static class ServeCommand
{
    private const string How =
        "The server is a program of its own. ./gatewright serve starts it, and ./gatewright serve --help says how; "
        + "where it is published, it is dotnet gatewright-server.dll.\n";

    public static Command Of(Terminal terminal)
    {
        var command = new Command(
            "serve",
            "Start the server, a program of its own: a club's boats, readings and jobs, kept for good and shared. gatewright serve --help has its options.")
        {
            TreatUnmatchedTokensAsErrors = false,
        };
        command.SetAction(_ =>
        {
            terminal.Error.Write(How);
            return ExitStatus.WrongInput;
        });
        return command;
    }
}
