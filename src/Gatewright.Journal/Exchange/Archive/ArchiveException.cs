namespace Gatewright.Journal.Exchange.Archive;

/// <summary>A club's file that cannot be read on, or from which nothing is handed on since it has problems.</summary>
public sealed class ArchiveException(string message) : Exception(message);
