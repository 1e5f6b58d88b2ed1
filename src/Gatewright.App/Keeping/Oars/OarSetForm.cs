using Gatewright.App.Keeping.Forms;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.App.Keeping.Oars;

/// <summary>A set of oars as somebody is typing it.</summary>
public sealed class OarSetForm
{
    private FieldsBefore _before = FieldsBefore.None;

    /// <summary>What it is called.</summary>
    public string? Name { get; set; }

    /// <summary>The shape of its blades; empty for not said.</summary>
    public string? Blade { get; set; }

    /// <summary>Whether it is no longer used.</summary>
    public bool IsOutOfUse { get; set; }

    /// <summary>A set as it is on record; an empty form for one that is not.</summary>
    public static OarSetForm Of(Club club, string key)
    {
        var thing = new ThingView(club, Things.OarSet, key);
        var form = new OarSetForm { Name = thing["name"], Blade = thing["blade"], IsOutOfUse = thing.IsOutOfUse };
        form._before = thing.Fields.Count > 0 ? FieldsBefore.Of(form.Fields) : FieldsBefore.None;
        return form;
    }

    /// <summary>What is wrong, by field, each as the name of its text.</summary>
    /// <param name="club">The club.</param>
    /// <param name="key">The set's key; null for one that is new.</param>
    public IReadOnlyDictionary<string, string> Problems(Club club, string? key)
    {
        ArgumentNullException.ThrowIfNull(club);
        var problems = new Dictionary<string, string>();
        if (string.IsNullOrWhiteSpace(Name))
        {
            problems[nameof(Name)] = "NeedsName";
        }
        else if (OarForm.IsTaken(club, Things.OarSet, Name, key))
        {
            problems[nameof(Name)] = "NameTaken";
        }

        return problems;
    }

    /// <summary>What is to be recorded: the fields that are otherwise than the form began with. Only without problems.</summary>
    public IReadOnlyList<Fact> Facts(string key) => _before.Changed(Things.OarSet, key, Fields);

    private Dictionary<string, string?> Fields => new()
    {
        ["name"] = Name?.Trim(),
        ["blade"] = string.IsNullOrWhiteSpace(Blade) ? null : Blade,
        ["out-of-use"] = IsOutOfUse ? "yes" : null,
    };
}
