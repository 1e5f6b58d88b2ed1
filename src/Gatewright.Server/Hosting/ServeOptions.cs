using Gatewright.Store;

namespace Gatewright.Server.Hosting;

/// <summary>How the server is to run.</summary>
/// <param name="Location">Where the store is.</param>
/// <param name="Listen">The addresses to listen on.</param>
/// <param name="PublicAddress">What people type to reach it; null on one machine.</param>
/// <param name="IsBehindProxy">Whether a proxy stands before it whose word on scheme and address is taken.</param>
/// <param name="Demo">Whether it shows the demo shed, which anybody at this machine may walk into.</param>
/// <param name="LogsAsJson">Whether each log line is a JSON object.</param>
public sealed record ServeOptions(
    StoreLocation Location,
    IReadOnlyList<Uri> Listen,
    Uri? PublicAddress,
    bool IsBehindProxy,
    bool Demo,
    bool LogsAsJson)
{
    /// <summary>
    /// How often one address may send a password or a secret in a minute: 30. A person mistypes a few times; a machine
    /// that guesses gets no further than this, and the account's own lock stops it after ten.
    /// </summary>
    public int SignInsAMinute { get; init; } = 30;

    /// <summary>The clock that times of entries, sessions and links are held against.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;

    /// <summary>
    /// Whether traces and metrics are made: only where a receiver is named, since making them for nobody takes memory
    /// that a small machine has better uses for.
    /// </summary>
    public bool SendsTelemetry { get; init; } = Environment.GetEnvironmentVariable("OTEL_EXPORTER_OTLP_ENDPOINT") is { Length: > 0 };

    /// <summary>Whether all it listens on is this machine's own.</summary>
    public bool IsLoopback => Listen.All(u => u.IsLoopback);

    /// <summary>Whether people reach it over HTTPS.</summary>
    public bool IsHttps => PublicAddress?.Scheme == Uri.UriSchemeHttps || Listen.All(u => u.Scheme == Uri.UriSchemeHttps);
}
