using Gatewright.Cli.Drawing;
using Gatewright.Planning;
using static Gatewright.Words.Wording;

namespace Gatewright.Cli.Mend.Words;

/// <summary>What a plan makes of a boat, in words.</summary>
internal static class OutcomeWords
{
    /// <summary>What comes of a boat, in a sentence or two.</summary>
    public static string Of(PlannedBoat boat) => boat.Outcome switch
    {
        BoatOutcome.Good => "Good as it was read.",
        BoatOutcome.Mended => $"Inside its standard with what is on the shelf, once it reads as expected: {Minutes(boat)}.",
        BoatOutcome.AboveFloors => $"Clear of its floors with what is on the shelf, once it reads as expected: {Minutes(boat)}. {Rest(boat, "The rest")}",
        BoatOutcome.Left when boat.Jobs.Count > 0 => $"Begun with what is on the shelf: {Minutes(boat)}. {Rest(boat, "The rest")}",
        BoatOutcome.Left => Rest(boat, "It"),
        _ => ReadAgain(boat.ReadAgain!.Value),
    };

    /// <summary>Why a boat is to be read again.</summary>
    public static string ReadAgain(ReadAgainReason reason) => reason switch
    {
        ReadAgainReason.Level =>
            "It probably did not lie as its level says, and then no gate need be at fault: level it and read it again before anything is mended.",
        ReadAgainReason.Gauge =>
            "Its gauge probably does not show 0 on a plumb face, and then no gate need be at fault: check the gauge by reversal and read the boat again before anything is mended.",
        ReadAgainReason.Riggers =>
            "Riggers probably stand on each other's places: put each back on its own and read the boat again before anything is mended.",
        _ => "One cannot tell whether it is good, and probably nothing is wrong with it: read it again, or better, before anything is mended.",
    };

    /// <summary>Gates of a boat that is mended which are to be read again; null when there are none.</summary>
    public static string? GatesToReadAgain(PlannedBoat boat) => boat.GatesToReadAgain.Count == 0
        ? null
        : $"Read {English.Names.Gates(boat.GatesToReadAgain)} again: whether {(boat.GatesToReadAgain.Count == 1 ? "it is" : "they are")} good one cannot tell yet, and probably nothing is wrong there.{(boat.Outcome == BoatOutcome.Mended ? " Until then the boat is not shown to be inside its standard." : string.Empty)}";

    private static string Rest(PlannedBoat boat, string what) => boat.OutcomeAfterBuying == BoatOutcome.Mended
        ? $"{what} waits for parts."
        : "No parts are known to bring it inside: read on first.";

    private static string Minutes(PlannedBoat boat) => $"about {Figures.Count(boat.Minutes, "minute")}";
}
