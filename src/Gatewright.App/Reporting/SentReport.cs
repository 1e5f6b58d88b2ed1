using Gatewright.Journal.Facts;
using Gatewright.Journal.Standing;

namespace Gatewright.App.Reporting;

/// <summary>A report that has been put on record.</summary>
/// <param name="Boat">The boat's key.</param>
/// <param name="Name">Its name.</param>
/// <param name="Facts">What was recorded.</param>
/// <param name="Before">How the boat stood before; null where nothing was on record.</param>
/// <param name="Entries">The entries it made, to be taken back by.</param>
/// <param name="Photo">A picture that goes with it and is not kept; null for none.</param>
public sealed record SentReport(
    string Boat, string Name, IReadOnlyList<Fact> Facts, BoatStanding? Before, IReadOnlyList<Guid> Entries, PhotoOfReport? Photo = null);

/// <summary>A picture that goes with a report.</summary>
/// <param name="Bytes">The picture.</param>
/// <param name="Thing">What it is of: a boat or a gate.</param>
/// <param name="Key">Which.</param>
public sealed record PhotoOfReport(ReadOnlyMemory<byte> Bytes, string Thing, string Key);
