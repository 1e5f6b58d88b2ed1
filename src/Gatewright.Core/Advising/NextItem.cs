namespace Gatewright.Core.Advising;

/// <summary>Kinds of reading that can be asked for next.</summary>
public enum NextItem
{
    /// <summary>A gate's face at a station.</summary>
    Gate,

    /// <summary>A pin from the side.</summary>
    PinAft,

    /// <summary>A pin from the end of the boat.</summary>
    PinOut,

    /// <summary>A gate's face against its pin.</summary>
    GatePitch,

    /// <summary>The hull's level, along and across.</summary>
    Level,

    /// <summary>The gauge turned end for end on one face.</summary>
    GaugeReversed,

    /// <summary>An oar's sleeve, its blade on the edge of the boat.</summary>
    Sleeve,
}

/// <summary>Kinds of next reading and their codes.</summary>
public static class NextItems
{
    /// <summary>The code used in files; that of the reading's item where there is one.</summary>
    public static string Code(this NextItem item) => item switch
    {
        NextItem.Gate => "gate",
        NextItem.PinAft => "pin-aft",
        NextItem.PinOut => "pin-out",
        NextItem.GatePitch => "gate-pitch",
        NextItem.Level => "level",
        NextItem.GaugeReversed => "gauge-reversed",
        _ => "sleeve",
    };

    /// <summary>How many readings one takes: two for a level, along and across, and for a gauge, read and turned.</summary>
    public static int Readings(this NextItem item) => item is NextItem.Level or NextItem.GaugeReversed ? 2 : 1;
}
