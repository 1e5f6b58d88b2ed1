using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;

namespace Gatewright.Cli.CheckShed.Words;

/// <summary>Causes that read the same, so that a probability alone decides nothing between them.</summary>
internal static class TwinWords
{
    /// <summary>"These readings cannot tell a wrong insert at seat 1 port from a pin leaning fore or aft there."</summary>
    public static IEnumerable<string> Of(BoatCheck check) =>
        check.Diagnosis.Twins.Select(twins => $"These readings cannot tell {Name(twins.One)} from {Name(twins.Other)}.");

    private static string Name(CausePart part) => part.Cause switch
    {
        Cause.GatePitch => $"a wrong insert at {part.Gate}",
        Cause.PinAft => $"a pin leaning fore or aft at {part.Gate}",
        Cause.PinOut => $"a pin leaning out or in at {part.Gate}",
        Cause.Rigger => $"a knocked rigger at {part.Gate}",
        Cause.WrongSeat => $"a rigger on another's place at {part.Gate}",
        Cause.Sleeve => $"a slipped sleeve at {part.Gate}",
        Cause.HullLevel => "a boat that did not lie as its level says",
        _ => $"a gauge off its zero{(string.IsNullOrEmpty(part.Gauge) ? string.Empty : $" ({part.Gauge})")}",
    };
}
