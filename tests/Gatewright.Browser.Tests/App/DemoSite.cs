namespace Gatewright.Browser.Tests.App;

/// <summary>One demo shed for all tests of a class, each of which keeps to boats of its own.</summary>
public sealed class DemoSite : IAsyncLifetime
{
    /// <summary>The server.</summary>
    internal AppSite Site { get; private set; } = null!;

    public async ValueTask InitializeAsync() => Site = await AppSite.StartAsync();

    public ValueTask DisposeAsync() => Site.DisposeAsync();
}
