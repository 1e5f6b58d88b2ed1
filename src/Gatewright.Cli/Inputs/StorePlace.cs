namespace Gatewright.Cli.Inputs;

/// <summary>Which club of which store a person named. Of the store's own types it has none: those are loaded when it is opened.</summary>
/// <param name="Data">The folder of a store in one file; null for the usual one.</param>
/// <param name="Database">A connection to PostgreSQL instead.</param>
/// <param name="Club">The club's id; null for the one there is.</param>
internal sealed record StorePlace(string? Data, string? Database, string? Club);
