namespace Gatewright.Core;

/// <summary>How a boat lies while it is read.</summary>
public enum Lie
{
    /// <summary>Keel down, on trestles.</summary>
    Upright,

    /// <summary>Keel up, as it lies on its rack.</summary>
    Inverted,
}

/// <summary>The lie as the geometry uses it.</summary>
public static class LieExtensions
{
    /// <summary>
    /// +1 upright, −1 inverted: the sign with which the hull's level enters a reading, since turning the boat
    /// over turns the effect of a level error round and leaves the gate's own as it is.
    /// </summary>
    public static int Sign(this Lie lie) => lie == Lie.Upright ? 1 : -1;

    /// <summary>The trade's word: "upright" or "inverted".</summary>
    public static string Word(this Lie lie) => lie == Lie.Upright ? "upright" : "inverted";
}
