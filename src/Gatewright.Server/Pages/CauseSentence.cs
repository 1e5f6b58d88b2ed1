using Gatewright.Journal.Exchange.Check;

namespace Gatewright.Server.Pages;

/// <summary>Causes in the trade's words.</summary>
internal static class CauseSentence
{
    /// <summary>"rigger knocked or mounted wrong at seat 3 port".</summary>
    public static string Of(CheckedStory story) => story.Parts.Count == 0
        ? "nothing is wrong"
        : string.Join(" and ", story.Parts.Select(Of));

    /// <summary>One part of it.</summary>
    public static string Of(CheckedPart part)
    {
        string words = part.Cause switch
        {
            "gate-pitch" => "wrong or worn insert",
            "pin-aft" => "pin leans aft or forward",
            "pin-out" => "pin leans out or in",
            "rigger" => "rigger knocked or mounted wrong",
            "wrong-seat" => "rigger on another's place",
            "sleeve" => "sleeve slipped on its oar",
            "hull-level" => "the boat lay otherwise than its level says",
            "gauge-zero" => "the gauge is off its zero",
            _ => part.Cause,
        };
        return part.Seat is { } seat ? $"{words} at seat {seat} {part.Side}" : words;
    }
}
