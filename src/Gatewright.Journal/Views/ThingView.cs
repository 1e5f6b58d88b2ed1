using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Views;

/// <summary>A thing's properties: of each field the latest value that holds, and all it ever had.</summary>
public sealed class ThingView
{
    private readonly Dictionary<string, List<FieldValue>> _fields = [];

    /// <summary>The properties of a thing.</summary>
    /// <param name="club">The club.</param>
    /// <param name="thing">The kind of thing.</param>
    /// <param name="key">Which one.</param>
    public ThingView(Club club, string thing, string key)
    {
        ArgumentNullException.ThrowIfNull(club);
        (Thing, Key) = (thing, key);
        var probe = new ThingSet(thing, key, new Dictionary<string, string?>());
        foreach (Recorded record in club.Everything(Subject.Of(probe)))
        {
            if (record.As<ThingSet>() is { } set && set.Thing == thing && set.Key == key)
            {
                Take(record, set, !club.IsRetracted(record));
            }
        }
    }

    /// <summary>The kind of thing.</summary>
    public string Thing { get; }

    /// <summary>Which one.</summary>
    public string Key { get; }

    /// <summary>The fields that have ever been set.</summary>
    public IReadOnlyCollection<string> Fields => _fields.Keys;

    /// <summary>Whether it is no longer used: of a boat, an oar, a set of oars.</summary>
    public bool IsOutOfUse => this["out-of-use"] == "yes";

    /// <summary>A field's value, or null when it has none.</summary>
    public string? this[string field] => Holding(field)?.Value;

    /// <summary>The setting of a field that holds: the value with who said so, and when; null when none does.</summary>
    public FieldValue? Holding(string field) =>
        _fields.TryGetValue(field, out List<FieldValue>? values) ? values.FindLast(v => v.Holds) : null;

    /// <summary>All that a field ever was, oldest first: the values that lost and those retracted among them.</summary>
    public IReadOnlyList<FieldValue> History(string field) => _fields.TryGetValue(field, out List<FieldValue>? values) ? values : [];

    private void Take(Recorded record, ThingSet set, bool holds)
    {
        foreach ((string field, string? value) in set.Fields)
        {
            if (!_fields.TryGetValue(field, out List<FieldValue>? values))
            {
                _fields.Add(field, values = []);
            }

            values.Add(new(value, record.Entry, holds));
        }
    }
}
