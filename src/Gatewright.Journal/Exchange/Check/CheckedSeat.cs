namespace Gatewright.Journal.Exchange.Check;

/// <summary>One gate.</summary>
/// <param name="Seat">The seat, 1 is bow.</param>
/// <param name="Side"><c>port</c> or <c>starboard</c>.</param>
/// <param name="Verdict">The worst of its reasons, or <c>good</c>.</param>
/// <param name="StaysAshore">Whether it is below a floor, or not shown to be above it.</param>
/// <param name="Reasons">Why it is not good, worst first.</param>
/// <param name="Pitch">Catch, abeam and finish, then every other point of the stroke that was read.</param>
/// <param name="Gate">The pitch built into gate and insert, from all that was read of the boat.</param>
/// <param name="PinAft">The pin's lean to the stern, likewise.</param>
/// <param name="PinOut">The pin's lean away from the hull, likewise.</param>
/// <param name="Causes">What may be wrong with it, and <c>none</c>; most probable first, together 1.</param>
/// <param name="Remedies">What would mend its likely causes; empty when it is good.</param>
public sealed record CheckedSeat(
    int Seat,
    string Side,
    string Verdict,
    bool StaysAshore,
    IReadOnlyList<CheckedReason> Reasons,
    IReadOnlyList<CheckedPitch> Pitch,
    Quantity Gate,
    Quantity PinAft,
    Quantity PinOut,
    IReadOnlyList<CheckedCause> Causes,
    IReadOnlyList<CheckedRemedy> Remedies);

/// <summary>A gate's pitch at one point of the stroke, on a level boat.</summary>
/// <param name="At"><c>catch</c>, <c>abeam</c>, <c>finish</c>, or the oar angle in degrees as a word: <c>"20"</c>.</param>
/// <param name="Angle">The oar angle in degrees, 0 abeam, positive to the catch.</param>
/// <param name="Read">Whether it was read there; if not, it is what the other readings let one expect.</param>
/// <param name="Value">The pitch in degrees, positive when the top of the face leans to the stern.</param>
/// <param name="U">Its standard uncertainty in degrees.</param>
public sealed record CheckedPitch(string At, double Angle, bool Read, double Value, double U);

/// <summary>One ground for a verdict that is not good.</summary>
/// <param name="Kind"><c>below-limit</c>, <c>above-limit</c>, <c>floor</c>, <c>drop</c>, <c>repeats</c>, <c>changed</c> or <c>range</c>.</param>
/// <param name="Item">What was read: <c>gate</c>, or of a change <c>pin-aft</c>, <c>pin-out</c> or <c>gate-pitch</c> too.</param>
/// <param name="Verdict">The verdict this ground gives by itself.</param>
/// <param name="Station"><c>catch</c>, <c>abeam</c> or <c>finish</c>; of a drop, <c>finish</c>; of a pin, <c>abeam</c>.</param>
/// <param name="Value">What is judged, in degrees: a pitch, a drop, a difference of two gates, or of two readings of one.</param>
/// <param name="U">Its standard uncertainty in degrees.</param>
/// <param name="Limit">The limit or floor in degrees.</param>
/// <param name="Probability">That the true value lies on the wrong side of it.</param>
/// <param name="Read">Whether the value was read there, or is what other readings let one expect.</param>
/// <param name="Other">Of a range, the gate at the other end; otherwise null.</param>
/// <param name="Sentence">The same in plain English.</param>
public sealed record CheckedReason(
    string Kind,
    string Item,
    string Verdict,
    string Station,
    double Value,
    double U,
    double Limit,
    double Probability,
    bool Read,
    CheckedGate? Other,
    string Sentence);

/// <summary>How likely one cause is at a gate.</summary>
/// <param name="Cause">Its code, or <c>none</c>.</param>
/// <param name="Probability">0 to 1.</param>
public sealed record CheckedCause(string Cause, double Probability);
