namespace Gatewright.Store;

/// <summary>A journal was given another entry under the id of one it has.</summary>
public sealed class EntryConflictException(Guid id)
    : Exception($"The journal has another entry under the id {id}: an entry never changes. Give the new one an id of its own.")
{
    /// <summary>The id.</summary>
    public Guid Id { get; } = id;
}
