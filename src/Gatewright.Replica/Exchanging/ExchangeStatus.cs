using Gatewright.Replica.Shelves;

namespace Gatewright.Replica.Exchanging;

/// <summary>How it stands between a device and the server, for the screen.</summary>
/// <param name="Phase">In a word.</param>
/// <param name="Unsent">Entries that the server is not known to have.</param>
/// <param name="OfOthers">Those of them that wait for another member to sign in, or are of a club that was left.</param>
/// <param name="Refused">Entries that the server does not take.</param>
/// <param name="PhotosRefused">Pictures that the server does not take.</param>
/// <param name="LastInTouch">When the server last answered; null if it never has.</param>
/// <param name="NextTry">When it is asked again by itself, where it does not answer.</param>
/// <param name="Trouble">What is in the way, in English; null where nothing is.</param>
/// <param name="Server">What is in the way between here and the server; null where nothing is, or it is this device.</param>
/// <param name="Shelf">What this device could not keep or read; null where it could.</param>
public sealed record ExchangeStatus(
    ExchangePhase Phase,
    int Unsent = 0,
    int OfOthers = 0,
    int Refused = 0,
    int PhotosRefused = 0,
    DateTimeOffset? LastInTouch = null,
    DateTimeOffset? NextTry = null,
    string? Trouble = null,
    ServerTrouble? Server = null,
    ShelfFault? Shelf = null);

/// <summary>How it stands, in a word.</summary>
public enum ExchangePhase
{
    /// <summary>The server has all there is here, as far as is known.</summary>
    Shared,

    /// <summary>Something is being sent or fetched, or is to be at once.</summary>
    Sending,

    /// <summary>The server does not answer, or cannot now: what is here is kept, and it is asked again.</summary>
    Waiting,

    /// <summary>Nobody is signed in: what is here is kept, and sent after somebody has signed in.</summary>
    SignedOut,

    /// <summary>The server has all but what it does not take, and what is not the signed-in member's to send.</summary>
    Refused,
}
