namespace Gatewright.Core;

/// <summary>Which gate of a boat: its seat, numbered from the bow, and its side.</summary>
/// <remarks>Orders from the bow to the stern, port before starboard.</remarks>
/// <param name="Seat">Seat number, 1 is bow.</param>
/// <param name="Side">The side the gate stands on.</param>
public readonly record struct GatePlace(int Seat, Side Side) : IComparable<GatePlace>
{
    /// <inheritdoc/>
    public int CompareTo(GatePlace other) =>
        Seat != other.Seat ? Seat.CompareTo(other.Seat) : Side.CompareTo(other.Side);

    /// <summary>"seat 3 port".</summary>
    public override string ToString() => FormattableString.Invariant($"seat {Seat} {Side.Word()}");

    /// <summary>Whether one gate stands nearer the bow than another.</summary>
    public static bool operator <(GatePlace left, GatePlace right) => left.CompareTo(right) < 0;

    /// <summary>Whether one gate stands nearer the stern than another.</summary>
    public static bool operator >(GatePlace left, GatePlace right) => left.CompareTo(right) > 0;

    /// <summary>Whether one gate stands nearer the bow than another, or is the same.</summary>
    public static bool operator <=(GatePlace left, GatePlace right) => left.CompareTo(right) <= 0;

    /// <summary>Whether one gate stands nearer the stern than another, or is the same.</summary>
    public static bool operator >=(GatePlace left, GatePlace right) => left.CompareTo(right) >= 0;
}
