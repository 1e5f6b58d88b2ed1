using Gatewright.Core.Checking;

namespace Gatewright.Planning;

/// <summary>A boat of the shed, as a plan sees it.</summary>
/// <param name="Check">What was read of it, and how it was judged.</param>
/// <param name="HasBackstays">Whether its riggers have backstays that can be set; not assumed.</param>
public sealed record ShedBoat(BoatCheck Check, bool HasBackstays = false);
