using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Server.Boats;

/// <summary>A club as its journal tells it up to a number.</summary>
/// <param name="Club">The club.</param>
/// <param name="Number">The number of the last entry in it.</param>
internal sealed record OpenClub(Club Club, long Number)
{
    /// <summary>What it is called; its id while it has no name.</summary>
    public string Name => ClubSettings.Name(Club) ?? Club.Name;
}
