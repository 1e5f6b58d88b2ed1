using System.CommandLine;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Terminals;
using Gatewright.Journal.Exchange;
using Gatewright.Printing.Labels;

namespace Gatewright.Cli.Print;

/// <summary>The grammar of <c>gatewright print labels</c>.</summary>
internal static class LabelsPart
{
    public static Command Of(Terminal terminal)
    {
        var kind = new Option<string>("--of")
        {
            Description = "What for.",
            HelpName = string.Join('|', LabelKinds.All.Select(k => k.Word())),
            DefaultValueFactory = _ => LabelKind.Boats.Word(),
        };
        kind.AcceptOnlyFromAmong([.. LabelKinds.All.Select(k => k.Word())]);
        var format = new Option<string>("--format")
        {
            Description = "Width by height of a label in millimetres, rounded.",
            HelpName = string.Join('|', LabelFormat.All.Select(f => f.Name)),
            DefaultValueFactory = _ => LabelFormat.All[0].Name,
        };
        format.AcceptOnlyFromAmong([.. LabelFormat.All.Select(f => f.Name)]);
        var skip = new Option<int>("--skip") { Description = "Labels of the first sheet that are gone already.", HelpName = "NUMBER" };
        var address = new Option<string?>("--address")
        {
            Description = "The server's address: any phone's camera then opens the app at what it reads. Without it, a code holds the thing's key, for the app's own scan.",
            HelpName = "https://HOST",
        };
        skip.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is < 0 or > 64)
            {
                result.AddError("--skip: a sheet has at most 65 labels; give 0 to 64.");
            }
        });
        var command = new Command("labels", "Labels with codes for boats, seats, racks or oars, on sheets of labels.") { kind, format, skip, address };
        new PrintOptions().Set(command, terminal, result => new("labels", (shed, errors) => Make(
            shed,
            LabelKinds.Of(result.GetValue(kind)!)!.Value,
            LabelFormat.Of(result.GetValue(format)!)!,
            result.GetValue(skip),
            result.GetValue(address),
            errors)));
        return command;
    }

    private static PrintedWork? Make(
        PrintedShed shed, LabelKind kind, LabelFormat format, int skip, string? address, List<InputProblem> errors)
    {
        IReadOnlyList<Label> labels = new ClubLabels(shed.Club, shed.Imprint, address).Of(kind, shed.Boats);
        if (LabelPrint.Fault(labels, format) is { } fault)
        {
            errors.Add(new("--format", null, null, format.Name, fault));
            return null;
        }

        return new(LabelPrint.Of(labels, format, skip, shed.Imprint), labels.Count, Counted.Of(labels.Count, "label"));
    }
}
