using Microsoft.Playwright;

namespace Gatewright.Browser.Tests;

/// <summary>A visit: a page and what the browser remembers of it, which is forgotten when the visit is over.</summary>
internal sealed record Visit(IPage Page) : IAsyncDisposable
{
    public ValueTask DisposeAsync() => new(Page.Context.CloseAsync());
}
