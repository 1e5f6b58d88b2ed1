namespace Gatewright.Core;

/// <summary>A side of the hull, named as one sees it facing the bow.</summary>
public enum Side
{
    /// <summary>Left, facing the bow.</summary>
    Port,

    /// <summary>Right, facing the bow.</summary>
    Starboard,
}

/// <summary>The side as the geometry uses it, and as it is written.</summary>
public static class Sides
{
    /// <summary>σ of the geometry: +1 for port, −1 for starboard (the hull's y axis points to port).</summary>
    public static int Sign(this Side side) => side == Side.Port ? 1 : -1;

    /// <summary>The other side.</summary>
    public static Side Opposite(this Side side) => side == Side.Port ? Side.Starboard : Side.Port;

    /// <summary>The trade's word: "port" or "starboard".</summary>
    public static string Word(this Side side) => side == Side.Port ? "port" : "starboard";

    /// <summary>The side of a word; null for any other word, and for none.</summary>
    public static Side? OfWord(string? word) => word switch
    {
        "port" => Side.Port,
        "starboard" => Side.Starboard,
        _ => null,
    };
}
