namespace Gatewright.Journal.Replay.Snapshots;

/// <summary>A snapshot that cannot be gone on from: damaged, cut short, or of another program. Replay the journal instead.</summary>
public sealed class SnapshotException(string message) : Exception(message);
