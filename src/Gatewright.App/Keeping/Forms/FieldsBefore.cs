using Gatewright.Journal.Facts;

namespace Gatewright.App.Keeping.Forms;

/// <summary>
/// The fields of a thing as a form began with them. Only what is otherwise in the form is recorded: of each field the latest
/// setting holds, so that one who changes a name must not undo what another meanwhile did to the rack.
/// </summary>
public sealed class FieldsBefore
{
    private readonly IReadOnlyDictionary<string, string?> _fields;

    private FieldsBefore(IReadOnlyDictionary<string, string?> fields) => _fields = fields;

    /// <summary>Those of a thing that is new.</summary>
    public static FieldsBefore None { get; } = new(new Dictionary<string, string?>());

    /// <summary>Those that a form begins with, as it shows them: what is usual where nothing was set is no change.</summary>
    public static FieldsBefore Of(IReadOnlyDictionary<string, string?> fields) => new(fields);

    /// <summary>The fields that changed, as one fact; none where nothing did.</summary>
    /// <param name="thing">The kind of thing.</param>
    /// <param name="key">Which one.</param>
    /// <param name="fields">All fields of the form as the journal has them; null for nothing.</param>
    public IReadOnlyList<Fact> Changed(string thing, string key, IReadOnlyDictionary<string, string?> fields)
    {
        ArgumentNullException.ThrowIfNull(fields);
        Dictionary<string, string?> changed = fields.Where(f => _fields.GetValueOrDefault(f.Key) != f.Value).ToDictionary(f => f.Key, f => f.Value);
        return changed.Count == 0 ? [] : [new ThingSet(thing, key, changed)];
    }
}
