using Gatewright.Core;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Jobs;

/// <summary>Something that is to be done on a boat: a piece of mending, or a change of its rig.</summary>
public interface IWork
{
    /// <summary>The entry that planned it.</summary>
    Recorded Planned { get; }

    /// <summary>Its key.</summary>
    string Key { get; }

    /// <summary>The boat.</summary>
    string Boat { get; }

    /// <summary>The gate it is about; null for the whole boat.</summary>
    GatePlace? Gate { get; }
}
