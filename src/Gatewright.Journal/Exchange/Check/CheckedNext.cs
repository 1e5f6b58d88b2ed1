namespace Gatewright.Journal.Exchange.Check;

/// <summary>The reading that is expected to tell most, a second.</summary>
/// <param name="Item"><c>gate</c>, <c>pin-aft</c>, <c>pin-out</c>, <c>gate-pitch</c>, <c>sleeve</c>, <c>level</c> or <c>gauge-reversed</c>.</param>
/// <param name="Seat">The gate's seat; null for level and gauge.</param>
/// <param name="Side">The gate's side; null for level and gauge.</param>
/// <param name="At">The station, for a gate's face; otherwise null.</param>
/// <param name="Gauge">The gauge, where that is what is checked; otherwise null.</param>
/// <param name="Instruction">What to do, in words.</param>
/// <param name="Bits">How much doubt it is expected to take away, about causes and verdicts together.</param>
/// <param name="Seconds">How long it takes.</param>
/// <param name="Scale">What the outcomes are values of: <c>reading</c>, <c>bow-high</c>, <c>port-low</c> or <c>gauge-zero</c>.</param>
/// <param name="Outcomes">What each outcome would mean, from the lowest.</param>
public sealed record CheckedNext(
    string Item,
    int? Seat,
    string? Side,
    string? At,
    string? Gauge,
    string Instruction,
    double Bits,
    double Seconds,
    string Scale,
    IReadOnlyList<CheckedOutcome> Outcomes);

/// <summary>A band of outcomes that point to one account.</summary>
/// <param name="From">Its lowest value in degrees; null when it is open below.</param>
/// <param name="To">Its highest value in degrees; null when it is open above.</param>
/// <param name="Chance">How likely the reading is to fall here.</param>
/// <param name="Account">The account that would then lead, with the probability it would have.</param>
public sealed record CheckedOutcome(double? From, double? To, double Chance, CheckedStory Account);
