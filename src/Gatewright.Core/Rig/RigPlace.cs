namespace Gatewright.Core.Rig;

/// <summary>Where in a boat a measure of the rig is taken: at a seat, and at one side of it where it has two.</summary>
/// <param name="Seat">The seat, from the bow, 1 the bow.</param>
/// <param name="Side">The side, for a measure of a gate or an oar; null for a measure of the seat.</param>
public readonly record struct RigPlace(int Seat, Side? Side) : IComparable<RigPlace>
{
    /// <summary>From the bow; a seat's own measures before those of its sides, port before starboard.</summary>
    public int CompareTo(RigPlace other) => Seat != other.Seat
        ? Seat.CompareTo(other.Seat)
        : Rank(Side).CompareTo(Rank(other.Side));

    /// <summary>Whether one comes before another.</summary>
    public static bool operator <(RigPlace left, RigPlace right) => left.CompareTo(right) < 0;

    /// <summary>Whether one comes after another.</summary>
    public static bool operator >(RigPlace left, RigPlace right) => left.CompareTo(right) > 0;

    /// <summary>Whether one is the other or comes before it.</summary>
    public static bool operator <=(RigPlace left, RigPlace right) => left.CompareTo(right) <= 0;

    /// <summary>Whether one is the other or comes after it.</summary>
    public static bool operator >=(RigPlace left, RigPlace right) => left.CompareTo(right) >= 0;

    private static int Rank(Side? side) => side switch { null => 0, Core.Side.Port => 1, _ => 2 };
}
