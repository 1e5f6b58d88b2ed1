using Gatewright.Core;
using Gatewright.Core.Diagnosing;

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
/// <param name="Reason">Why.</param>
public sealed record Held(string Boat, string Reason) : Fact;

/// <summary>A boat's holds were lifted.</summary>
/// <param name="Boat">The boat.</param>
/// <param name="Reason">On what grounds.</param>
public sealed record Released(string Boat, string Reason) : Fact;
