using Gatewright.App.Frame;
using Gatewright.App.Keeping.Forms;
using Gatewright.Core.Judging;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Keeping;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.App.Keeping.Standards;

/// <summary>A standard as somebody is typing it: every number as text, so that half a number stays as it was typed.</summary>
public sealed class StandardForm
{
    private readonly Dictionary<string, string?> _typed = [];
    private FieldsBefore _before = FieldsBefore.None;

    private StandardForm(string? name, Standard from)
    {
        Name = name;
        foreach (string field in StandardFields.All)
        {
            _typed[field] = Figures.Text(StandardFields.Value(from, field));
        }
    }

    /// <summary>What it is called.</summary>
    public string? Name { get; set; }

    /// <summary>A number as it is typed.</summary>
    public string? this[string field]
    {
        get => _typed[field];
        set => _typed[field] = value;
    }

    /// <summary>The numbers, null for what is none.</summary>
    public IReadOnlyDictionary<string, decimal?> Values => _typed.ToDictionary(t => t.Key, t => Figures.Read(t.Value));

    /// <summary>A form for a new standard that begins with another's numbers.</summary>
    public static StandardForm New(string? name, Standard from) => new(name, from);

    /// <summary>A form for a standard of the club's own.</summary>
    public static StandardForm Of(Standard own)
    {
        ArgumentNullException.ThrowIfNull(own);
        var form = new StandardForm(own.Name, own);
        form._before = FieldsBefore.Of(form.Fields);
        return form;
    }

    /// <summary>Everything that is wrong, by field.</summary>
    public IReadOnlyDictionary<string, StandardFault> Faults()
    {
        var faults = new Dictionary<string, StandardFault>();
        foreach ((string field, StandardFault fault) in StandardFields.Faults(Values))
        {
            faults.TryAdd(field, fault);
        }

        return faults;
    }

    /// <summary>What is wrong with the name, as the name of a text; null where nothing is.</summary>
    /// <param name="club">The club.</param>
    /// <param name="key">The standard's key; null for one that is new.</param>
    public string? NameProblem(Club club, string? key) =>
        string.IsNullOrWhiteSpace(Name) ? "NeedsName"
        : StandardsView.Of(club).Any(s => s.Key != key && s.Value.Name.Equals(Name.Trim(), StringComparison.OrdinalIgnoreCase)) ? "NameTaken"
        : null;

    /// <summary>What is to be recorded: the fields that are otherwise than the form began with. Only without faults.</summary>
    public IReadOnlyList<Fact> Facts(string key) => _before.Changed(Things.Standard, key, Fields);

    private Dictionary<string, string?> Fields
    {
        get
        {
            Dictionary<string, string?> fields = Values.ToDictionary(v => v.Key, v => v.Value is { } value ? Figures.Recorded(value) : null);
            fields["name"] = Name?.Trim();
            return fields;
        }
    }
}
