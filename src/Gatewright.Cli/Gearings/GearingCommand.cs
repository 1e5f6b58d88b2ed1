using System.CommandLine;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Rigs;
using Gatewright.Cli.Terminals;
using Gatewright.Core;
using Gatewright.Core.Rig;
using Gatewright.Core.Stroke;
using Gatewright.Journal.Exchange.Gearings;

namespace Gatewright.Cli.Gearings;

/// <summary>The grammar of <c>gatewright gearing</c>.</summary>
internal static class GearingCommand
{
    private static readonly (string Name, RigMeasure Measure, string Description)[] Figures =
    [
        ("--spread", RigMeasure.Spread, "Sweep: from the keel line to the pin."),
        ("--span", RigMeasure.Span, "Sculling: from pin to pin."),
        ("--inboard", RigMeasure.Inboard, "From the handle's end to the collar's face."),
        ("--oar-length", RigMeasure.OarLength, "The whole oar."),
        ("--work-through", RigMeasure.WorkThrough, "How far the seat at full slide passes the pins."),
    ];

    public static Command Of(Terminal terminal)
    {
        var files = new Argument<string[]>("FILE")
        {
            Description = "Files with measures of the rig; - or a pipe is standard input. Without one, the figures given and a class's targets.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var boat = new Option<string?>("--boat") { Description = "The boat of this name.", HelpName = "NAME" };
        var seat = new Option<int>("--seat") { Description = "The seat, from the bow.", HelpName = "SEAT", DefaultValueFactory = _ => 1 };
        var boatClass = new Option<string?>("--class") { Description = "The class whose targets stand for what is not given.", HelpName = "CLASS" };
        boatClass.AcceptOnlyFromAmong([.. BoatClass.All.Select(c => c.Name)]);
        Option<string?> crew = CrewOption.Make($"Whose targets: {Crews.Choice}.");
        Option<double?>[] figures = [.. Figures.Select(f => Centimetres(f.Name, f.Description))];
        Option<double?> atCatch = Centimetres("--reach-catch", "How far the hands get beyond the heels to the stern, straight ahead.");
        Option<double?> atFinish = Centimetres("--reach-finish", "How far from the heels to the bow the hands are at the finish.");
        Option<double?> arms = Centimetres("--arms", "From the shoulder to the middle of the hands.");
        var change = new Option<RigStep[]>("--change")
        {
            Description = "What a change does: a measure, = and by how many centimetres, as in spread=-1. Again for a joint change.",
            HelpName = "MEASURE=CM",
            CustomParser = NamedNumber.Steps,
        };
        var want = new Option<WrittenWish[]>("--want")
        {
            Description = "Which change gives what is wanted: catch=+2, load=+1% or finish=35. Again for another wish.",
            HelpName = "FIGURE=VALUE",
            CustomParser = NamedNumber.Wishes,
        };
        var allow = new Option<WrittenBounds[]>("--allow")
        {
            Description = "What may be set for a wish: a measure, and where it is not as far as usual, from where to where, as in inboard=113..117. Again for another measure.",
            HelpName = "MEASURE[=CM..CM]",
            CustomParser = NamedNumber.Allowed,
        };
        var store = StoreOptions.OfAClub(StoreOptions.InsteadOfFiles);
        var form = new FormOptions();
        Option<int?> width = WidthOption.Make();
        var command = new Command(
            "gearing",
            "Gearing, lever, overlap and arc of a seat, from its measures, from figures or from a class's targets; what a change does to them, and which change gives what is wanted.")
        {
            files, boat, seat, boatClass, crew, atCatch, atFinish, arms, change, want, allow, width,
        };
        foreach (Option<double?> figure in figures)
        {
            command.Add(figure);
        }

        store.AddTo(command);
        store.Exclude(command, files);
        form.AddTo(command);
        MistypedOption.Refuse(command, files);
        command.SetAction(result => new GearingRun(terminal).Run(new(
            result.GetValue(files) ?? [],
            store.OfGiven(result),
            result.GetValue(boat),
            result.GetValue(seat),
            result.GetValue(boatClass) is { } name ? BoatClass.Parse(name) : null,
            Crews.OfWord(result.GetValue(crew)),
            Given(result, figures),
            new(result.GetValue(atCatch), result.GetValue(atFinish), result.GetValue(arms)),
            result.GetValue(change) ?? [],
            result.GetValue(want) ?? [],
            result.GetValue(allow) ?? [],
            form.Of(result),
            result.GetValue(width))));
        return command;
    }

    private static Dictionary<RigMeasure, double> Given(ParseResult result, Option<double?>[] figures)
    {
        var given = new Dictionary<RigMeasure, double>();
        for (int i = 0; i < figures.Length; i++)
        {
            if (result.GetValue(figures[i]) is { } value)
            {
                given.Add(Figures[i].Measure, value);
            }
        }

        return given;
    }

    private static Option<double?> Centimetres(string name, string description)
    {
        (double least, double most) = Array.Find(Figures, f => f.Name == name) is { Name: not null } figure
            ? figure.Measure.Plausible()
            : (-50, 250);
        Func<System.CommandLine.Parsing.ArgumentResult, double> parser = NumberArgument.Within(least, most, "centimetres");
        return new(name) { Description = description, HelpName = "CM", CustomParser = result => parser(result) };
    }
}
