using System.CommandLine;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Words;

namespace Gatewright.Cli.Changing.Kept;

/// <summary>The grammar of <c>gatewright change keep</c>.</summary>
internal static class KeepCommand
{
    public static Command Of(Terminal terminal)
    {
        var boat = new Option<string?>("--boat") { Description = "The boat to change; it may be left out where there is one.", HelpName = "NAME" };
        var wanted = new WantedOptions();
        Option<string> member = KeptCommands.Member("The id of the member who plans it.");
        var language = new Option<string>("--language")
        {
            Description = "The language it is planned in; its steps are read in every other one too.",
            HelpName = "LANGUAGE",
            DefaultValueFactory = _ => Language.English.Tag,
        };
        language.AcceptOnlyFromAmong([.. Language.All.Select(l => l.Tag)]);
        var store = StoreOptions.OfAClub();
        var manner = new MannerOptions();
        var command = new Command(
            "keep",
            "Plan a change of a boat's rig and put it among the club's jobs, for good. Exit status: 0 it is, or nothing is to be done, 2 the input is wrong, 74 the store cannot be used.")
        {
            boat, member, language,
        };
        wanted.AddTo(command);
        store.AddTo(command);
        manner.AddTo(command);
        command.SetAction((result, _) => ClubTeller.TellAsync(terminal, manner.Of(result), () => KeepRun.RunAsync(
            terminal,
            store.Of(result),
            result.GetValue(boat),
            wanted.Of(result),
            result.GetValue(member)!,
            Wording.In(Language.Of(result.GetValue(language))))));
        return command;
    }
}
