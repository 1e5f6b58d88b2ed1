using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Journal.Facts;
using Gatewright.Words;

namespace Gatewright.Journal.Reporting;

/// <summary>What somebody is about to tell of a boat: which boat, what, where, and then it can be sent.</summary>
/// <param name="Boat">The boat's key; null until it is chosen.</param>
/// <param name="What">What happened; null until it is chosen.</param>
/// <param name="Where">Where on the boat; null until it is chosen.</param>
/// <param name="Text">In their words.</param>
/// <param name="HoldsAshore">Whether the boat is not to go out until somebody has looked.</param>
public sealed record ReportDraft(
    string? Boat = null, ReportSubject? What = null, ReportPlace? Where = null, string? Text = null, bool HoldsAshore = false)
{
    /// <summary>What is asked for next.</summary>
    public ReportStep Step => (Boat, What, Where) switch
    {
        (null, _, _) => ReportStep.Boat,
        (_, null, _) => ReportStep.What,
        (_, _, null) => ReportStep.Where,
        _ => ReportStep.Send,
    };

    /// <summary>The draft once it is said what happened: a place that does not go with it is asked for again, and damage holds the boat.</summary>
    public ReportDraft Tells(ReportSubject what) => this with
    {
        What = what,
        Where = Where is { } place && Takes(what, place) ? place : null,
        HoldsAshore = HoldsAshore || what == ReportSubject.Damage,
    };

    /// <summary>Whether a place goes with what is told: a boat sits down to a side; all else is at a gate, or nobody knows where.</summary>
    public static bool Takes(ReportSubject what, ReportPlace place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return what == ReportSubject.DownToOneSide ? place is ReportPlace.OnSide : place is not ReportPlace.OnSide;
    }

    /// <summary>
    /// What is recorded when it is sent. Damage is a note, on the gate where it is or else on the boat: what is broken says
    /// nothing of how a gate stands.
    /// </summary>
    /// <param name="say">The language of what the program adds; a hold says it in every other one too.</param>
    /// <param name="notesGates">Whether whoever reports may note something on a gate: crew may on boats alone.</param>
    /// <exception cref="InvalidOperationException">Something is still to be chosen.</exception>
    public IReadOnlyList<Fact> Facts(Wording say, bool notesGates = false)
    {
        ArgumentNullException.ThrowIfNull(say);
        if (this is not { Boat: { } boat, What: { } what, Where: { } where })
        {
            throw new InvalidOperationException($"{Step} is still to be chosen.");
        }

        string? text = string.IsNullOrWhiteSpace(Text) ? null : Text.Trim();
        string Words(Wording language) => Told(what, where, text, language);
        GatePlace? gate = (where as ReportPlace.AtGate)?.Gate;
        Fact fact = what.Kind() is { } kind ? new Reported(boat, kind, gate?.Seat, where.Side, text)
            : notesGates && gate is { } at ? Damage.Note(Things.Gate, Things.GateKey(boat, at), at, text, say)
            : Damage.Note(Things.Boat, boat, gate, text, say);
        return HoldsAshore ? [fact, Held.Of(boat, say, Words)] : [fact];
    }

    private static string Told(ReportSubject what, ReportPlace where, string? text, Wording say)
    {
        if (what.Kind() is not { } kind)
        {
            return Damage.Text((where as ReportPlace.AtGate)?.Gate, text, say);
        }

        string place = where switch
        {
            ReportPlace.AtGate at => say.Names.Report(new Report(kind, at.Gate)),
            ReportPlace.OnSide on => say.Names.Report(new Report(kind, null, on.Of)),
            _ => say.Names.Report(kind),
        };
        return Sentence.Capital(text is null ? place : $"{place}: {text}");
    }
}
