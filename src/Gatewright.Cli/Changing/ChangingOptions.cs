using System.CommandLine;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;

namespace Gatewright.Cli.Changing;

/// <summary>What the commands about whole rigs take alike: files or a club, a boat, a form, a width.</summary>
internal sealed class ChangingOptions(string boat)
{
    private readonly Argument<string[]> _files = new("FILE")
    {
        Description = "Files of readings with measures of the rig; - or a pipe is standard input.",
        Arity = ArgumentArity.ZeroOrMore,
    };

    private readonly Option<string?> _boat = new("--boat") { Description = boat, HelpName = "NAME" };
    private readonly StoreOptions _store = StoreOptions.OfAClub(StoreOptions.InsteadOfFiles);
    private readonly FormOptions _form = new("docs/changing-a-rig.md");
    private readonly Option<int?> _width = WidthOption.Make();

    public void AddTo(Command command)
    {
        command.Add(_files);
        command.Add(_boat);
        command.Add(_width);
        _store.AddTo(command);
        _store.Exclude(command, _files);
        _form.AddTo(command);
        MistypedOption.Refuse(command, _files);
    }

    public ChangingRequest Of(ParseResult result) => new(
        $"gatewright {result.CommandResult.Command.Name}",
        result.GetValue(_files) ?? [],
        result.GetValue(_boat),
        _store.OfGiven(result),
        _form.Of(result),
        result.GetValue(_width));
}
