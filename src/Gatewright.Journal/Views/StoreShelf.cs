using System.Globalization;
using Gatewright.Core.Mending;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Jobs;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>One part and size on the shelf, beside what the club's open jobs will take of it.</summary>
/// <param name="Part">insert, shim, washer or pin.</param>
/// <param name="Size">Degrees for an insert, millimetres for a shim or washer, 0 for a pin.</param>
/// <param name="Count">How many there are; below 0 where more was taken than was ever counted.</param>
/// <param name="Wanted">How many open jobs will still take.</param>
/// <param name="LowMark">Fewer than so many left over are few.</param>
public sealed record StoreLine(string Part, decimal Size, int Count, int Wanted, int LowMark)
{
    /// <summary>Whether there are too few for the open jobs.</summary>
    public bool IsShort => Count < Wanted;

    /// <summary>Whether few are left once the open jobs have theirs.</summary>
    public bool IsLow => Count - Wanted < LowMark;
}

/// <summary>The shelf as somebody who orders parts looks at it.</summary>
public static class StoreShelf
{
    /// <summary>The group of settings that holds <see cref="LowField"/>.</summary>
    public const string Group = "stores";

    /// <summary>The setting below which a count is low.</summary>
    public const string LowField = "low";

    /// <summary>Fewer than two left are few, unless the club says otherwise: one is gone with the next job (ours).</summary>
    public const int UsualLowMark = 2;

    /// <summary>Below how many a count is low.</summary>
    public static int LowMark(Club club) =>
        int.TryParse(new ThingView(club, Things.Settings, Group)[LowField], NumberStyles.None, CultureInfo.InvariantCulture, out int mark)
            ? mark
            : UsualLowMark;

    /// <summary>All that was ever counted or is wanted, by kind and size.</summary>
    public static IReadOnlyList<StoreLine> Of(Club club)
    {
        ArgumentNullException.ThrowIfNull(club);
        int low = LowMark(club);
        Dictionary<(string Part, decimal Size), int> wanted = PromisedParts.Of(club)
            .GroupBy(p => (p.Part, p.Size)).ToDictionary(g => g.Key, g => g.Sum(p => p.Count));
        IReadOnlyDictionary<(string Part, decimal Size), int> counts = StoresView.Of(club);
        return [.. counts.Keys.Concat(wanted.Keys).Distinct()
            .Select(k => new StoreLine(k.Part, k.Size, counts.GetValueOrDefault(k), wanted.GetValueOrDefault(k), low))
            .OrderBy(l => Order(l.Part)).ThenBy(l => l.Part, StringComparer.Ordinal).ThenBy(l => l.Size)];
    }

    private static int Order(string part) =>
        PartKinds.All.Select((k, i) => (k, i)).FirstOrDefault(k => k.k.Word() == part, (default, int.MaxValue)).Item2;
}
