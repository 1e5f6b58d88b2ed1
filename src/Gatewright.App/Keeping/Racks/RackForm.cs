using Gatewright.App.Frame;
using Gatewright.App.Keeping.Forms;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.App.Keeping.Racks;

/// <summary>A rack as somebody is typing it.</summary>
public sealed class RackForm
{
    private FieldsBefore _before = FieldsBefore.None;

    /// <summary>What it is called.</summary>
    public string? Name { get; set; }

    /// <summary>Its place on the walk, as typed; empty for none.</summary>
    public string? Order { get; set; }

    /// <summary>firm or soft.</summary>
    public string? Bed { get; set; }

    /// <summary>What its label says.</summary>
    public string? Code { get; set; }

    /// <summary>A rack as it is on record; for one that is new, the next place on the walk.</summary>
    /// <param name="club">The club.</param>
    /// <param name="key">The rack's key; null for one that is new.</param>
    public static RackForm Of(Club club, string? key)
    {
        if (key is null)
        {
            decimal next = RackView.All(club).Select(r => r.Order ?? 0).DefaultIfEmpty().Max() + 1;
            return new() { Order = Figures.Text(decimal.Floor(next)), Bed = "firm" };
        }

        var thing = new ThingView(club, Things.Rack, key);
        var form = new RackForm
        {
            Name = thing["name"],
            Order = Figures.Read(thing["order"]) is { } order ? Figures.Text(order) : null,
            Bed = thing["bed"] ?? "firm",
            Code = thing["code"],
        };
        form._before = FieldsBefore.Of(form.Fields);
        return form;
    }

    /// <summary>What is wrong, by field, each as the name of its text.</summary>
    /// <param name="club">The club.</param>
    /// <param name="key">The rack's key; null for one that is new.</param>
    public IReadOnlyDictionary<string, string> Problems(Club club, string? key)
    {
        var problems = new Dictionary<string, string>();
        if (string.IsNullOrWhiteSpace(Name))
        {
            problems[nameof(Name)] = "NeedsName";
        }
        else if (RackView.All(club).Any(r => r.Key != key && r.Title.Equals(Name.Trim(), StringComparison.OrdinalIgnoreCase)))
        {
            problems[nameof(Name)] = "NameTaken";
        }

        if (!string.IsNullOrWhiteSpace(Order) && Figures.Read(Order) is null)
        {
            problems[nameof(Order)] = "WrongOrder";
        }

        return problems;
    }

    /// <summary>What is to be recorded: the fields that are otherwise than the form began with. Only without problems.</summary>
    public IReadOnlyList<Fact> Facts(string key) => _before.Changed(Things.Rack, key, Fields);

    private Dictionary<string, string?> Fields => new()
    {
        ["name"] = Name?.Trim(),
        ["order"] = Figures.Read(Order) is { } order ? Figures.Recorded(order) : null,
        ["bed"] = Bed,
        ["code"] = string.IsNullOrWhiteSpace(Code) ? null : Code.Trim(),
    };
}
