using Gatewright.Server.Hosting;
using Gatewright.Store;
using Gatewright.Store.Opening;

namespace Gatewright.Server.Starting;

/// <summary>What was asked for on the command line.</summary>
internal sealed record ServeRequest(
    string? Data,
    string? Database,
    IReadOnlyList<string> Listen,
    string? PublicAddress,
    bool IsBehindProxy,
    bool Demo,
    bool LogsAsJson)
{
    /// <summary>Whether a link for a further club is asked for, and nothing else.</summary>
    public bool NewClub { get; init; }

    /// <summary>The club on record to which a link for a keeper is asked for, if that is asked for and nothing else.</summary>
    public string? KeeperOf { get; init; }

    /// <summary>Whether something is to be done once, and no server started.</summary>
    public bool IsOnce => NewClub || KeeperOf is not null || NewPassword is not null;

    /// <summary>Whose password is to be set anew, if that is asked for and nothing else.</summary>
    public string? NewPassword { get; init; }

    /// <summary>The options it makes, or everything that is wrong with it.</summary>
    public (ServeOptions? Options, IReadOnlyList<string> Problems) Read(StoreLocation? demo)
    {
        var problems = new List<string>();
        List<Uri> listen = [.. Listen.Select(text => Address("--listen", text, problems)).OfType<Uri>()];
        Uri? seen = PublicAddress is null ? null : Address("--public-address", PublicAddress, problems);
        if (Data is not null && Database is not null)
        {
            problems.Add("--data and --database: a store is in one place; give one of them.");
        }

        bool isLoopback = listen.All(u => u.IsLoopback);
        if (Demo && (Data ?? Database) is not null)
        {
            problems.Add("--demo makes a store of its own: leave out --data and --database.");
        }

        if (Demo && (!isLoopback || seen is not null))
        {
            problems.Add("--demo lets in whoever asks, so it is for this machine alone: leave out --listen and --public-address.");
        }

        if (Demo && IsOnce)
        {
            problems.Add("--demo is thrown away when it ends: --new-club, --keeper-of and --new-password are for a store that is kept.");
        }

        if (!isLoopback && PublicAddress is null)
        {
            problems.Add("--listen reaches beyond this machine: say with --public-address what people type, such as https://gates.example.org.");
        }

        if (seen is { IsLoopback: false } && seen.Scheme != Uri.UriSchemeHttps)
        {
            problems.Add($"--public-address {seen}: passwords travel over https alone; put a reverse proxy with a certificate before it.");
        }

        if (problems.Count > 0)
        {
            return (null, problems);
        }

        StoreLocation location = demo ?? (Database is null ? DataFolder.Locate(Data) : StoreLocation.Server(Database));
        return (new(location, listen, seen, IsBehindProxy, Demo, LogsAsJson), problems);
    }

    private static Uri? Address(string option, string text, List<string> problems)
    {
        if (Uri.TryCreate(text, UriKind.Absolute, out Uri? address) && (address.Scheme == Uri.UriSchemeHttp || address.Scheme == Uri.UriSchemeHttps)
            && address is { PathAndQuery: "/", Host.Length: > 0 })
        {
            return address;
        }

        problems.Add($"{option} {text}: an address such as http://127.0.0.1:5380, without a path.");
        return null;
    }
}
