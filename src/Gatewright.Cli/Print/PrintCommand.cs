using System.CommandLine;
using Gatewright.Cli.Clubs.Telling;
using Gatewright.Cli.Terminals;
using Gatewright.Printing.Cards;
using Gatewright.Printing.RigSheets;
using Gatewright.Printing.Sheds;

namespace Gatewright.Cli.Print;

/// <summary>The grammar of <c>gatewright print</c>.</summary>
internal static class PrintCommand
{
    public static Command Of(Terminal terminal) => new(
        "print",
        "Print as PDF: rig sheets, pocket cards, the shed, job sheets, a blank round, labels. Exit status: 0 printed, 2 the input is wrong and nothing was, 74 the store cannot be used.")
    {
        Sheets(terminal),
        Cards(terminal),
        Shed(terminal),
        JobsPart.Of(terminal),
        RoundPart.Of(terminal),
        LabelsPart.Of(terminal),
    };

    private static Command Sheets(Terminal terminal)
    {
        var command = new Command("sheet", "Rig sheets: A4, a boat a page, with its gates, rig, verdicts and what is open on it.");
        new PrintOptions().Set(command, terminal, _ => new("sheet", (shed, _) => new(
            RigSheetPrint.Of(shed.Club, shed.Boats, shed.Imprint), shed.Boats.Count, Counted.Of(shed.Boats.Count, "rig sheet"))));
        return command;
    }

    private static Command Cards(Terminal terminal)
    {
        var command = new Command("card", "Pocket cards: eight of 105 by 74 mm on an A4 sheet, to be cut.");
        new PrintOptions().Set(command, terminal, _ => new("card", (shed, _) => new(
            PocketCardPrint.Of(shed.Club, shed.Boats, shed.Imprint), shed.Boats.Count, Counted.Of(shed.Boats.Count, "pocket card"))));
        return command;
    }

    private static Command Shed(Terminal terminal)
    {
        var command = new Command("shed", "The whole shed, rack by rack: each boat's verdict, when it was last read, which are held ashore.");
        new PrintOptions().Set(command, terminal, _ => new("shed", (shed, _) => new(
            ShedSummaryPrint.Of(shed.Club, shed.Boats, shed.Imprint), shed.Boats.Count, $"The shed with {Counted.Of(shed.Boats.Count, "boat")}")));
        return command;
    }
}
