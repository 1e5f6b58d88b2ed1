namespace Gatewright.Drawings.Plan;

/// <summary>Where the cox of a coxed boat is.</summary>
public enum CoxPlace
{
    /// <summary>Sitting in the stern, facing the crew.</summary>
    Stern,

    /// <summary>Lying in the bow.</summary>
    Bow,
}
