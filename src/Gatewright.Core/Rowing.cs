namespace Gatewright.Core;

/// <summary>How a boat is rowed.</summary>
public enum Rowing
{
    /// <summary>One oar a rower: each seat has one gate, on one side.</summary>
    Sweep,

    /// <summary>Two oars a rower: each seat has a gate on both sides.</summary>
    Scull,
}
