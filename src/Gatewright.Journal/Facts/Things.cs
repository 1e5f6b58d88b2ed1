using Gatewright.Core;

namespace Gatewright.Journal.Facts;

/// <summary>The kinds of thing a club keeps properties of, and the fields each has.</summary>
/// <remarks>
/// A field that is not listed here is kept all the same, since a newer program may know it; what is listed is checked.
/// </remarks>
public static class Things
{
    /// <summary>A boat.</summary>
    public const string Boat = "boat";

    /// <summary>A rack.</summary>
    public const string Rack = "rack";

    /// <summary>A seat of a boat; its key is the boat's, a slash, and the seat's number.</summary>
    public const string Seat = "seat";

    /// <summary>A rigger.</summary>
    public const string Rigger = "rigger";

    /// <summary>A gate with its insert; its key is the boat's, the seat's number and the side, with slashes between.</summary>
    public const string Gate = "gate";

    /// <summary>An oar.</summary>
    public const string Oar = "oar";

    /// <summary>A set of oars.</summary>
    public const string OarSet = "oar-set";

    /// <summary>A gauge.</summary>
    public const string Gauge = "gauge";

    /// <summary>A standard.</summary>
    public const string Standard = "standard";

    /// <summary>A target of the rig, of a boat or of a class and crew; its key is a <see cref="Rigging.TargetKey"/>.</summary>
    public const string Target = "target";

    /// <summary>A rig kept under a name, to come back to; its fields are told by <see cref="Changing.KeptRigs"/>.</summary>
    public const string Rig = "rig";

    /// <summary>The club's settings; their key is the group's name.</summary>
    public const string Settings = "settings";

    /// <summary>The fields of each kind of thing.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyDictionary<string, FieldType>> Fields { get; } =
        new Dictionary<string, IReadOnlyDictionary<string, FieldType>>
        {
            [Boat] = Of(("name", FieldType.Text), ("class", FieldType.Class), ("rack", FieldType.Key), ("lie", FieldType.Lie),
                ("standard", FieldType.Key), ("out-of-use", FieldType.YesNo), ("code", FieldType.Text),
                ("crew", FieldType.Crew)),
            [Rack] = Of(("name", FieldType.Text), ("order", FieldType.Number), ("bed", FieldType.Bedding), ("code", FieldType.Text)),
            [Seat] = Of(("side", FieldType.Side), ("member", FieldType.Key)),
            [Rigger] = Of(("name", FieldType.Text), ("boat", FieldType.Key), ("seat", FieldType.Number), ("side", FieldType.Side)),
            [Gate] = Of(("insert", FieldType.Number), ("target-aft", FieldType.Number), ("target-out", FieldType.Number),
                ("rigger", FieldType.Key)),
            [Oar] = Of(("name", FieldType.Text), ("set", FieldType.Key), ("boat", FieldType.Key), ("seat", FieldType.Number),
                ("side", FieldType.Side), ("length", FieldType.Number), ("inboard", FieldType.Number), ("weight", FieldType.Number),
                ("blade", FieldType.Text), ("out-of-use", FieldType.YesNo)),
            [OarSet] = Of(("name", FieldType.Text), ("blade", FieldType.Text), ("out-of-use", FieldType.YesNo)),
            [Gauge] = Of(("name", FieldType.Text), ("resolution", FieldType.Number), ("repeatability", FieldType.Number)),
            [Standard] = Of(("name", FieldType.Text), ("catch-lowest", FieldType.Number), ("catch-highest", FieldType.Number),
                ("catch-floor", FieldType.Number), ("abeam-lowest", FieldType.Number), ("abeam-highest", FieldType.Number),
                ("abeam-floor", FieldType.Number), ("finish-lowest", FieldType.Number), ("finish-highest", FieldType.Number),
                ("finish-floor", FieldType.Number), ("largest-drop", FieldType.Number), ("largest-range", FieldType.Number)),
            [Target] = Of(("measure", FieldType.Text), ("value", FieldType.Number), ("tolerance", FieldType.Number), ("unit", FieldType.Text)),
            [Rig] = Of(("name", FieldType.Text), ("boat", FieldType.Key), ("class", FieldType.Class), ("crew", FieldType.Text)),
            [Settings] = Of(),
        };

    /// <summary>The key of a gate: the boat's, a slash, the seat's number, a slash, and the side.</summary>
    public static string GateKey(string boat, GatePlace gate) => FormattableString.Invariant($"{boat}/{gate.Seat}/{gate.Side.Word()}");

    /// <summary>The key of a seat: the boat's, a slash, and the seat's number.</summary>
    public static string SeatKey(string boat, int seat) => FormattableString.Invariant($"{boat}/{seat}");

    private static Dictionary<string, FieldType> Of(params (string Name, FieldType Type)[] fields) =>
        fields.ToDictionary(f => f.Name, f => f.Type);
}
