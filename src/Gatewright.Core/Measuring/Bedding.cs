namespace Gatewright.Core.Measuring;

/// <summary>What a rack's arms are like where the boat touches them.</summary>
public enum Bedding
{
    /// <summary>Firm: the boat lies as the rack does.</summary>
    Firm,

    /// <summary>Padded or loose: the rack's level proves little about the boat's.</summary>
    Soft,
}
