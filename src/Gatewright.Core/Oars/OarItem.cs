namespace Gatewright.Core.Oars;

/// <summary>What is read of an oar by itself.</summary>
public enum OarItem
{
    /// <summary>The sleeve's flat against the blade laid on the gunwale. Degrees.</summary>
    Sleeve,

    /// <summary>From the handle's end to the blade's tip, along the shaft. Centimetres.</summary>
    Length,

    /// <summary>From the handle's end to the face of the collar that bears on the gate. Centimetres.</summary>
    Inboard,

    /// <summary>What the oar weighs. Kilograms.</summary>
    Weight,
}

/// <summary>What is known of each.</summary>
public static class OarItems
{
    /// <summary>Every item, the sleeve first.</summary>
    public static IReadOnlyList<OarItem> All { get; } = [OarItem.Sleeve, OarItem.Length, OarItem.Inboard, OarItem.Weight];

    /// <summary>The word in files and entries: "sleeve", "length", "inboard", "weight".</summary>
    public static string Word(this OarItem item) => item switch
    {
        OarItem.Sleeve => "sleeve",
        OarItem.Length => "length",
        OarItem.Inboard => "inboard",
        _ => "weight",
    };

    /// <summary>The item of a word, or null.</summary>
    public static OarItem? OfWord(string? word) => word switch
    {
        "sleeve" => OarItem.Sleeve,
        "length" => OarItem.Length,
        "inboard" => OarItem.Inboard,
        "weight" => OarItem.Weight,
        _ => null,
    };

    /// <summary>What may be read, both ends in: sleeve −20 to 20°, length 100 to 450 cm, inboard 40 to 160 cm, weight 0.5 to 6 kg.</summary>
    /// <remarks>Wide enough for children's and the longest sweep oars; ours.</remarks>
    public static (double Least, double Most) Plausible(this OarItem item) => item switch
    {
        OarItem.Sleeve => (-20, 20),
        OarItem.Length => (100, 450),
        OarItem.Inboard => (40, 160),
        _ => (0.5, 6),
    };
}
