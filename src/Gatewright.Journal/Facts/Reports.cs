using Gatewright.Core;
using Gatewright.Core.Diagnosing;
using Gatewright.Words;

namespace Gatewright.Journal.Facts;

/// <summary>Somebody told of something.</summary>
/// <param name="Boat">The boat.</param>
/// <param name="Kind">What.</param>
/// <param name="Seat">The seat, where it is about one.</param>
/// <param name="Side">The side, where it is about one.</param>
/// <param name="Text">In their words.</param>
/// <param name="Date">The day it happened, where it is not the day on which this was recorded.</param>
public sealed record Reported(
    string Boat, ReportKind Kind, int? Seat = null, Side? Side = null, string? Text = null, DateOnly? Date = null) : Fact;

/// <summary>A boat was held: not out on the water.</summary>
/// <param name="Boat">The boat.</param>
/// <param name="Reason">Why: as somebody typed it, or in the language of whoever held it where the program says it.</param>
/// <param name="Reasons">
/// What the program says in every other language there was then, by the language's tag; null where somebody typed it, and in older entries.
/// </param>
public sealed record Held(string Boat, string Reason, IReadOnlyDictionary<string, string>? Reasons = null) : Fact
{
    /// <summary>A boat that was held for what the program says.</summary>
    /// <param name="boat">The boat.</param>
    /// <param name="say">The language of whoever holds it.</param>
    /// <param name="reason">Why, in a language.</param>
    public static Held Of(string boat, Wording say, Func<Wording, string> reason)
    {
        ArgumentNullException.ThrowIfNull(say);
        ArgumentNullException.ThrowIfNull(reason);
        return new(boat, reason(say), Language.All.Where(l => l.Tag != say.Language.Tag).ToDictionary(l => l.Tag, l => reason(Wording.In(l))));
    }

    /// <summary>Why, in a language; as it was put down where it was not in this one.</summary>
    public string In(Language language)
    {
        ArgumentNullException.ThrowIfNull(language);
        return Reasons?.GetValueOrDefault(language.Tag) ?? Reason;
    }
}

/// <summary>Holds on a boat were lifted, and damage told of it was said to be seen to.</summary>
/// <param name="Boat">The boat.</param>
/// <param name="Reason">On what grounds.</param>
/// <param name="Lifts">
/// The entries of those holds and notes of damage: what whoever gave it saw. Null in older entries, which lift all that is older than they are.
/// </param>
public sealed record Released(string Boat, string Reason, IReadOnlyList<Guid>? Lifts = null) : Fact;
