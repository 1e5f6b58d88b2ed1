using Gatewright.Journal.Facts;
using Gatewright.Journal.Standing;

namespace Gatewright.App.Reporting;

/// <summary>A report that has been put on record.</summary>
/// <param name="Boat">The boat's key.</param>
/// <param name="Name">Its name.</param>
/// <param name="Facts">What was recorded.</param>
/// <param name="Before">How the boat stood before; null where nothing was on record.</param>
/// <param name="Entries">The entries it made, to be taken back by.</param>
public sealed record SentReport(string Boat, string Name, IReadOnlyList<Fact> Facts, BoatStanding? Before, IReadOnlyList<Guid> Entries);
