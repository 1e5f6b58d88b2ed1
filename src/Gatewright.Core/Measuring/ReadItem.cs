namespace Gatewright.Core.Measuring;

/// <summary>What the gauge was held against.</summary>
public enum ReadItem
{
    /// <summary>The working face of the gate, at an oar angle.</summary>
    Gate,

    /// <summary>The pin, seen square-on from the side: its lean to the stern.</summary>
    PinAft,

    /// <summary>The pin, seen square-on from the end of the boat: its lean away from the hull.</summary>
    PinOut,

    /// <summary>The working face against the pin, so that neither the hull's level nor the gauge's zero enters.</summary>
    GatePitch,

    /// <summary>The flat of the oar's sleeve, its blade laid on the edge of the boat with the shaft abeam.</summary>
    Sleeve,
}
