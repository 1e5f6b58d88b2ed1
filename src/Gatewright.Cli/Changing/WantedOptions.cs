using System.CommandLine;
using Gatewright.Cli.Clubs.Looking;
using Gatewright.Cli.Rigs;
using Gatewright.Core.Rig;

namespace Gatewright.Cli.Changing;

/// <summary>The options that say which rig to come to.</summary>
internal sealed class WantedOptions
{
    private readonly Option<string?> _kept = new("--to") { Description = "A rig that the club keeps under this name.", HelpName = "NAME" };
    private readonly Option<string?> _boat = new("--to-boat") { Description = "The rig of another boat.", HelpName = "NAME" };
    private readonly Option<DateOnly?> _day = new("--to-day") { Description = "The rig it had on a day, as 2026-11-25.", HelpName = "DAY", CustomParser = DayArgument.Read };
    private readonly Option<string?> _crew = CrewOption.Make("--to-crew", $"What a crew wants by its targets: {Crews.Choice}.");
    private readonly Option<bool> _exchange = new("--exchange-riggers")
    {
        Description = "Let riggers that are alike go to other seats of their side, where that needs fewer steps; most are made for one seat.",
    };

    public void AddTo(Command command)
    {
        command.Add(_kept);
        command.Add(_boat);
        command.Add(_day);
        command.Add(_crew);
        command.Add(_exchange);
        command.Validators.Add(result =>
        {
            int given = (result.GetValue(_kept) is null ? 0 : 1) + (result.GetValue(_boat) is null ? 0 : 1)
                + (result.GetValue(_day) is null ? 0 : 1) + (result.GetValue(_crew) is null ? 0 : 1);
            if (given != 1)
            {
                result.AddError("Say which rig to come to, by one of --to, --to-boat, --to-day and --to-crew.");
            }
        });
    }

    public Wanted Of(ParseResult result) => new(
        result.GetValue(_kept), result.GetValue(_boat), result.GetValue(_day), Crews.OfWord(result.GetValue(_crew)), result.GetValue(_exchange));
}
