namespace Gatewright.Store.Checking;

/// <summary>How grave a finding is.</summary>
public enum FindingWeight
{
    /// <summary>Worth knowing; the store is sound.</summary>
    Notice,

    /// <summary>Something is not as it was written.</summary>
    Fault,
}
