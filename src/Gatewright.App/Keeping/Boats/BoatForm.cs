using Gatewright.App.Keeping.Forms;
using Gatewright.Core;
using Gatewright.Drawings.Plan;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.App.Keeping.Boats;

/// <summary>A boat as somebody is typing it.</summary>
public sealed class BoatForm
{
    private readonly Dictionary<int, Side> _sides = [];
    private readonly Dictionary<GatePlace, GateForm> _parts = [];
    private readonly Dictionary<GatePlace, FieldsBefore> _partsBefore = [];
    private FieldsBefore _before = FieldsBefore.None;
    private IReadOnlyList<GatePlace> _gatesBefore = [];
    private bool _wasSaid;

    /// <summary>What it is called.</summary>
    public string? Name { get; set; }

    /// <summary>Its class's name; null or empty until one is chosen.</summary>
    public string? Class { get; set; }

    /// <summary>Its rack's key; empty for none.</summary>
    public string? Rack { get; set; }

    /// <summary>How it lies: upright, inverted, or empty for as usual.</summary>
    public string? Lie { get; set; }

    /// <summary>Its standard's key; empty for the club's.</summary>
    public string? Standard { get; set; }

    /// <summary>What its label says.</summary>
    public string? Code { get; set; }

    /// <summary>Whether it is no longer used.</summary>
    public bool IsOutOfUse { get; set; }

    /// <summary>The class chosen.</summary>
    public BoatClass? BoatClass => BoatClass.TryParse(Class);

    /// <summary>Whether each seat has one side, which only the rigging tells.</summary>
    public bool HasSides => BoatClass?.Rowing == Rowing.Sweep;

    /// <summary>The gates as the form has them.</summary>
    public IReadOnlyList<GatePlace> Gates => BoatClass is not { } chosen ? []
        : HasSides ? [.. UsualSides.Of(chosen).Select(g => new GatePlace(g.Seat, SideOf(g)))]
        : UsualSides.Of(chosen);

    /// <summary>A boat as it is on record; an empty form for one that is not.</summary>
    public static BoatForm Of(Club club, string key)
    {
        var view = new BoatView(club, key);
        var form = new BoatForm
        {
            Name = view.Properties["name"],
            Class = view.Class?.Name,
            Rack = BoatBerth.Of(view).Rack,
            Lie = view.Properties["lie"],
            Standard = view.Properties["standard"],
            Code = view.Properties["code"],
            IsOutOfUse = view.IsOutOfUse,
            _wasSaid = view.Properties["out-of-use"] is not null,
        };
        if (view.Properties.Fields.Count > 0)
        {
            form._before = FieldsBefore.Of(form.Fields);
        }

        foreach (GatePlace gate in form.BothSides)
        {
            var thing = new ThingView(club, Things.Gate, Things.GateKey(key, gate));
            form._parts[gate] = GateForm.Of(thing);
            form._partsBefore[gate] = FieldsBefore.Of(form._parts[gate].Fields);
        }

        if (form.HasSides)
        {
            form._gatesBefore = BoatGates.Of(club, view);
            foreach (GatePlace gate in form._gatesBefore)
            {
                form._sides[gate.Seat] = gate.Side;
            }
        }

        return form;
    }

    /// <summary>Puts a seat on the other side, with its rigger and so with what its gate is set to.</summary>
    public void Turn(GatePlace gate)
    {
        Side side = gate.Side == Side.Port ? Side.Starboard : Side.Port;
        GateForm moved = PartsOf(gate);
        _sides[gate.Seat] = side;
        PartsOf(new(gate.Seat, side)).Take(moved);
    }

    /// <summary>What a gate is set to: insert and leans.</summary>
    public GateForm PartsOf(GatePlace gate)
    {
        if (!_parts.TryGetValue(gate, out GateForm? parts))
        {
            _parts.Add(gate, parts = new());
        }

        return parts;
    }

    /// <summary>Sets every gate to the same, in the fields that are filled in.</summary>
    public void SetAll(GateForm same)
    {
        foreach (GatePlace gate in Gates)
        {
            PartsOf(gate).Take(same);
        }
    }

    /// <summary>What is wrong, by field, each as the name of its text.</summary>
    /// <param name="club">The club.</param>
    /// <param name="key">The boat's key; null for one that is new.</param>
    public IReadOnlyDictionary<string, string> Problems(Club club, string? key)
    {
        ArgumentNullException.ThrowIfNull(club);
        var problems = new Dictionary<string, string>();
        if (string.IsNullOrWhiteSpace(Name))
        {
            problems[nameof(Name)] = "NeedsName";
        }
        else if (!IsOutOfUse && Others(club, key).Any(b => !b.IsOutOfUse && Same(b["name"], Name)))
        {
            problems[nameof(Name)] = "NameTaken";
        }

        if (BoatClass is null)
        {
            problems[nameof(Class)] = "NeedsClass";
        }

        if (Gates.Any(g => !PartsOf(g).IsAllRight))
        {
            problems[nameof(GateForm)] = "NotDegrees";
        }

        if (WithCode(club, key) is not null)
        {
            problems[nameof(Code)] = "CodeTaken";
        }

        return problems;
    }

    /// <summary>Another boat whose label says the same; null where none does.</summary>
    public string? WithCode(Club club, string? key)
    {
        ArgumentNullException.ThrowIfNull(club);
        return string.IsNullOrWhiteSpace(Code) ? null
            : Others(club, key).FirstOrDefault(b => Same(b["code"], Code)) is { } other ? other["name"] ?? other.Key : null;
    }

    /// <summary>What is to be recorded: the boat's fields, its seats' sides and what its gates are set to, where they are otherwise than the form began with. Only without problems.</summary>
    public IReadOnlyList<Fact> Facts(string key)
    {
        IReadOnlyList<Fact> boat = _before.Changed(Things.Boat, key, Fields);
        IEnumerable<Fact> sides = HasSides ? Gates.Except(_gatesBefore).Select(g => new ThingSet(
            Things.Seat, Things.SeatKey(key, g.Seat), new Dictionary<string, string?> { ["side"] = g.Side.Word() })) : [];
        IEnumerable<Fact> parts = Gates.SelectMany(g => _partsBefore.GetValueOrDefault(g, FieldsBefore.None).Changed(Things.Gate, Things.GateKey(key, g), PartsOf(g).Fields));
        return [.. boat, .. sides, .. parts];
    }

    /// <summary>Every gate that its class may have: a seat's rigger can be put on the other side.</summary>
    private IEnumerable<GatePlace> BothSides => Enumerable.Range(1, BoatClass?.Seats ?? 0)
        .SelectMany(seat => new GatePlace[] { new(seat, Side.Port), new(seat, Side.Starboard) });

    private Dictionary<string, string?> Fields => new()
    {
        ["name"] = Name?.Trim(),
        ["class"] = BoatClass?.Name,
        ["rack"] = Filled(Rack),
        ["lie"] = Filled(Lie),
        ["standard"] = Filled(Standard),
        ["code"] = Filled(Code),
        ["out-of-use"] = IsOutOfUse ? "yes" : _wasSaid ? "no" : null,
    };

    private static string? Filled(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();

    private static bool Same(string? one, string? other) => string.Equals(one?.Trim(), other?.Trim(), StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<ThingView> Others(Club club, string? key) => BoatView.Keys(club)
        .Where(other => other != key)
        .Select(other => new ThingView(club, Things.Boat, other));

    private Side SideOf(GatePlace usual) => _sides.TryGetValue(usual.Seat, out Side side) ? side : usual.Side;
}
