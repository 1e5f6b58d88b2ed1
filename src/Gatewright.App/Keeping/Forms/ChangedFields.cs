using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.App.Keeping.Forms;

/// <summary>
/// What of a form is to be recorded: only fields that are otherwise than they were. Of each field the latest setting holds,
/// so that one who changes a name must not undo what another meanwhile did to the rack.
/// </summary>
public static class ChangedFields
{
    /// <summary>The fields that changed, as one fact; none where nothing did.</summary>
    /// <param name="club">The club.</param>
    /// <param name="thing">The kind of thing.</param>
    /// <param name="key">Which one.</param>
    /// <param name="fields">All fields of the form as the journal has them; null for nothing.</param>
    public static IReadOnlyList<Fact> Of(Club club, string thing, string key, Dictionary<string, string?> fields)
    {
        ArgumentNullException.ThrowIfNull(fields);
        var before = new ThingView(club, thing, key);
        Dictionary<string, string?> changed = fields.Where(f => before[f.Key] != f.Value).ToDictionary(f => f.Key, f => f.Value);
        return changed.Count == 0 ? [] : [new ThingSet(thing, key, changed)];
    }
}
