using System.CommandLine;
using System.CommandLine.Parsing;

namespace Gatewright.Cli.Inputs;

/// <summary>The <c>--data</c>, <c>--database</c> and <c>--club</c> of every command that works on a store.</summary>
internal sealed class StoreOptions
{
    /// <summary>What --club says where a store may stand in place of files.</summary>
    public const string InsteadOfFiles = "A club in a store instead of files: its id, which may be left out with --data or --database where the store has one club.";

    private const string DatabaseVariable = "GATEWRIGHT_DATABASE";

    private readonly Option<string?> _data = new("--data")
    {
        Description = "The folder the store is kept in; without it, the user's data folder.",
        HelpName = "FOLDER",
    };

    private readonly Option<string?> _database = new("--database")
    {
        Description = $"A PostgreSQL store instead, as \"Host=…;Database=…;Username=…\"; the environment variable {DatabaseVariable} keeps a password out of the list of processes.",
        HelpName = "CONNECTION",
    };

    private readonly Option<string?>? _club;

    private StoreOptions(Option<string?>? club) => _club = club;

    /// <summary>Those of a command that works on one club.</summary>
    public static StoreOptions OfAClub(string description = "The club's id; it may be left out where the store has one club.") =>
        new(new("--club") { Description = description, HelpName = "ID" });

    /// <summary>Those of a command that works on the whole store.</summary>
    public static StoreOptions OfAStore() => new(null);

    public void AddTo(Command command)
    {
        command.Add(_data);
        command.Add(_database);
        if (_club is not null)
        {
            command.Add(_club);
        }

        command.Validators.Add(result =>
        {
            if (result.GetValue(_data) is not null && result.GetValue(_database) is not null)
            {
                result.AddError("--data and --database: a store is in one place; give one of them.");
            }
        });
    }

    /// <summary>Whether any of them was given on the command line.</summary>
    public bool AreGiven(CommandResult result) =>
        (result.GetValue(_data) ?? result.GetValue(_database) ?? (_club is null ? null : result.GetValue(_club))) is not null;

    /// <summary>They and files exclude each other.</summary>
    public void Exclude(Command command, Argument<string[]> files) => command.Validators.Add(result =>
    {
        if (AreGiven(result) && result.GetValue(files) is { Length: > 0 })
        {
            result.AddError("FILE and a club in a store exclude each other: leave out one of them.");
        }
    });

    /// <summary>What they name; null where none of them was given, whatever the environment has.</summary>
    public StorePlace? OfGiven(ParseResult result) => AreGiven(result.CommandResult) ? Of(result) : null;

    /// <summary>What they name. What is said on the command line comes before the environment.</summary>
    public StorePlace Of(ParseResult result)
    {
        string? data = result.GetValue(_data);
        string? database = result.GetValue(_database);
        return new(
            data,
            database ?? (data is null && Environment.GetEnvironmentVariable(DatabaseVariable) is { Length: > 0 } kept ? kept : null),
            _club is null ? null : result.GetValue(_club));
    }
}
