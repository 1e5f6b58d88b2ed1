namespace Gatewright.Core.Oars;

/// <summary>
/// How far an oar may lie from the others of its set and still be good. Ours, from judgement: a sleeve within what an insert
/// is told apart by, lengths within a pair of collar settings.
/// </summary>
/// <param name="Sleeve">Degrees.</param>
/// <param name="Length">Centimetres.</param>
/// <param name="Inboard">Centimetres.</param>
/// <param name="Weight">Kilograms.</param>
public sealed record OarTolerances(double Sleeve = 0.5, double Length = 0.5, double Inboard = 0.5, double Weight = 0.15)
{
    /// <summary>The defaults: 0.5°, 0.5 cm, 0.5 cm, 0.15 kg.</summary>
    public static OarTolerances Default { get; } = new();

    /// <summary>That of an item.</summary>
    public double this[OarItem item] => item switch
    {
        OarItem.Sleeve => Sleeve,
        OarItem.Length => Length,
        OarItem.Inboard => Inboard,
        _ => Weight,
    };
}
