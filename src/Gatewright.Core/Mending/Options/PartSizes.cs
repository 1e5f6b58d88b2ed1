namespace Gatewright.Core.Mending.Options;

/// <summary>The sizes in which parts can be had: those of the trade, and those on the club's own list.</summary>
/// <param name="Inserts">Degrees, rising.</param>
/// <param name="Shims">Millimetres, rising.</param>
/// <param name="Washers">Millimetres, rising.</param>
public sealed record PartSizes(
    IReadOnlyList<double> Inserts, IReadOnlyList<double> Shims, IReadOnlyList<double> Washers)
{
    /// <summary>What can be bought, by the settings.</summary>
    public static PartSizes Of(MendingSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        double step = settings.InsertStepDegrees;
        int first = (int)Math.Ceiling((settings.LeastInsertDegrees / step) - Rounding);
        int last = (int)Math.Floor((settings.MostInsertDegrees / step) + Rounding);
        IReadOnlyList<double> shims = Rising(settings.ShimSizesMm);
        return new([.. Enumerable.Range(first, Math.Max(0, last - first + 1)).Select(i => i * step)], shims, shims);
    }

    /// <summary>What can be bought, and every size on a list of stores, whatever its count.</summary>
    public static PartSizes Of(MendingSettings settings, Stores stores)
    {
        ArgumentNullException.ThrowIfNull(stores);
        PartSizes bought = Of(settings);
        return new(
            And(bought.Inserts, PartKind.Insert), And(bought.Shims, PartKind.Shim), And(bought.Washers, PartKind.Washer));

        IReadOnlyList<double> And(IReadOnlyList<double> sizes, PartKind kind) =>
            Rising(sizes.Concat(stores.Parts.Where(p => p.Part.Kind == kind).Select(p => p.Part.Size)));
    }

    /// <summary>A size that is a whole number of steps but for rounding counts as one.</summary>
    private const double Rounding = 1e-9;

    private static IReadOnlyList<double> Rising(IEnumerable<double> sizes) => [.. sizes.Distinct().Order()];
}
