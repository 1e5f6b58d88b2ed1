using System.Globalization;
using Gatewright.App.Frame;
using Gatewright.App.Keeping.Forms;
using Gatewright.Core.Oars;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.App.Keeping.Oars;

/// <summary>An oar as somebody is typing it: what it is, where it is rowed, and figures measured today.</summary>
public sealed class OarForm
{
    private FieldsBefore _before = FieldsBefore.None;

    /// <summary>What it is called.</summary>
    public string? Name { get; set; }

    /// <summary>The key of its set; empty for none.</summary>
    public string? Set { get; set; }

    /// <summary>port, starboard, or empty.</summary>
    public string? Side { get; set; }

    /// <summary>The shape of its blade; empty for its set's.</summary>
    public string? Blade { get; set; }

    /// <summary>The key of the boat it is rowed in; empty for none.</summary>
    public string? Boat { get; set; }

    /// <summary>At which seat; empty where that is not said.</summary>
    public string? Seat { get; set; }

    /// <summary>Its length as it was just measured, centimetres; empty for not measured.</summary>
    public string? Length { get; set; }

    /// <summary>Its inboard as it was just measured, centimetres.</summary>
    public string? Inboard { get; set; }

    /// <summary>Its weight as it was just weighed, kilograms.</summary>
    public string? Weight { get; set; }

    /// <summary>Whether it is no longer used.</summary>
    public bool IsOutOfUse { get; set; }

    /// <summary>An oar as it is on record; an empty form for one that is not.</summary>
    public static OarForm Of(Club club, string key)
    {
        var thing = new ThingView(club, Things.Oar, key);
        var form = new OarForm
        {
            Name = thing["name"],
            Set = thing["set"],
            Side = thing["side"],
            Blade = thing["blade"],
            Boat = thing["boat"],
            Seat = thing["seat"],
            IsOutOfUse = thing.IsOutOfUse,
        };
        form._before = thing.Fields.Count > 0 ? FieldsBefore.Of(form.Fields) : FieldsBefore.None;
        return form;
    }

    /// <summary>The shapes there are, with what they are called here; one that a club wrote otherwise is kept.</summary>
    /// <param name="now">The one that is chosen; null for none.</param>
    /// <param name="texts">The texts.</param>
    /// <param name="otherwise">What holds where none is chosen: that of the set, or of its oars; null for nothing.</param>
    public static IEnumerable<(string Value, string Text)> Blades(string? now, Texts<OarsTexts> texts, string? otherwise = null)
    {
        ArgumentNullException.ThrowIfNull(texts);
        yield return (string.Empty, otherwise ?? texts["BladeUnsaid"]);
        foreach (string shape in BladeShapes.All)
        {
            yield return (shape, OarsSaid.Blade(shape, texts));
        }

        if (!string.IsNullOrWhiteSpace(now) && !BladeShapes.All.Contains(now))
        {
            yield return (now, now);
        }
    }

    /// <summary>What is wrong, by field, each as the name of its text.</summary>
    /// <param name="club">The club.</param>
    /// <param name="key">The oar's key; null for one that is new.</param>
    public IReadOnlyDictionary<string, string> Problems(Club club, string? key)
    {
        ArgumentNullException.ThrowIfNull(club);
        var problems = new Dictionary<string, string>();
        if (string.IsNullOrWhiteSpace(Name))
        {
            problems[nameof(Name)] = "NeedsName";
        }
        else if (IsTaken(club, Things.Oar, Name, key))
        {
            problems[nameof(Name)] = "NameTaken";
        }

        if (!string.IsNullOrWhiteSpace(Seat))
        {
            int? seats = string.IsNullOrEmpty(Boat) ? null : new BoatView(club, Boat).Class?.Seats;
            if (!(Figures.Count(Seat) is >= 1 and { } seat && seat <= (seats ?? 8)))
            {
                problems[nameof(Seat)] = "WrongSeat";
            }
            else if (string.IsNullOrEmpty(Boat))
            {
                problems[nameof(Seat)] = "SeatOfNoBoat";
            }
        }

        foreach ((string field, OarItem item, string? typed) in Measured)
        {
            (double least, double most) = item.Plausible();
            if (!string.IsNullOrWhiteSpace(typed) && !(Figures.Read(typed) is { } value && (double)value >= least && (double)value <= most))
            {
                problems[field] = "Wrong" + field;
            }
        }

        return problems;
    }

    /// <summary>What is to be recorded: fields that are otherwise than the form began with, and what was measured. Only without problems.</summary>
    public IReadOnlyList<Fact> Facts(string key)
    {
        List<Fact> facts = [.. _before.Changed(Things.Oar, key, Fields)];
        foreach ((_, OarItem item, string? typed) in Measured)
        {
            if (Figures.Read(typed) is { } value)
            {
                facts.Add(new OarRead(key, item, value));
            }
        }

        return facts;
    }

    /// <summary>Whether another thing of a kind has a name.</summary>
    internal static bool IsTaken(Club club, string thing, string name, string? key)
    {
        foreach (Subject subject in club.Subjects)
        {
            if (subject.Thing == thing && subject.Key != key
                && string.Equals(new ThingView(club, thing, subject.Key)["name"], name.Trim(), StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }

    private (string Field, OarItem Item, string? Typed)[] Measured =>
        [(nameof(Length), OarItem.Length, Length), (nameof(Inboard), OarItem.Inboard, Inboard), (nameof(Weight), OarItem.Weight, Weight)];

    private Dictionary<string, string?> Fields => new()
    {
        ["name"] = Name?.Trim(),
        ["set"] = Given(Set),
        ["side"] = Given(Side),
        ["blade"] = Given(Blade),
        ["boat"] = Given(Boat),
        ["seat"] = Figures.Count(Seat)?.ToString(CultureInfo.InvariantCulture),
        ["out-of-use"] = IsOutOfUse ? "yes" : null,
    };

    private static string? Given(string? value) => string.IsNullOrWhiteSpace(value) ? null : value;
}
