namespace Gatewright.Core;

/// <summary>
/// A class of boat: how many seats, how it is rowed, coxed or not. The names are those of the sport:
/// seats, then <c>x</c> for sculling, then <c>+</c> coxed or <c>-</c> coxless.
/// </summary>
public sealed record BoatClass
{
    private BoatClass(string name, int seats, Rowing rowing, bool coxed) =>
        (Name, Seats, Rowing, IsCoxed) = (name, seats, rowing, coxed);

    /// <summary>The class's name, such as <c>8+</c>.</summary>
    public string Name { get; }

    /// <summary>Rowing seats, 1 to 8; the cox is not counted.</summary>
    public int Seats { get; }

    /// <summary>Sweep or scull.</summary>
    public Rowing Rowing { get; }

    /// <summary>Whether a cox is carried.</summary>
    public bool IsCoxed { get; }

    /// <summary>Gates in the boat: one a seat in sweep, two in sculling.</summary>
    public int Gates => Rowing == Rowing.Scull ? 2 * Seats : Seats;

    /// <summary>Every class there is, smallest first.</summary>
    public static IReadOnlyList<BoatClass> All { get; } =
    [
        new("1x", 1, Rowing.Scull, false),
        new("2x", 2, Rowing.Scull, false),
        new("2-", 2, Rowing.Sweep, false),
        new("2+", 2, Rowing.Sweep, true),
        new("4x", 4, Rowing.Scull, false),
        new("4x+", 4, Rowing.Scull, true),
        new("4-", 4, Rowing.Sweep, false),
        new("4+", 4, Rowing.Sweep, true),
        new("8+", 8, Rowing.Sweep, true),
        new("8x+", 8, Rowing.Scull, true),
    ];

    /// <summary>The class of that name, in any case.</summary>
    /// <exception cref="ArgumentException">There is no class of that name.</exception>
    public static BoatClass Parse(string name) =>
        TryParse(name) ?? throw new ArgumentException(
            $"'{name}' is not a class of boat: expected one of {string.Join(' ', All.Select(c => c.Name))}.", nameof(name));

    /// <summary>The class of that name, in any case, or null.</summary>
    public static BoatClass? TryParse(ReadOnlySpan<char> name)
    {
        foreach (BoatClass candidate in All)
        {
            if (name.Equals(candidate.Name, StringComparison.OrdinalIgnoreCase))
            {
                return candidate;
            }
        }

        return null;
    }

    /// <inheritdoc/>
    public override string ToString() => Name;
}
