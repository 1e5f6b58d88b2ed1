using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Rig;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Rigging;

/// <summary>A club's targets of the rig: its own for a boat, else for class and crew, else the starting ones.</summary>
public static class TargetsView
{
    /// <summary>The targets of a boat, for the crew that the club says rows it; null until its class is known.</summary>
    public static RigTargets? Of(Club club, BoatView boat)
    {
        ArgumentNullException.ThrowIfNull(boat);
        return Of(club, boat, boat.Crew);
    }

    /// <summary>The targets of a boat for a crew, or for women and men alike; null until its class is known.</summary>
    public static RigTargets? Of(Club club, BoatView boat, Crew? crew)
    {
        ArgumentNullException.ThrowIfNull(boat);
        return boat.Class is { } boatClass ? Of(club, boatClass, crew, boat.Key) : null;
    }

    /// <summary>The targets of a class and crew, as the club has them.</summary>
    public static RigTargets Of(Club club, BoatClass boatClass, Crew? crew) => Of(club, boatClass, crew, null);

    /// <summary>The targets that a club has set, by key, in the order of their text.</summary>
    public static IEnumerable<TargetKey> Set(Club club)
    {
        ArgumentNullException.ThrowIfNull(club);
        foreach (Subject subject in club.Subjects.Where(s => s.Thing == Things.Target).OrderBy(s => s.Key, StringComparer.Ordinal))
        {
            if (TargetKey.Parse(subject.Key) is { } key && new ThingView(club, Things.Target, subject.Key)["value"] is not null)
            {
                yield return key;
            }
        }
    }

    private static RigTargets Of(Club club, BoatClass boatClass, Crew? crew, string? boat)
    {
        var targets = RigTargets.Starting(boatClass, crew);

        // Whoever rows it first, so that what is set for the crew comes after and holds.
        foreach (TargetKey key in Set(club).OrderBy(k => k.Crew is null ? 0 : 1))
        {
            bool isOfIt = key.Boat is { } one ? one == boat : key.Class == boatClass && (key.Crew is null || key.Crew == crew);
            if (isOfIt && Read(club, key, targets) is { } target)
            {
                targets = targets.With(target);
            }
        }

        return targets;
    }

    /// <summary>
    /// A target without a tolerance has that of the one it stands before. What no such measure can be is passed over: entries of
    /// before may have any figure, and an oar no longer than its inboard has no gearing.
    /// </summary>
    private static RigTarget? Read(Club club, TargetKey key, RigTargets before)
    {
        var thing = new ThingView(club, Things.Target, key.ToString());
        RigUnit unit = RigUnits.OfWord(thing["unit"]) is { } known && key.Measure.Takes(known) ? known : key.Measure.Unit();
        double? tolerance = Number(thing["tolerance"]) is { } own
            ? unit.InOwn(own)
            : before.Find(key.Measure, key.Aspect, new(key.Seat ?? 0, key.Side))?.Tolerance;
        return Number(thing["value"]) is { } value && tolerance is >= 0 and { } within
            && (key.Aspect != RigAspect.Value || key.Measure.CanBe(unit.InOwn(value)))
            ? new(key.Measure, key.Aspect, unit.InOwn(value), within, key.Boat is null ? RigSource.Club : RigSource.Boat, key.Seat, key.Side)
            : null;
    }

    private static double? Number(string? text) =>
        decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value)
            ? (double)value
            : null;
}
