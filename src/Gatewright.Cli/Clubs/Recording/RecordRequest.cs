using Gatewright.Cli.Inputs;

namespace Gatewright.Cli.Clubs.Recording;

/// <summary>What was asked of <c>gatewright record</c>.</summary>
/// <param name="Files">Files of readings; "-" is standard input.</param>
/// <param name="Stores">The file of stores; null for none.</param>
/// <param name="Member">Who records.</param>
/// <param name="NewClub">What to call a club that is to be made; null where it is there.</param>
/// <param name="Place">The club.</param>
internal sealed record RecordRequest(
    IReadOnlyList<string> Files, string? Stores, string Member, string? NewClub, StorePlace Place)
{
    /// <summary>The file of oars; null for none.</summary>
    public string? Oars { get; init; }
}
