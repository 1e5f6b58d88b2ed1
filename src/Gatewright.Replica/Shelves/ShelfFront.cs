namespace Gatewright.Replica.Shelves;

/// <summary>What is read first.</summary>
/// <param name="Device">The device's id: in every entry it makes.</param>
/// <param name="Clubs">The clubs it holds.</param>
/// <param name="Settings">Its small settings.</param>
public sealed record ShelfFront(string Device, IReadOnlyList<HeldClub> Clubs, IReadOnlyDictionary<string, string> Settings);
