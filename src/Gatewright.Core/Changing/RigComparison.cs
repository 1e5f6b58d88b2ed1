using Gatewright.Core.Numerics;
using Gatewright.Core.Rig;

namespace Gatewright.Core.Changing;

/// <summary>What two rigs show at one place.</summary>
public enum ComparedAs
{
    /// <summary>They differ by more than the uncertainty of the difference explains.</summary>
    Differs,

    /// <summary>Nothing that would be worth setting lies between them.</summary>
    Alike,

    /// <summary>It cannot be told: the uncertainty hides a difference that would matter.</summary>
    Untold,

    /// <summary>It was taken in one of them alone.</summary>
    OneSided,

    /// <summary>Both rest on one and the same reading: nobody has taken it since.</summary>
    NotTakenSince,
}

/// <summary>One item at one place in two rigs.</summary>
/// <param name="Item">Which.</param>
/// <param name="Place">Where.</param>
/// <param name="First">In the first; null where it is not known.</param>
/// <param name="Second">In the second; null where it is not known.</param>
/// <param name="Difference">The second less the first, with its standard uncertainty; null where one is missing.</param>
/// <param name="Probability">That the difference truly has the sign it shows: 0.5 to 1; null where one is missing.</param>
/// <param name="As">What that comes to.</param>
public sealed record ComparedItem(
    RigItem Item, RigPlace Place, RigValue? First, RigValue? Second, RigEstimate? Difference, double? Probability, ComparedAs As);

/// <summary>A rigger or an oar that is not the same.</summary>
/// <param name="IsOar">Whether it is an oar, else a rigger.</param>
/// <param name="At">The gate.</param>
/// <param name="First">Its mark in the first; null where none is known.</param>
/// <param name="Second">Its mark in the second; null where none is known.</param>
public sealed record ComparedMark(bool IsOar, GatePlace At, string? First, string? Second);

/// <summary>Two rigs side by side: two boats, or one boat on two days.</summary>
/// <param name="First">The first.</param>
/// <param name="Second">The second.</param>
/// <param name="Items">Every item that either has, as a boat is set up, then from the bow.</param>
/// <param name="Marks">Riggers and oars that are not the same; of two boats none, since each has its own.</param>
public sealed record RigComparison(RigOfBoat First, RigOfBoat Second, IReadOnlyList<ComparedItem> Items, IReadOnlyList<ComparedMark> Marks)
{
    /// <summary>Two-sided 95 % of the normal distribution: further apart than this many u nothing but a difference explains it.</summary>
    public const double Apart = 1.959964;

    /// <summary>This sure that no difference worth setting lies between two figures, they count as alike: 0.8, as a limit is judged.</summary>
    public const double AlikeFrom = 0.8;

    /// <summary>Compares two rigs of boats that are rowed the same way; of seats that only one of them has nothing is said.</summary>
    /// <exception cref="ArgumentException">One is sculled and the other is not.</exception>
    public static RigComparison Of(RigOfBoat first, RigOfBoat second, bool isSameBoat)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        if (first.Class.Rowing != second.Class.Rowing)
        {
            throw new ArgumentException("A sculling boat and a sweep boat have no rig in common.", nameof(second));
        }

        var items = new List<ComparedItem>();
        foreach (RigItem item in RigItems.All)
        {
            foreach (RigPlace place in first.Places(item))
            {
                (RigValue? one, RigValue? other) = (first.Find(item, place), second.Find(item, place));
                if (place.Seat <= second.Class.Seats && (one ?? other) is not null)
                {
                    items.Add(Of(item, place, one, other, isSameBoat));
                }
            }
        }

        var marks = new List<ComparedMark>();
        if (isSameBoat)
        {
            foreach (GatePlace gate in first.Gates)
            {
                Add(false, gate, first.Rigger(gate), second.Rigger(gate));
                Add(true, gate, first.Oar(gate), second.Oar(gate));
            }
        }

        return new(first, second, items, marks);

        void Add(bool isOar, GatePlace gate, string? one, string? other)
        {
            // A mark that nobody had written down yet is no other rigger.
            if (one is not null && other is not null && one != other)
            {
                marks.Add(new(isOar, gate, one, other));
            }
        }
    }

    private static ComparedItem Of(RigItem item, RigPlace place, RigValue? one, RigValue? other, bool isSameBoat)
    {
        if (one is null || other is null)
        {
            return new(item, place, one, other, null, null, ComparedAs.OneSided);
        }

        RigEstimate difference = Difference(one, other);
        double probability = difference.Value == 0 ? 0.5 : Normal.Cdf(Math.Abs(difference.Value) / difference.U);
        return isSameBoat && one.Day is not null && one.Day == other.Day
            ? new(item, place, one, other, null, null, ComparedAs.NotTakenSince)
            : new(item, place, one, other, difference, probability, Told(item, difference));
    }

    /// <summary>The second less the first. The zero of one gauge drops out (JCGM 100:2008, 5.2.2). What two boats, or two days, may share beside it, as a rack's level, is taken as apart.</summary>
    public static RigEstimate Difference(RigValue first, RigValue second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        double variance = (first.Value.U * first.Value.U) + (second.Value.U * second.Value.U);
        if (first.Gauge is { } gauge && gauge == second.Gauge)
        {
            variance -= 2 * first.ZeroU * second.ZeroU;
        }

        return new(second.Value.Value - first.Value.Value, Math.Sqrt(Math.Max(0, variance)));
    }

    private static ComparedAs Told(RigItem item, RigEstimate difference)
    {
        if (Math.Abs(difference.Value) > Apart * difference.U)
        {
            return ComparedAs.Differs;
        }

        double near = item.AsGoodAsSame();
        double inside = difference.U == 0
            ? 1
            : Normal.Cdf((near - difference.Value) / difference.U) - Normal.Cdf((-near - difference.Value) / difference.U);
        return inside >= AlikeFrom ? ComparedAs.Alike : ComparedAs.Untold;
    }
}
