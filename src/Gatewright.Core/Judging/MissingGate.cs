namespace Gatewright.Core.Judging;

/// <summary>A gate that the class of boat has and nobody read.</summary>
/// <param name="Seat">Its seat, 1 is bow.</param>
/// <param name="Side">Its side; null in a sweep boat, where only the rigging tells.</param>
public readonly record struct MissingGate(int Seat, Side? Side)
{
    /// <summary>Every gate of a class that is not among those given, from the bow.</summary>
    public static IReadOnlyList<MissingGate> Of(BoatClass boatClass, IReadOnlyCollection<GatePlace> read)
    {
        ArgumentNullException.ThrowIfNull(boatClass);
        var missing = new List<MissingGate>();
        for (int seat = 1; seat <= boatClass.Seats; seat++)
        {
            if (boatClass.Rowing == Rowing.Sweep)
            {
                if (!read.Any(g => g.Seat == seat))
                {
                    missing.Add(new(seat, null));
                }

                continue;
            }

            foreach (Side side in (ReadOnlySpan<Side>)[Core.Side.Port, Core.Side.Starboard])
            {
                if (!read.Contains(new(seat, side)))
                {
                    missing.Add(new(seat, side));
                }
            }
        }

        return missing;
    }

    /// <summary>"seat 3", "seat 3 port".</summary>
    public override string ToString() =>
        Side is { } side ? new GatePlace(Seat, side).ToString() : FormattableString.Invariant($"seat {Seat}");
}
