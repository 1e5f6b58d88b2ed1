using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Geometry;
using Gatewright.Core.Judging;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>A club's standards: those built in, and its own, by key.</summary>
public static class StandardsView
{
    /// <summary>The standards a boat can be judged by: those built in first, the others by key.</summary>
    /// <remarks>
    /// What one of the club's own does not state is as in the built-in one of its key, else as in <see cref="Standard.Club"/>.
    /// One whose limits are not in order cannot be judged by and is left out.
    /// </remarks>
    public static IReadOnlyDictionary<string, Standard> Of(Club club)
    {
        ArgumentNullException.ThrowIfNull(club);
        // What only grows is gone through as it grew.
        Dictionary<string, Standard> standards = Standard.BuiltIn.ToDictionary(s => s.Name);
        foreach (Subject subject in club.Subjects.Where(s => s.Thing == Things.Standard).OrderBy(s => s.Key, StringComparer.Ordinal))
        {
            Standard own = Read(new(club, Things.Standard, subject.Key), standards.GetValueOrDefault(subject.Key, Standard.Club));
            if (Stations.All.All(station => own.At(station).AreInOrder))
            {
                standards[subject.Key] = own;
            }
        }

        return standards;
    }

    /// <summary>The standard of a key; <see cref="Standard.Club"/>, or what the club made of it, for none or one that is not there.</summary>
    public static Standard For(Club club, string? key)
    {
        IReadOnlyDictionary<string, Standard> standards = Of(club);
        return key is not null && standards.TryGetValue(key, out Standard? standard) ? standard : standards[Standard.Club.Name];
    }

    private static Standard Read(ThingView thing, Standard basis) => new(
        thing["name"] ?? thing.Key,
        Limits(thing, "catch", basis.Catch),
        Limits(thing, "abeam", basis.Abeam),
        Limits(thing, "finish", basis.Finish),
        Angle.FromDegrees(Number(thing, "largest-drop", basis.LargestDrop.Degrees)),
        Angle.FromDegrees(Number(thing, "largest-range", basis.LargestRange.Degrees)));

    private static StationLimits Limits(ThingView thing, string station, StationLimits basis) => StationLimits.FromDegrees(
        Number(thing, $"{station}-lowest", basis.Lowest.Degrees),
        Number(thing, $"{station}-highest", basis.Highest.Degrees),
        Number(thing, $"{station}-floor", basis.Floor.Degrees));

    private static double Number(ThingView thing, string field, double basis) =>
        decimal.TryParse(thing[field], NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value)
            ? (double)value
            : basis;
}
