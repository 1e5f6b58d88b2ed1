using Gatewright.Core.Rig;

namespace Gatewright.Core.Changing;

/// <summary>
/// What of a rig two boats are compared by and one is changed by: the measures of <see cref="RigMeasure"/> and what a pitch gauge
/// tells. In the order in which a boat is set up.
/// </summary>
public enum RigItem
{
    /// <summary>Sweep: keel line to pin. Centimetres; one a seat.</summary>
    Spread,

    /// <summary>Scull: pin to pin. Centimetres; one a seat.</summary>
    Span,

    /// <summary>The sill of the gate above the seat. Centimetres; one a gate.</summary>
    Height,

    /// <summary>The pin's lean to the stern. Degrees; one a gate.</summary>
    LeanAft,

    /// <summary>The pin's lean away from the hull. Degrees; one a gate.</summary>
    LeanOut,

    /// <summary>The pitch built into gate and insert, against the pin. Degrees; one a gate.</summary>
    GatePitch,

    /// <summary>The pitch at the catch. Degrees; one a gate.</summary>
    PitchCatch,

    /// <summary>The pitch abeam: gate pitch and lean aft together. Degrees; one a gate.</summary>
    PitchAbeam,

    /// <summary>The pitch at the finish. Degrees; one a gate.</summary>
    PitchFinish,

    /// <summary>The oar's length. Centimetres; one an oar.</summary>
    OarLength,

    /// <summary>The oar's inboard. Centimetres; one an oar.</summary>
    Inboard,

    /// <summary>The overlap of the handles: it follows from spread or span and inboard. Centimetres; one a seat.</summary>
    Overlap,

    /// <summary>The track's front stop. Centimetres; one a seat.</summary>
    TrackPosition,

    /// <summary>The heels below the seat. Centimetres; one a seat.</summary>
    HeelDepth,

    /// <summary>The footplate's angle. Degrees; one a seat.</summary>
    StretcherAngle,

    /// <summary>How far the seat passes the pins at full slide: set by the stretcher's place. Centimetres; one a seat.</summary>
    WorkThrough,
}

/// <summary>What is known of each item.</summary>
public static class RigItems
{
    /// <summary>Every item, in the order in which a boat is set up.</summary>
    public static IReadOnlyList<RigItem> All { get; } = [.. Enum.GetValues<RigItem>()];

    /// <summary>The word that stands for it in files: that of its measure, or "pin-aft", "pin-out", "gate-pitch", "pitch-catch", "pitch-abeam", "pitch-finish".</summary>
    public static string Word(this RigItem item) => item switch
    {
        RigItem.LeanAft => "pin-aft",
        RigItem.LeanOut => "pin-out",
        RigItem.GatePitch => "gate-pitch",
        RigItem.PitchCatch => "pitch-catch",
        RigItem.PitchAbeam => "pitch-abeam",
        RigItem.PitchFinish => "pitch-finish",
        _ => item.Measure()!.Value.Word(),
    };

    /// <summary>The item of a word, or null.</summary>
    public static RigItem? OfWord(string word)
    {
        foreach (RigItem item in All)
        {
            if (item.Word() == word)
            {
                return item;
            }
        }

        return null;
    }

    /// <summary>The measure it is, or null for what a pitch gauge tells.</summary>
    public static RigMeasure? Measure(this RigItem item) => item switch
    {
        RigItem.Spread => RigMeasure.Spread,
        RigItem.Span => RigMeasure.Span,
        RigItem.Height => RigMeasure.Height,
        RigItem.OarLength => RigMeasure.OarLength,
        RigItem.Inboard => RigMeasure.Inboard,
        RigItem.Overlap => RigMeasure.Overlap,
        RigItem.TrackPosition => RigMeasure.TrackPosition,
        RigItem.HeelDepth => RigMeasure.HeelDepth,
        RigItem.StretcherAngle => RigMeasure.StretcherAngle,
        RigItem.WorkThrough => RigMeasure.WorkThrough,
        _ => null,
    };

    /// <summary>The item that a measure is.</summary>
    public static RigItem Of(RigMeasure measure)
    {
        foreach (RigItem item in All)
        {
            if (item.Measure() == measure)
            {
                return item;
            }
        }

        throw new ArgumentOutOfRangeException(nameof(measure), measure, "There is no such measure.");
    }

    /// <summary>Whether it is in degrees; every other is in centimetres.</summary>
    public static bool IsAngle(this RigItem item) => item.Measure() is not { } measure || measure.IsAngle();

    /// <summary>Whether a sculling seat has two.</summary>
    public static bool HasSide(this RigItem item) => item.Measure() is not { } measure || measure.HasSide();

    /// <summary>
    /// How near two figures lie that are as good as the same: nearer nobody sets a rig. 0.5 cm of spread, span, height and oars, 1 of
    /// overlap and the stretcher; 0.5° of pitch and leans, 1° of the footplate. Ours, from judgement.
    /// </summary>
    public static double AsGoodAsSame(this RigItem item) => item switch
    {
        RigItem.Overlap or RigItem.TrackPosition or RigItem.HeelDepth or RigItem.WorkThrough or RigItem.StretcherAngle => 1,
        _ => 0.5,
    };
}
