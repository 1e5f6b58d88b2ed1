namespace Gatewright.Core.Diagnosing;

/// <summary>
/// What a club's own finished jobs found, and among how many things checked: what prior chances learn from.
/// </summary>
/// <remarks>
/// A gate counts as checked each time it was read and settled: found good, or mended with the re-check good. An oar
/// counts when its sleeve was read, a boat when its level was, a gauge when its zero was.
/// </remarks>
public sealed record FoundCauses
{
    /// <summary>Nothing has been checked.</summary>
    public static FoundCauses None { get; } = new();

    /// <summary>Gates checked.</summary>
    public int GatesChecked { get; init; }

    /// <summary>Of those, with a wrong or worn insert.</summary>
    public int GatePitch { get; init; }

    /// <summary>Of those, with a pin that leant fore or aft.</summary>
    public int PinAft { get; init; }

    /// <summary>Of those, with a pin that leant out or in.</summary>
    public int PinOut { get; init; }

    /// <summary>Of those, with a rigger knocked or mounted wrong.</summary>
    public int Rigger { get; init; }

    /// <summary>Oars checked.</summary>
    public int OarsChecked { get; init; }

    /// <summary>Of those, with a slipped sleeve.</summary>
    public int Sleeve { get; init; }

    /// <summary>Boats whose level was read.</summary>
    public int BoatsChecked { get; init; }

    /// <summary>Of those, lying otherwise than was thought.</summary>
    public int HullLevel { get; init; }

    /// <summary>Gauges reversed.</summary>
    public int GaugesChecked { get; init; }

    /// <summary>Of those, off their zero.</summary>
    public int GaugeZero { get; init; }

    /// <summary>Two seasons together.</summary>
    public static FoundCauses operator +(FoundCauses one, FoundCauses other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return new()
        {
            GatesChecked = one.GatesChecked + other.GatesChecked,
            GatePitch = one.GatePitch + other.GatePitch,
            PinAft = one.PinAft + other.PinAft,
            PinOut = one.PinOut + other.PinOut,
            Rigger = one.Rigger + other.Rigger,
            OarsChecked = one.OarsChecked + other.OarsChecked,
            Sleeve = one.Sleeve + other.Sleeve,
            BoatsChecked = one.BoatsChecked + other.BoatsChecked,
            HullLevel = one.HullLevel + other.HullLevel,
            GaugesChecked = one.GaugesChecked + other.GaugesChecked,
            GaugeZero = one.GaugeZero + other.GaugeZero,
        };
    }

    /// <exception cref="ArgumentException">A count is below 0, or more was found than checked.</exception>
    internal void Check()
    {
        Check("gates", GatesChecked, GatePitch, PinAft, PinOut, Rigger);
        Check("oars", OarsChecked, Sleeve);
        Check("boats", BoatsChecked, HullLevel);
        Check("gauges", GaugesChecked, GaugeZero);
    }

    private static void Check(string what, int isChecked, params ReadOnlySpan<int> found)
    {
        foreach (int count in found)
        {
            if (count < 0)
            {
                throw new ArgumentException(FormattableString.Invariant($"{count} {what} found with a cause: a count is 0 or more."));
            }

            // Of one cause: a gate may have several.
            if (count > isChecked)
            {
                throw new ArgumentException(FormattableString.Invariant($"{count} {what} found with a cause among {isChecked} checked."));
            }
        }
    }
}
