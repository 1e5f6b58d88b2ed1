using System.CommandLine;

namespace Gatewright.Server.Starting;

/// <summary>The grammar of <c>gatewright serve</c>.</summary>
internal static class ServeCommand
{
    private const string UsualAddress = "http://127.0.0.1:5380";

    public static RootCommand Of(Func<ServeRequest, CancellationToken, Task<int>> run)
    {
        var data = new Option<string?>("--data")
        {
            Description = "The folder the store is kept in; without it, the user's data folder.",
            HelpName = "FOLDER",
        };
        var database = new Option<string?>("--database")
        {
            Description = "A PostgreSQL store instead, as \"Host=…;Database=…;Username=…\"; the environment variable GATEWRIGHT_DATABASE keeps a password out of the list of processes.",
            HelpName = "CONNECTION",
        };
        var listen = new Option<string[]>("--listen")
        {
            Description = $"Where to listen; give it again for another address. Without it {UsualAddress}, this machine alone.",
            HelpName = "URL",
        };
        var publicAddress = new Option<string?>("--public-address")
        {
            Description = "What people type to reach it, such as https://gates.example.org: links are made with it.",
            HelpName = "URL",
        };
        var proxy = new Option<bool>("--behind-proxy")
        {
            Description = "A reverse proxy on this machine stands before it: take its word on address and scheme.",
        };
        var demo = new Option<bool>("--demo")
        {
            Description = "Open the demo shed, for this machine alone; nothing is kept.",
        };
        var json = new Option<bool>("--log-json") { Description = "Each line of the log as a JSON object." };
        var newClub = new Option<bool>("--new-club")
        {
            Description = "Make a link for the first keeper of a further club, show it, and end; a server may go on running meanwhile.",
        };
        var keeperOf = new Option<string?>("--keeper-of")
        {
            Description = "Make a link for a keeper of this club, which was recorded from a terminal or whose keepers are gone, show it, and end.",
            HelpName = "ID",
        };
        var newPassword = new Option<string?>("--new-password")
        {
            Description = "Set the password of the account that signs in by this name to a new one, show it, and end.",
            HelpName = "NAME",
        };
        var command = new RootCommand("Start the server: a club's boats, readings and jobs, kept for good and shared.")
        {
            data, database, listen, publicAddress, proxy, demo, json, newClub, keeperOf, newPassword,
        };
        command.SetAction((result, cancellation) => run(
            new(
                result.GetValue(data),
                result.GetValue(database) ?? Environment.GetEnvironmentVariable("GATEWRIGHT_DATABASE"),
                result.GetValue(listen) is { Length: > 0 } given ? given : [UsualAddress],
                result.GetValue(publicAddress),
                result.GetValue(proxy),
                result.GetValue(demo),
                result.GetValue(json))
            {
                NewClub = result.GetValue(newClub),
                KeeperOf = result.GetValue(keeperOf),
                NewPassword = result.GetValue(newPassword),
            },
            cancellation));
        return command;
    }
}
