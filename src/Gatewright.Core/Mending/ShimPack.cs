namespace Gatewright.Core.Mending;

/// <summary>Shims laid on each other.</summary>
/// <param name="ThicknessesMm">Each one's thickness, thickest first; empty for none.</param>
public sealed record ShimPack(IReadOnlyList<double> ThicknessesMm)
{
    /// <summary>More than this many on each other will not stay put.</summary>
    public const int Most = 3;

    /// <summary>Altogether.</summary>
    public double TotalMm => ThicknessesMm.Sum();

    /// <summary>
    /// The stack that comes nearest to a thickness, from sizes of which there is enough; of stacks as near, that of
    /// fewest shims. None at all where that is nearest.
    /// </summary>
    public static ShimPack Nearest(double thicknessMm, IReadOnlyList<double> sizesMm)
    {
        ShimPack best = new([]);
        foreach (ShimPack stack in All(sizesMm))
        {
            double off = Math.Abs(stack.TotalMm - thicknessMm);
            double bestOff = Math.Abs(best.TotalMm - thicknessMm);
            if (off < bestOff - 1e-9
                || (off <= bestOff + 1e-9 && stack.ThicknessesMm.Count < best.ThicknessesMm.Count))
            {
                best = stack;
            }
        }

        return best;
    }

    /// <summary>Every stack of one to three shims of some sizes, each once.</summary>
    public static IEnumerable<ShimPack> All(IReadOnlyList<double> sizesMm)
    {
        double[] sizes = [.. sizesMm.Distinct().OrderDescending()];
        return Extend([], 0);

        IEnumerable<ShimPack> Extend(double[] stack, int from)
        {
            for (int i = from; i < sizes.Length && stack.Length < Most; i++)
            {
                double[] longer = [.. stack, sizes[i]];
                yield return new(longer);
                foreach (ShimPack more in Extend(longer, i))
                {
                    yield return more;
                }
            }
        }
    }

    /// <summary>"2 + 0.5 mm".</summary>
    public override string ToString() => ThicknessesMm.Count == 0
        ? "no shim"
        : string.Join(" + ", ThicknessesMm.Select(t => t.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture))) + " mm";
}
