using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Core;

namespace Gatewright.Cli.Simulate;

/// <summary>The grammar of <c>gatewright simulate</c>.</summary>
internal static class SimulateCommand
{
    private const int LeastBoats = 10;
    private const int MostBoats = 10_000;
    private const int MostSeed = 1_000_000;

    public static Command Of(Terminal terminal)
    {
        Option<int> boats = Whole("--boats", "How many boats to draw: more take longer and tell more exactly.", "NUMBER", LeastBoats, MostBoats, 100);
        Option<int> seed = Whole("--seed", "Where the random numbers begin: the same seed draws the same boats.", "NUMBER", 0, MostSeed, 1);
        Option<string> boatClass = OneOf("--class", "The class of the boats.", "CLASS", "8+", [.. BoatClass.All.Select(c => c.Name)]);
        Option<string[]> stations = new("--stations")
        {
            Description = "Where each gate is read, one or several.",
            HelpName = "catch|abeam|finish",
            AllowMultipleArgumentsPerToken = true,
            DefaultValueFactory = _ => [.. Words],
        };
        stations.AcceptOnlyFromAmong(Words);
        Option<string> first = OneOf("--first", "The round after which the advice is followed.", "catch|abeam|finish", "abeam", Words);
        Option<string?> chances = ChancesOption.Make();
        var form = new FormOptions();
        Option<int?> width = WidthOption.Make();

        var command = new Command(
            "simulate",
            "Draw boats with known faults, read them as people do, and say how often the true fault is found, whether the probabilities hold, and what following the advice saves.")
        {
            boats, boatClass, stations, first, seed, chances, width,
        };
        form.AddTo(command);
        command.SetAction(result => new SimulateRun(terminal).Run(new(
            result.GetValue(boats),
            BoatClass.Parse(result.GetValue(boatClass)!),
            [.. Stations.All.Where(s => result.GetValue(stations)!.Contains(s.Word()))],
            Stations.All.Single(s => s.Word() == result.GetValue(first)),
            result.GetValue(seed),
            result.GetValue(chances),
            form.Of(result),
            result.GetValue(width))));
        return command;
    }

    private static string[] Words => [.. Stations.All.Select(s => s.Word())];

    private static Option<int> Whole(string name, string description, string helpName, int least, int most, int usual) => new(name)
    {
        Description = description,
        HelpName = helpName,
        DefaultValueFactory = _ => usual,
        CustomParser = result => WholeNumber(result, least, most),
    };

    private static int WholeNumber(ArgumentResult result, int least, int most)
    {
        string text = result.Tokens[0].Value;
        if (!int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) || number < least || number > most)
        {
            result.AddError($"{((OptionResult)result.Parent!).Option.Name}: '{text}' is not a whole number from {least} to {most}.");
        }

        return number;
    }

    private static Option<string> OneOf(string name, string description, string helpName, string usual, string[] words)
    {
        var option = new Option<string>(name)
        {
            Description = description,
            HelpName = helpName,
            DefaultValueFactory = _ => usual,
        };
        option.AcceptOnlyFromAmong(words);
        return option;
    }
}
