namespace Gatewright.Core.Oars;

/// <summary>An oar, as far as it can be matched with others.</summary>
/// <param name="Key">Which one.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Side">The side it is made for; null where it is not known.</param>
/// <param name="Blade">The shape of its blade, in the trade's word: <see cref="BladeShapes"/>.</param>
/// <param name="Sleeve">Sleeve error, degrees; null where it was never read.</param>
/// <param name="Length">Centimetres.</param>
/// <param name="Inboard">Centimetres.</param>
/// <param name="Weight">Kilograms.</param>
public sealed record Oar(
    string Key,
    string Name,
    Side? Side = null,
    string? Blade = null,
    OarFigure? Sleeve = null,
    OarFigure? Length = null,
    OarFigure? Inboard = null,
    OarFigure? Weight = null)
{
    /// <summary>One of its figures.</summary>
    public OarFigure? this[OarItem item] => item switch
    {
        OarItem.Sleeve => Sleeve,
        OarItem.Length => Length,
        OarItem.Inboard => Inboard,
        _ => Weight,
    };
}

/// <summary>The trade's words for the shapes of blades. A club may write another.</summary>
public static class BladeShapes
{
    /// <summary>The broad, one-sided blade.</summary>
    public const string Cleaver = "cleaver";

    /// <summary>The older, even-sided blade.</summary>
    public const string Macon = "macon";

    /// <summary>Both.</summary>
    public static IReadOnlyList<string> All { get; } = [Cleaver, Macon];
}

/// <summary>Oars that are rowed together.</summary>
/// <param name="Key">Which set.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Oars">Its oars.</param>
public sealed record OarSet(string Key, string Name, IReadOnlyList<Oar> Oars);
