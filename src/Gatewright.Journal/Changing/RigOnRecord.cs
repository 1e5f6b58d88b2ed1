using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Changing;
using Gatewright.Core.Checking;
using Gatewright.Core.Rig;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Rigging;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Changing;

/// <summary>A boat's rig as a club's journal tells it: of today, or of a day, in a club as it was then.</summary>
public static class RigOnRecord
{
    /// <summary>The rig of a boat; null while its class is not known.</summary>
    /// <param name="club">The club; as of a day, <see cref="ClubOnDay"/>.</param>
    /// <param name="boat">The boat in it.</param>
    /// <param name="check">How its gates were judged; null where nothing was read of them.</param>
    /// <param name="name">What the rig is to be called.</param>
    public static RigOfBoat? Of(Club club, BoatView boat, BoatCheck? check, string name)
    {
        ArgumentNullException.ThrowIfNull(club);
        ArgumentNullException.ThrowIfNull(boat);
        if (boat.Class is not { } boatClass)
        {
            return null;
        }

        var view = new RigView(club, boat);
        var values = new List<RigValue>(RigValues.Of(view.Readings));
        if (check is not null)
        {
            values.AddRange(RigValues.Of(check));
        }

        IReadOnlyList<RigMark> oars = Marks(club, Things.Oar, boat.Key, view.Gates);
        return new(name, boatClass, view.Gates, values, Marks(club, Things.Rigger, boat.Key, view.Gates), oars, Inserts(club, boat.Key, view.Gates));
    }

    /// <summary>
    /// The settings by which a rig is read: of each gate its last day alone. Between two days something may have been set and not told
    /// of, and that is just what a comparison is asked for.
    /// </summary>
    public static CheckSettings LastDay(CheckSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return settings with { DaysCombined = 1 };
    }

    /// <summary>The rig of a boat on a day, or today for null; null while its class is not known.</summary>
    public static RigOfBoat? On(Club club, string key, DateOnly? day, CheckSettings settings, string name)
    {
        ArgumentNullException.ThrowIfNull(club);
        ArgumentNullException.ThrowIfNull(settings);
        Club then = BoatJournal.Of(club, key);
        if (day is { } on)
        {
            then = ClubOnDay.Of(then, on);
        }

        // What a boat is called and its class are of today: they are often told after its first readings.
        Club known = then;
        foreach (Recorded record in club.About(Subject.Boat(key)))
        {
            if (record.Fact is ThingSet { Thing: Things.Boat } set && set.Fields.ContainsKey("class") && then.Find(record.Entry.Id) is null)
            {
                known = known.With([record]);
            }
        }

        var boat = new BoatView(known, key);
        BoatRecord? taken = boat.Record(settings.Diagnosing.Measuring);
        BoatCheck? check = taken is { Current.Readings.Count: > 0 }
            ? taken.Check(LastDay(settings) with { Standard = ClubSettings.Of(known, boat) })
            : null;
        return Of(known, boat, check, name);
    }

    /// <summary>What is marked and belongs to a gate of the boat; of a sweep seat the side need not be said.</summary>
    private static List<RigMark> Marks(Club club, string thing, string boat, IReadOnlyList<GatePlace> gates)
    {
        var marks = new List<RigMark>();
        foreach (Subject subject in club.Subjects.Where(s => s.Thing == thing).OrderBy(s => s.Key, StringComparer.Ordinal))
        {
            var view = new ThingView(club, thing, subject.Key);
            if (view["boat"] == boat && int.TryParse(view["seat"], NumberStyles.None, CultureInfo.InvariantCulture, out int seat))
            {
                foreach (GatePlace gate in gates)
                {
                    bool isThere = gate.Seat == seat && (view["side"] is not { } side ? gates.Count(g => g.Seat == seat) == 1 : gate.Side.Word() == side);
                    if (isThere && !marks.Exists(m => m.At == gate))
                    {
                        marks.Add(new(gate, view["name"] ?? subject.Key));
                    }
                }
            }
        }

        return marks;
    }

    private static Dictionary<GatePlace, double> Inserts(Club club, string boat, IReadOnlyList<GatePlace> gates)
    {
        var inserts = new Dictionary<GatePlace, double>();
        foreach (GatePlace gate in gates)
        {
            if (double.TryParse(Gate(club, boat, gate)["insert"], NumberStyles.Float, CultureInfo.InvariantCulture, out double stamp))
            {
                inserts[gate] = stamp;
            }
        }

        return inserts;
    }

    /// <summary>What was set of a gate.</summary>
    internal static ThingView Gate(Club club, string boat, GatePlace gate) =>
        new(club, Things.Gate, Things.GateKey(boat, gate));
}
