namespace Gatewright.Core.Mending.Options;

/// <summary>What can be done about the gates of a boat at all.</summary>
/// <param name="Mending">How mending works and how well it hits.</param>
/// <param name="Sizes">The sizes in which parts can be had.</param>
/// <param name="HasBackstays">
/// Whether the boat's riggers have backstays that can be set. Not assumed: a stay needs no part, and where there is none
/// a plan that counts on it is worth nothing.
/// </param>
public sealed record OptionSettings(MendingSettings Mending, PartSizes Sizes, bool HasBackstays = false);
