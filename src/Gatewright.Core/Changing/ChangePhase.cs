namespace Gatewright.Core.Changing;

/// <summary>
/// The order of the work. Each stands before what it would spoil: a rigger brings its own spread, height and pitch; moving the pin
/// along its rigger changes how high it stands; what is packed for height tilts the pin; a pin set upright changes the pitch that the
/// insert makes up; the inboard is judged against the spread; and the feet go where the handles end.
/// </summary>
public enum ChangePhase
{
    /// <summary>Riggers to their seats.</summary>
    Riggers,

    /// <summary>Spread or span.</summary>
    Width,

    /// <summary>Height.</summary>
    Height,

    /// <summary>The pin's leans.</summary>
    Pin,

    /// <summary>The gate's insert.</summary>
    Insert,

    /// <summary>Oars to their gates, their length, then their inboard.</summary>
    Oars,

    /// <summary>Track and stretcher.</summary>
    Stretcher,
}

/// <summary>Phases and their words.</summary>
public static class ChangePhases
{
    /// <summary>All, in the order of the work.</summary>
    public static IReadOnlyList<ChangePhase> All { get; } = [.. Enum.GetValues<ChangePhase>()];

    /// <summary>The word used in files: "riggers", "width", "height", "pin", "insert", "oars", "stretcher".</summary>
    public static string Word(this ChangePhase phase) => phase switch
    {
        ChangePhase.Riggers => "riggers",
        ChangePhase.Width => "width",
        ChangePhase.Height => "height",
        ChangePhase.Pin => "pin",
        ChangePhase.Insert => "insert",
        ChangePhase.Oars => "oars",
        _ => "stretcher",
    };

    /// <summary>The phase in which an item is set.</summary>
    public static ChangePhase Of(RigItem item) => item switch
    {
        RigItem.Spread or RigItem.Span => ChangePhase.Width,
        RigItem.Height => ChangePhase.Height,
        RigItem.LeanAft or RigItem.LeanOut => ChangePhase.Pin,
        RigItem.GatePitch or RigItem.PitchCatch or RigItem.PitchAbeam or RigItem.PitchFinish => ChangePhase.Insert,
        RigItem.OarLength or RigItem.Inboard or RigItem.Overlap => ChangePhase.Oars,
        _ => ChangePhase.Stretcher,
    };
}
