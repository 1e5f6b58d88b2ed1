namespace Gatewright.Replica.Shelves;

/// <summary>A club that a device holds.</summary>
/// <param name="Club">Its id.</param>
/// <param name="Name">Its name, as it was last heard.</param>
/// <param name="Member">The member who records in it on this device.</param>
/// <param name="Role">Their role, as a word.</param>
/// <param name="Home">Where its journal is kept.</param>
/// <param name="Pulled">The number of the last entry that was pulled, when this was read; 0 before the first.</param>
public sealed record HeldClub(string Club, string Name, string Member, string Role, ClubHome Home, long Pulled = 0);

/// <summary>Where a club's journal is kept, beside this device.</summary>
public enum ClubHome
{
    /// <summary>Nowhere else: it lives on this device alone.</summary>
    Device,

    /// <summary>On the server, which takes its entries.</summary>
    Server,

    /// <summary>On the server, which no longer knows whoever is signed in as a member: it is kept here as it was.</summary>
    Left,
}
