namespace Gatewright.Drawings.Plan;

/// <summary>How much room a plan takes.</summary>
public enum PlanSize
{
    /// <summary>As tall as a desk or a boat alone on a page allows; every gate can be touched.</summary>
    Roomy,

    /// <summary>As low as places of 48 px allow: an eight leaves a phone a third of its screen.</summary>
    Compact,

    /// <summary>A thumbnail for lists, true in length from class to class; nothing can be touched.</summary>
    Small,
}
