using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Changing;
using Gatewright.Core.Rig;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Changing;

/// <summary>A rig that a club keeps under a name, to come back to.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Name">Its name.</param>
/// <param name="Boat">The boat it was made for.</param>
/// <param name="Class">Its class.</param>
/// <param name="Crew">Who rows with it; null where nobody has said.</param>
public sealed record KeptRig(string Key, string Name, string? Boat, BoatClass Class, string? Crew);

/// <summary>
/// The rigs that a club keeps under a name. In the journal each is a thing <c>rig</c>, a field a figure: "spread/3" or
/// "height/3/port" in centimetres or degrees, with its standard uncertainty as "u/spread/3" (0 where it is absent), "side/3", "rigger/3/port" and "oar/3/port" with a mark.
/// </summary>
public static class KeptRigs
{
    private const string Rigger = "rigger";
    private const string Oar = "oar";
    private const string SideField = "side";
    private const string UOf = "u/";

    // An entry has at most a hundred fields; an eight's whole rig has more.
    private const int MostFields = 90;

    /// <summary>Those that a boat could have: of its class, its own first, then by name.</summary>
    public static IReadOnlyList<KeptRig> For(Club club, string boat, BoatClass boatClass) =>
        [.. All(club).Where(r => r.Class == boatClass).OrderBy(r => r.Boat == boat ? 0 : 1).ThenBy(r => r.Name, StringComparer.OrdinalIgnoreCase)];

    /// <summary>All of them; those taken away have no class any more.</summary>
    public static IEnumerable<KeptRig> All(Club club)
    {
        ArgumentNullException.ThrowIfNull(club);
        foreach (Subject subject in club.Subjects.Where(s => s.Thing == Things.Rig).OrderBy(s => s.Key, StringComparer.Ordinal))
        {
            var view = new ThingView(club, Things.Rig, subject.Key);
            if (BoatClass.TryParse(view["class"]) is { } boatClass)
            {
                yield return new(subject.Key, view["name"] ?? subject.Key, view["boat"], boatClass, view["crew"]);
            }
        }
    }

    /// <summary>The rig, as one to come to. Of a rig made for another boat riggers and oars are left out.</summary>
    public static TargetRig Target(Club club, KeptRig kept, string boat, IReadOnlyList<GatePlace> gates)
    {
        ArgumentNullException.ThrowIfNull(kept);
        ArgumentNullException.ThrowIfNull(gates);
        var view = new ThingView(club, Things.Rig, kept.Key);
        bool isOwn = kept.Boat == boat;
        var aims = new List<RigAim>();
        var riggers = new List<RigMark>();
        var oars = new List<RigMark>();
        GatePlace[] sides = [.. gates];
        foreach (string field in view.Fields.Order(StringComparer.Ordinal))
        {
            if (view[field] is not { } value || !TryPlace(field, out string what, out RigPlace place))
            {
                continue;
            }

            if (what == SideField && kept.Class.Rowing == Rowing.Sweep)
            {
                Side on = value == Side.Starboard.Word() ? Side.Starboard : Side.Port;
                sides = Array.ConvertAll(sides, g => g.Seat == place.Seat ? new(g.Seat, on) : g);
            }
            else if (what is Rigger or Oar && place.Side is { } side)
            {
                (what == Rigger ? riggers : oars).Add(new(new(place.Seat, side), value));
            }
            else if (RigItems.OfWord(what) is { } item && double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out double figure))
            {
                double near = item.AsGoodAsSame();
                double u = double.TryParse(view[UOf + field], NumberStyles.Float, CultureInfo.InvariantCulture, out double known) ? known : 0;
                aims.Add(new(item, place, figure, figure - near, figure + near, u));
            }
        }

        return new(kept.Name, sides, aims, isOwn ? riggers : [], isOwn ? oars : []);
    }

    /// <summary>The entries that keep a boat's rig as it is under a name.</summary>
    /// <param name="key">The key it is to have.</param>
    /// <param name="name">Its name.</param>
    /// <param name="boat">The boat.</param>
    /// <param name="rig">The rig.</param>
    /// <param name="crew">Who rows with it; null where nobody has said.</param>
    public static IReadOnlyList<Fact> Keep(string key, string name, string boat, RigOfBoat rig, string? crew)
    {
        ArgumentNullException.ThrowIfNull(rig);
        var fields = new List<KeyValuePair<string, string?>>
        {
            new("name", name), new("boat", boat), new("class", rig.Class.Name), new("crew", crew),
        };
        if (rig.Class.Rowing == Rowing.Sweep)
        {
            fields.AddRange(rig.Gates.Select(g => new KeyValuePair<string, string?>(FormattableString.Invariant($"{SideField}/{g.Seat}"), g.Side.Word())));
        }

        foreach (RigValue value in rig.Values)
        {
            if (TargetRig.IsAimed(value.Item))
            {
                string field = Field(value.Item.Word(), value.Place);
                fields.Add(new(field, Math.Round(value.Value.Value, 2).ToString(CultureInfo.InvariantCulture)));
                fields.Add(new(UOf + field, Math.Round(value.Value.U, 3).ToString(CultureInfo.InvariantCulture)));
            }
        }

        fields.AddRange(rig.Riggers.Select(m => new KeyValuePair<string, string?>(Field(Rigger, new(m.At.Seat, m.At.Side)), m.Mark)));
        fields.AddRange(rig.Oars.Select(m => new KeyValuePair<string, string?>(Field(Oar, new(m.At.Seat, m.At.Side)), m.Mark)));
        return [.. fields.Chunk(MostFields).Select(part => new ThingSet(Things.Rig, key, new Dictionary<string, string?>(part)))];
    }

    /// <summary>The entry that takes a kept rig away.</summary>
    public static Fact Drop(string key) => new ThingSet(Things.Rig, key, new Dictionary<string, string?> { ["class"] = null });

    private static string Field(string what, RigPlace place) => place.Side is { } side
        ? FormattableString.Invariant($"{what}/{place.Seat}/{side.Word()}")
        : FormattableString.Invariant($"{what}/{place.Seat}");

    private static bool TryPlace(string field, out string what, out RigPlace place)
    {
        string[] parts = field.Split('/');
        what = parts[0];
        place = default;
        if (parts.Length is not (2 or 3) || parts[1] is not [>= '1' and <= '8'])
        {
            return false;
        }

        place = new(parts[1][0] - '0', parts.Length == 2 ? null : parts[2] == Side.Starboard.Word() ? Side.Starboard : Side.Port);
        return true;
    }
}
