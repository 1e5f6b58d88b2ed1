using System.Globalization;
using System.Text;
using Gatewright.Core;
using Gatewright.Core.Rig;
using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Rigging;

/// <summary>
/// What a target that a club sets is of: a boat, or a class and crew; the measure, and what of it; and a seat or a side, where
/// it is not of every one. As text it is the key of a <see cref="Things.Target"/>: "boat/osprey/height/2/port",
/// "crew/8+/women/spread", "crew/4x/any/height/sides".
/// </summary>
/// <param name="Boat">The boat's key; null for a target of a class.</param>
/// <param name="Class">The class; null for a target of a boat.</param>
/// <param name="Crew">The crew; null for a target of a boat, or of a class whoever rows it.</param>
/// <param name="Measure">Which measure.</param>
/// <param name="Aspect">What of it.</param>
/// <param name="Seat">The seat; null for every seat.</param>
/// <param name="Side">The side; null for both.</param>
public sealed record TargetKey(
    string? Boat, BoatClass? Class, Crew? Crew, RigMeasure Measure, RigAspect Aspect = RigAspect.Value, int? Seat = null, Side? Side = null)
{
    private const string OfBoat = "boat";
    private const string OfCrew = "crew";
    private const string AnyCrew = "any";
    private const string Sides = "sides";
    private const string Seats = "seats";

    /// <summary>What keys look like, for messages.</summary>
    internal const string Form =
        "boat/KEY/MEASURE or crew/CLASS/CREW/MEASURE, a crew or any; then, where it is meant, /sides or /seats, /SEAT, /port or /starboard";

    /// <summary>A target of a boat.</summary>
    public static TargetKey ForBoat(string boat, RigMeasure measure, RigAspect aspect = RigAspect.Value, int? seat = null, Side? side = null) =>
        new(boat, null, null, measure, aspect, seat, side);

    /// <summary>A target of a class, and of a crew or, for null, of whoever rows it.</summary>
    public static TargetKey ForCrew(BoatClass boatClass, Crew? crew, RigMeasure measure, RigAspect aspect = RigAspect.Value, int? seat = null, Side? side = null) =>
        new(null, boatClass, crew, measure, aspect, seat, side);

    /// <summary>The key of a text; null where it is none.</summary>
    public static TargetKey? Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string[] parts = text.Split('/');
        TargetKey? start = parts switch
        {
            [OfBoat, { Length: > 0 } boat, var word, ..] when RigMeasures.OfWord(word) is { } measure => ForBoat(boat, measure),
            [OfCrew, var name, var crew, var word, ..] when BoatClass.TryParse(name) is { } boatClass
                && RigMeasures.OfWord(word) is { } measure && (crew == AnyCrew || Crews.OfWord(crew) is not null)
                => ForCrew(boatClass, Crews.OfWord(crew), measure),
            _ => null,
        };
        return start?.Narrowed(parts.AsSpan(start.Boat is null ? 4 : 3)) is { } key && key.ToString() == text ? key : null;
    }

    /// <summary>The entry that sets it: value and tolerance as somebody wrote them, in a unit.</summary>
    public ThingSet Set(decimal value, decimal tolerance, RigUnit unit) => new(Things.Target, ToString(), new Dictionary<string, string?>
    {
        ["measure"] = Measure.Word(),
        ["value"] = value.ToString(CultureInfo.InvariantCulture),
        ["tolerance"] = tolerance.ToString(CultureInfo.InvariantCulture),
        ["unit"] = unit.Word(),
    });

    /// <summary>The entry that takes it away, so that what stands behind it holds again.</summary>
    public ThingSet Cleared() => new(Things.Target, ToString(), new Dictionary<string, string?> { ["value"] = null, ["tolerance"] = null });

    /// <summary>The key as text.</summary>
    public override string ToString()
    {
        StringBuilder text = Boat is null
            ? new StringBuilder($"{OfCrew}/{Class}/{Crew?.Word() ?? AnyCrew}/{Measure.Word()}")
            : new StringBuilder($"{OfBoat}/{Boat}/{Measure.Word()}");
        if (Aspect != RigAspect.Value)
        {
            text.Append('/').Append(Aspect == RigAspect.Sides ? Sides : Seats);
        }

        if (Seat is { } seat)
        {
            text.Append('/').Append(seat.ToString(CultureInfo.InvariantCulture));
        }

        return (Side is { } side ? text.Append('/').Append(side.Word()) : text).ToString();
    }

    private TargetKey? Narrowed(ReadOnlySpan<string> parts) => parts switch
    {
        [] => this,
        [Sides, .. var rest] when this is { Aspect: RigAspect.Value } => (this with { Aspect = RigAspect.Sides }).Narrowed(rest),
        [Seats, .. var rest] when this is { Aspect: RigAspect.Value } => (this with { Aspect = RigAspect.Seats }).Narrowed(rest),
        [[>= '1' and <= '8'] seat, .. var rest] => (this with { Seat = seat[0] - '0' }).Narrowed(rest),
        ["port"] => this with { Side = Core.Side.Port },
        ["starboard"] => this with { Side = Core.Side.Starboard },
        _ => null,
    };
}
