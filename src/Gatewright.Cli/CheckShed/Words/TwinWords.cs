using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;

namespace Gatewright.Cli.CheckShed.Words;

/// <summary>Causes that read the same, so that a probability alone decides nothing between them.</summary>
internal static class TwinWords
{
    /// <summary>"These readings cannot tell a wrong insert at seat 1 port from a pin leaning fore or aft there."</summary>
    public static IEnumerable<string> Of(BoatCheck check) =>
        check.Diagnosis.Twins.Select(twins => $"These readings cannot tell {Name(twins.One)} from {Name(twins.Other)}.");

    /// <summary>A cause with its place: "a wrong insert at seat 3 port".</summary>
    public static string Name(CausePart part) =>
        part.Gate is { } gate ? $"{Bare(part)} at {gate}" : Bare(part);

    /// <summary>A cause where its place has been said: "a wrong insert".</summary>
    public static string Bare(CausePart part) => part.Cause switch
    {
        Cause.GatePitch => "a wrong insert",
        Cause.PinAft => "a pin leaning fore or aft",
        Cause.PinOut => "a pin leaning out or in",
        Cause.Rigger => "a knocked rigger",
        Cause.WrongSeat => "a rigger on another's place",
        Cause.Sleeve => "a slipped sleeve",
        Cause.HullLevel => "a boat that did not lie as its level says",
        _ => $"a gauge off its zero{(string.IsNullOrEmpty(part.Gauge) ? string.Empty : $" ({part.Gauge})")}",
    };
}
