using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Oars;
using Gatewright.Core.Rig;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Oars;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Rigging;

/// <summary>
/// What was read by themselves of the oars that are rowed at a boat's gates, as measures of its rig. What an oar's form states was
/// not measured and is none.
/// </summary>
internal static class OarsOfBoat
{
    /// <summary>
    /// Of each gate's oar its lengths and inboards, oldest first. Of several oars at one gate none: which of them is rowed nobody said.
    /// </summary>
    public static IEnumerable<OtherFigure> Read(Club club, string boat, IReadOnlyList<GatePlace> gates)
    {
        foreach ((Subject subject, ThingView oar, GatePlace gate) in Rowed(club, boat, gates).GroupBy(o => o.Gate).Where(g => g.Count() == 1).SelectMany(g => g))
        {
            var source = new SourceOar(subject.Key, oar["name"] ?? subject.Key, SetOf(club, oar["set"]));
            foreach (Recorded record in club.About(subject))
            {
                if (record.As<OarRead>() is { } read && Reading(read, gate, Day.Of(record)) is { } reading)
                {
                    yield return new(record, reading, source);
                }
            }
        }
    }

    private static IEnumerable<(Subject Subject, ThingView Oar, GatePlace Gate)> Rowed(Club club, string boat, IReadOnlyList<GatePlace> gates)
    {
        foreach (Subject subject in club.Subjects.Where(s => s.Thing == Things.Oar).OrderBy(s => s.Key, StringComparer.Ordinal))
        {
            var oar = new ThingView(club, Things.Oar, subject.Key);
            if (oar["boat"] == boat && !oar.IsOutOfUse && Gate(oar, gates) is { } gate)
            {
                yield return (subject, oar, gate);
            }
        }
    }

    private static GatePlace? Gate(ThingView oar, IReadOnlyList<GatePlace> gates)
    {
        Side? side = Sides.OfWord(oar["side"]);
        return int.TryParse(oar["seat"], NumberStyles.None, CultureInfo.InvariantCulture, out int seat) ? GateOfOar.Of(seat, side, gates) : null;
    }

    private static RigReading? Reading(OarRead read, GatePlace gate, DateOnly day)
    {
        RigMeasure? measure = read.Item switch
        {
            OarItem.Length => RigMeasure.OarLength,
            OarItem.Inboard => RigMeasure.Inboard,
            _ => null,
        };
        return measure is { } of && (RigUnits.OfWord(read.Unit ?? "cm") ?? RigUnit.Centimetres) is var unit
            ? new(of, new(gate.Seat, gate.Side), unit.InOwn((double)read.Value), day)
            : null;
    }

    private static string? SetOf(Club club, string? key) =>
        string.IsNullOrEmpty(key) ? null : new ThingView(club, Things.OarSet, key)["name"] ?? key;
}
