using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Oars;
using Gatewright.Journal.Exchange.OarsFiles;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Exchange.Recording;

/// <summary>A file of oars as entries of a club's journal.</summary>
/// <remarks>
/// Recording a file again adds nothing. A blank cell says nothing: it takes nothing away. Sleeves of one day, read on boats that lay
/// alike, are of one occasion and share the boat's level.
/// </remarks>
public static class OarsRecording
{
    /// <summary>The entries of a file of oars.</summary>
    /// <param name="input">The file, without errors.</param>
    /// <param name="club">The club as it is.</param>
    /// <param name="stamp">Who records it, and when.</param>
    /// <exception cref="ArgumentException">The file has errors.</exception>
    public static RecordedFile Entries(OarsInput input, Club club, RecordingStamp stamp)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(club);
        ArgumentNullException.ThrowIfNull(stamp);
        if (input.Errors.Count > 0)
        {
            throw new ArgumentException($"Nothing is recorded from a file with errors. The first: {input.Errors[0]}", nameof(input));
        }

        var pen = new RecordingPen(club, stamp);
        var oars = new OarKeys(club);
        var sets = new ThingNames(club, Things.OarSet);
        var boats = new ThingNames(club, Things.Boat);
        var gauges = new ThingNames(club, Things.Gauge);
        var told = new Dictionary<(string Thing, string Key, string Field), string>();
        foreach (OarRow row in input.Rows)
        {
            string? set = row.Set is null ? null : sets.Key(row.Set);
            string? boat = row.Boat is null ? null : boats.Key(row.Boat);
            string oar = oars.Key(set, row.Oar);
            if (set is not null)
            {
                Tell(Things.OarSet, set, ("name", row.Set));
            }

            if (boat is not null)
            {
                Tell(Things.Boat, boat, ("name", row.Boat));
            }

            Tell(
                Things.Oar, oar, ("name", row.Oar), ("set", set), ("side", row.Side?.Word()), ("blade", row.Blade), ("boat", boat),
                ("seat", row.Seat?.ToString(CultureInfo.InvariantCulture)));
            Read(row, oar, gauges, pen);
        }

        return pen.Close();

        void Tell(string thing, string key, params (string Field, string? Value)[] fields)
        {
            ThingView? known = null;
            var changed = new Dictionary<string, string?>();
            foreach ((string field, string? value) in fields)
            {
                if (value is not null && (told.GetValueOrDefault((thing, key, field)) ?? (known ??= new(club, thing, key))[field]) != value)
                {
                    told[(thing, key, field)] = value;
                    changed[field] = value;
                }
            }

            if (changed.Count > 0)
            {
                pen.New(new ThingSet(thing, key, changed));
            }
        }
    }

    private static void Read(OarRow row, string oar, ThingNames gauges, RecordingPen pen)
    {
        foreach ((OarItem item, decimal? value) in ((OarItem, decimal?)[])[(OarItem.Length, row.Length), (OarItem.Inboard, row.Inboard), (OarItem.Weight, row.Weight)])
        {
            if (value is { } figure)
            {
                pen.Once(row.Date, new OarRead(oar, item, figure, Date: row.Date));
            }
        }

        if (row.Sleeve is { } sleeve)
        {
            Lie lie = row.Lie ?? Lie.Upright;
            string session = string.Create(CultureInfo.InvariantCulture, $"file-{row.Date:yyyyMMdd}-{lie.Word()}-{row.Level.ToString().ToLowerInvariant()}{row.BowHigh}");
            pen.Once(row.Date, new OarRead(
                oar, OarItem.Sleeve, sleeve, Session: session, Lie: lie, Level: row.Level, BowHigh: row.BowHigh, Laid: row.Laid,
                Gauge: row.Gauge is null ? null : gauges.Key(row.Gauge), Date: row.Date));
        }
    }

    /// <summary>A club's oars by set and name: "1" of two sets is two oars.</summary>
    private sealed class OarKeys
    {
        private readonly Dictionary<(string? Set, string Name), string> _keys = [];
        private readonly ThingNames _names;

        public OarKeys(Club club)
        {
            _names = new(club, Things.Oar);
            foreach (Subject subject in club.Subjects.Where(s => s.Thing == Things.Oar).OrderBy(s => s.Key, StringComparer.Ordinal))
            {
                var thing = new ThingView(club, Things.Oar, subject.Key);
                _keys.TryAdd((thing["set"], NameText.Key(thing["name"] ?? subject.Key)), subject.Key);
            }
        }

        public string Key(string? set, string name)
        {
            (string?, string) of = (set, NameText.Key(name));
            if (!_keys.TryGetValue(of, out string? key))
            {
                // Named with its set it meets no oar that is there: that of its own set would have been found.
                _keys.Add(of, key = _names.Key(set is null ? name : $"{set.Replace('-', ' ')} {name}"));
            }

            return key;
        }
    }
}
