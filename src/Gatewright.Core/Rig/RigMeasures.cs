namespace Gatewright.Core.Rig;

/// <summary>What is known of each measure of the rig: its word, its unit, and what it is a measure of.</summary>
public static class RigMeasures
{
    /// <summary>Every measure, in the order in which a boat is set up.</summary>
    public static IReadOnlyList<RigMeasure> All { get; } = [.. Enum.GetValues<RigMeasure>()];

    /// <summary>The word that stands for it in files and entries: "oar-length".</summary>
    public static string Word(this RigMeasure measure) => measure switch
    {
        RigMeasure.Spread => "spread",
        RigMeasure.Span => "span",
        RigMeasure.Height => "height",
        RigMeasure.Inboard => "inboard",
        RigMeasure.OarLength => "oar-length",
        RigMeasure.Overlap => "overlap",
        RigMeasure.StretcherAngle => "stretcher-angle",
        RigMeasure.HeelDepth => "heel-depth",
        RigMeasure.WorkThrough => "work-through",
        RigMeasure.TrackPosition => "track-position",
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "There is no such measure."),
    };

    /// <summary>The measure of that word, or null.</summary>
    public static RigMeasure? OfWord(string word)
    {
        foreach (RigMeasure measure in All)
        {
            if (string.Equals(measure.Word(), word, StringComparison.OrdinalIgnoreCase))
            {
                return measure;
            }
        }

        return null;
    }

    /// <summary>Whether it is an angle, in degrees; every other is a length, in centimetres.</summary>
    public static bool IsAngle(this RigMeasure measure) => measure == RigMeasure.StretcherAngle;

    /// <summary>Whether it is taken at each gate or oar, so that a sculling seat has two.</summary>
    public static bool HasSide(this RigMeasure measure) =>
        measure is RigMeasure.Height or RigMeasure.Inboard or RigMeasure.OarLength;

    /// <summary>Whether boats rowed that way have it: a spread is sweep's, a span sculling's.</summary>
    public static bool IsOf(this RigMeasure measure, Rowing rowing) => measure switch
    {
        RigMeasure.Spread => rowing == Rowing.Sweep,
        RigMeasure.Span => rowing == Rowing.Scull,
        _ => true,
    };

    /// <summary>
    /// What can be meant of a measure, in its own unit: far wider than any boat's rig, so that only a slip or another unit
    /// falls outside.
    /// </summary>
    public static (double Least, double Most) Plausible(this RigMeasure measure) => measure switch
    {
        RigMeasure.Spread => (65, 105),
        RigMeasure.Span => (120, 190),
        RigMeasure.Height => (0, 40),
        RigMeasure.Inboard => (60, 140),
        RigMeasure.OarLength => (200, 420),
        RigMeasure.Overlap => (-20, 60),
        RigMeasure.StretcherAngle => (0, 75),
        RigMeasure.HeelDepth => (0, 40),
        RigMeasure.WorkThrough => (-30, 60),
        _ => (-60, 150),
    };

    /// <summary>Whether a figure, in the measure's own unit, can be meant of it; the ends can.</summary>
    public static bool CanBe(this RigMeasure measure, double own)
    {
        (double least, double most) = measure.Plausible();
        return own >= least && own <= most;
    }
}
