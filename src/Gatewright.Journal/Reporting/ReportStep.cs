namespace Gatewright.Journal.Reporting;

/// <summary>What is asked of somebody who tells of something, in this order.</summary>
public enum ReportStep
{
    /// <summary>Which boat.</summary>
    Boat,

    /// <summary>What happened.</summary>
    What,

    /// <summary>At which gate, or to which side.</summary>
    Where,

    /// <summary>Nothing more: it can be sent.</summary>
    Send,
}
