using Gatewright.Core;
using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;

namespace Gatewright.Journal.Exchange;

/// <summary>What a file tells of a boat beside its readings, as it stands there.</summary>
/// <param name="Boat">The boat's name.</param>
/// <param name="Class">Its class.</param>
/// <param name="Reports">What was told, whether a mending settled it or not.</param>
/// <param name="Mendings">What was mended.</param>
public sealed record BoatTold(string Boat, BoatClass Class, IReadOnlyList<Report> Reports, IReadOnlyList<Mended> Mendings);
