using System.CommandLine;
using Gatewright.Cli.Inputs;
using Gatewright.Cli.Terminals;
using Gatewright.Core;
using Gatewright.Core.Geometry;

namespace Gatewright.Cli.PitchThroughStroke;

/// <summary>The grammar of <c>gatewright pitch</c>.</summary>
internal static class PitchCommand
{
    private const double MostDegrees = 20;

    public static Command Of(Terminal terminal)
    {
        Option<double> gate = Degrees("--gate", "The pitch built into gate and insert.", 4);
        Option<double> aft = Degrees("--aft", "The pin's lean to the stern; forward is negative.");
        Option<double> leanOut = Degrees("--out", "The pin's lean away from the hull; in is negative.");
        Option<double> sleeve = Degrees("--sleeve", "The angle that the oar's sleeve adds to the blade.");
        Option<double> bowHigh = Degrees("--bow-high", "How far the bow is high, as the boat lies.");
        Option<double> portLow = Degrees("--port-low", "How far the port side is low, as the boat lies.");
        Option<string> side = OneOf("--side", "The side of the gate.", "port", "starboard");
        Option<string> lie = OneOf("--lie", "How the boat lies.", "upright", "inverted");
        Option<string> rowing = OneOf("--rowing", "How it is rowed, which sets catch and finish.", "sweep", "scull");
        Option<string> standard = StandardOption.Make();
        var form = new FormOptions();
        Option<int?> width = WidthOption.Make();

        var command = new Command("pitch", "What a gate and its pin make of the pitch through the stroke, exactly, and what a gauge shows of it.")
        {
            gate, aft, leanOut, side, rowing, sleeve, lie, bowHigh, portLow, standard, width,
        };
        form.AddTo(command);
        command.SetAction(result => new PitchRun(terminal).Run(new(
            new StrokePitch(
                GateState.FromDegrees(result.GetValue(gate), result.GetValue(aft), result.GetValue(leanOut)),
                result.GetValue(side) == "port" ? Side.Port : Side.Starboard,
                result.GetValue(rowing) == "sweep" ? Rowing.Sweep : Rowing.Scull,
                HullAttitude.FromDegrees(result.GetValue(bowHigh), result.GetValue(portLow)),
                result.GetValue(lie) == "upright" ? Lie.Upright : Lie.Inverted,
                SleeveError.FromDegrees(result.GetValue(sleeve))),
            result.GetValue(standard)!,
            form.Of(result),
            result.GetValue(width))));
        return command;
    }

    private static Option<double> Degrees(string name, string description, double usual = 0) => new(name)
    {
        Description = description,
        HelpName = "DEGREES",
        DefaultValueFactory = _ => usual,
        CustomParser = NumberArgument.Within(-MostDegrees, MostDegrees, "degrees"),
    };

    private static Option<string> OneOf(string name, string description, string usual, string other)
    {
        var option = new Option<string>(name)
        {
            Description = description,
            HelpName = $"{usual}|{other}",
            DefaultValueFactory = _ => usual,
        };
        option.AcceptOnlyFromAmong(usual, other);
        return option;
    }
}
