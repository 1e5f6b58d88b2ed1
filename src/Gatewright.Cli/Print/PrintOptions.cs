using System.CommandLine;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Words;

namespace Gatewright.Cli.Print;

/// <summary>What every part of <c>gatewright print</c> takes.</summary>
internal sealed class PrintOptions
{
    private readonly Argument<string[]> _files = new("FILE")
    {
        Description = "Files of readings, all of one shed; - or a pipe is standard input.",
        Arity = ArgumentArity.ZeroOrMore,
    };

    private readonly Option<string> _output;

    private readonly Option<bool> _replace = new("--replace") { Description = "Replace what is there by that name." };

    private readonly Option<string[]> _boats = new("--boat")
    {
        Description = "Only the boat of this name; give it again for another.",
        HelpName = "NAME",
    };

    private readonly Option<string> _language = new("--language")
    {
        Description = "The language on paper.",
        HelpName = "en|de",
        DefaultValueFactory = _ => Words.Language.English.Tag,
    };

    private readonly Option<string?> _standard = StandardOption.MakeForAShed();
    private readonly StoreOptions _store = StoreOptions.OfAClub(StoreOptions.InsteadOfFiles);
    private readonly MannerOptions _manner = new();

    public PrintOptions(string output = "FILE.pdf")
    {
        _output = new("--output", "-o") { Description = "The file to write.", HelpName = output, Required = true };
        _language.AcceptOnlyFromAmong([.. Words.Language.All.Select(l => l.Tag)]);
    }

    /// <summary>Gives them to a command, and says what it does.</summary>
    public void Set(Command command, Terminal terminal, Func<ParseResult, PrintWork> work)
    {
        command.Add(_files);
        command.Add(_output);
        command.Add(_boats);
        command.Add(_standard);
        command.Add(_language);
        command.Add(_replace);
        _store.AddTo(command);
        _store.Exclude(command, _files);
        _manner.AddTo(command);
        MistypedOption.Refuse(command, _files);
        command.SetAction((result, cancellation) => ClubTeller.TellAsync(terminal, _manner.Of(result), () =>
            new PrintRun(terminal).RunAsync(Of(result), work(result), cancellation)));
    }

    private PrintRequest Of(ParseResult result) => new(
        result.GetValue(_files) ?? [],
        _store.OfGiven(result),
        result.GetValue(_boats) ?? [],
        result.GetValue(_output)!,
        result.GetValue(_replace),
        Language.Of(result.GetValue(_language)))
    {
        Standard = result.GetValue(_standard),
    };
}
