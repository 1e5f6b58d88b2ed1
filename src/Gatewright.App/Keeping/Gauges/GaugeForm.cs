using Gatewright.App.Frame;
using Gatewright.App.Keeping.Forms;
using Gatewright.Core.Measuring;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.App.Keeping.Gauges;

/// <summary>A gauge as somebody is typing it.</summary>
public sealed class GaugeForm
{
    private const decimal Most = 5;
    private FieldsBefore _before = FieldsBefore.None;

    /// <summary>What it is called.</summary>
    public string? Name { get; set; }

    /// <summary>Its step in degrees; empty for the usual one.</summary>
    public string? Resolution { get; set; }

    /// <summary>The standard deviation of reading again, in degrees; empty for the usual one.</summary>
    public string? Repeatability { get; set; }

    /// <summary>A gauge as it is on record; an empty form for one that is not.</summary>
    public static GaugeForm Of(Club club, string key)
    {
        var thing = new ThingView(club, Things.Gauge, key);
        var form = new GaugeForm
        {
            Name = thing["name"],
            Resolution = Figures.Read(thing["resolution"]) is { } step ? Figures.Text(step) : null,
            Repeatability = Figures.Read(thing["repeatability"]) is { } spread ? Figures.Text(spread) : null,
        };
        form._before = thing.Fields.Count > 0 ? FieldsBefore.Of(form.Fields) : FieldsBefore.None;
        return form;
    }

    /// <summary>What is wrong, by field, each as the name of its text.</summary>
    /// <param name="club">The club.</param>
    /// <param name="key">The gauge's key; null for one that is new.</param>
    public IReadOnlyDictionary<string, string> Problems(Club club, string? key)
    {
        var problems = new Dictionary<string, string>();
        if (string.IsNullOrWhiteSpace(Name))
        {
            problems[nameof(Name)] = "NeedsName";
        }
        else if (GaugeView.All(club, MeasuringSettings.Default).Any(g => g.Key != key && g.Gauge.Name.Equals(Name.Trim(), StringComparison.OrdinalIgnoreCase)))
        {
            problems[nameof(Name)] = "NameTaken";
        }

        if (!string.IsNullOrWhiteSpace(Resolution) && !(Figures.Read(Resolution) is > 0 and <= Most))
        {
            problems[nameof(Resolution)] = "WrongResolution";
        }

        if (!string.IsNullOrWhiteSpace(Repeatability) && !(Figures.Read(Repeatability) is >= 0 and <= Most))
        {
            problems[nameof(Repeatability)] = "WrongRepeatability";
        }

        return problems;
    }

    /// <summary>What is to be recorded: the fields that are otherwise than the form began with. Only without problems.</summary>
    public IReadOnlyList<Fact> Facts(string key) => _before.Changed(Things.Gauge, key, Fields);

    private Dictionary<string, string?> Fields => new()
    {
        ["name"] = Name?.Trim(),
        ["resolution"] = Figures.Read(Resolution) is { } step ? Figures.Recorded(step) : null,
        ["repeatability"] = Figures.Read(Repeatability) is { } spread ? Figures.Recorded(spread) : null,
    };
}
