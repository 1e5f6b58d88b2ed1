namespace Gatewright.Planning.Choosing;

/// <summary>Something of which there is only so much.</summary>
/// <param name="Capacity">How much there is, 0 or more.</param>
/// <param name="CanBeBought">Whether more can be had, which then counts as bought.</param>
internal readonly record struct Resource(int Capacity, bool CanBeBought = false);
