using Gatewright.App.Frame;
using Gatewright.Journal.Views;

namespace Gatewright.App.Keeping.Boats;

/// <summary>What a gate is set to, as somebody is typing it: degrees, empty for what is usual.</summary>
public sealed class GateForm
{
    /// <summary>The fields of a gate, in the order in which they stand.</summary>
    public static IReadOnlyList<string> Names { get; } = ["insert", "target-aft", "target-out"];

    // Far beyond any gate: only a slip falls outside.
    private const decimal Most = 15;

    private readonly Dictionary<string, string?> _typed = [];

    /// <summary>What stands in a field: "insert", "target-aft" or "target-out".</summary>
    public string? this[string field]
    {
        get => _typed.GetValueOrDefault(field);
        set => _typed[field] = value;
    }

    /// <summary>A gate as it is on record.</summary>
    public static GateForm Of(ThingView gate)
    {
        ArgumentNullException.ThrowIfNull(gate);
        var form = new GateForm();
        foreach (string name in Names)
        {
            form[name] = Figures.Read(gate[name]) is { } value ? Figures.Text(value) : gate[name];
        }

        return form;
    }

    /// <summary>Whether a field holds degrees that a gate can have, or nothing.</summary>
    public bool IsRight(string field) =>
        string.IsNullOrWhiteSpace(this[field]) || Figures.Read(this[field]) is >= -Most and <= Most;

    /// <summary>Whether all of them do.</summary>
    public bool IsAllRight => Names.All(IsRight);

    /// <summary>Takes what another has where it has something.</summary>
    public void Take(GateForm other)
    {
        ArgumentNullException.ThrowIfNull(other);
        foreach (string name in Names.Where(n => !string.IsNullOrWhiteSpace(other[n])))
        {
            this[name] = other[name];
        }
    }

    /// <summary>The fields as the journal has them; null for what is usual.</summary>
    internal Dictionary<string, string?> Fields =>
        Names.ToDictionary(n => n, n => Figures.Read(this[n]) is { } value ? Figures.Recorded(value) : null);
}
