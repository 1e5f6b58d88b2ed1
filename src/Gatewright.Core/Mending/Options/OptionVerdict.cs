namespace Gatewright.Core.Mending.Options;

/// <summary>How a gate stands against its standard, by itself.</summary>
/// <param name="IsAboveFloors">
/// Whether no station is `stop`, nor in doubt about it: the probability of lying above each floor is what the rule asks.
/// </param>
/// <param name="IsInside">Whether it also keeps all limits and its drop. Range takes the whole boat to judge.</param>
/// <param name="Deviation">
/// How far it is from what it is meant to be: at each station the distance in whole steps of the gauge, squared, and
/// summed over the three. Less than a step counts 0: two gates so far apart may well read the same.
/// A gate that is inside as it is gains nothing by coming nearer: scatter is not mended.
/// </param>
public readonly record struct OptionVerdict(bool IsAboveFloors, bool IsInside, int Deviation);
