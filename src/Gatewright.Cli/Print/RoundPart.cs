using System.CommandLine;
using System.Text;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Terminals;
using Gatewright.Core;
using Gatewright.Journal.Exchange;
using Gatewright.Printing.RoundSheets;

namespace Gatewright.Cli.Print;

/// <summary>The grammar of <c>gatewright print round</c>.</summary>
internal static class RoundPart
{
    public static Command Of(Terminal terminal)
    {
        var stations = new Option<string[]>("--stations")
        {
            Description = "The stations to be read; without it, all three.",
            HelpName = "catch|abeam|finish",
            AllowMultipleArgumentsPerToken = true,
        };
        stations.AcceptOnlyFromAmong([.. Stations.All.Select(s => s.Word())]);
        var csv = new Option<bool>("--csv")
        {
            Description = "Write a table instead, to type the readings into: gatewright record takes it, without the rows that were not read.",
        };
        var command = new Command("round", "A blank round, boat by boat in the order of the walk, for a day without a phone; or the table to type it into.")
        {
            stations, csv,
        };
        new PrintOptions("FILE").Set(command, terminal, result =>
        {
            string[] words = result.GetValue(stations) ?? [];
            IReadOnlyList<Station> chosen = words.Length == 0 ? Stations.All : [.. Stations.All.Where(s => words.Contains(s.Word()))];
            return new("round", (shed, _) => result.GetValue(csv) ? Table(shed, chosen) : Sheet(shed, chosen));
        });
        return command;
    }

    private static PrintedWork Sheet(PrintedShed shed, IReadOnlyList<Station> stations) => new(
        RoundSheetPrint.Of(shed.Club, shed.Boats, stations, shed.Imprint), shed.Boats.Count, $"A blank round of {Counted.Of(shed.Boats.Count, "boat")}");

    private static PrintedWork Table(PrintedShed shed, IReadOnlyList<Station> stations)
    {
        using var text = new StringWriter { NewLine = "\n" };
        RoundTemplate.Write(text, shed.Club, RoundSheetPrint.InOrder(shed.Club, shed.Boats).Select(b => b.View), stations);
        return new(Encoding.UTF8.GetBytes(text.ToString()), shed.Boats.Count, $"A table for a round of {Counted.Of(shed.Boats.Count, "boat")}");
    }
}
