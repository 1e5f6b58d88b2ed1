using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.RenderTree;

namespace Gatewright.App.Round;

/// <summary>Draws what nobody sees: everything is worked out as for the page, and goes nowhere.</summary>
#pragma warning disable BL0006 // The framework's own renderers are for pages; what a batch is made of is not looked at here.
internal sealed class UnseenRenderer(IServiceProvider services, ILoggerFactory logs) : Renderer(services, logs)
{
    /// <inheritdoc/>
    public override Dispatcher Dispatcher { get; } = Dispatcher.CreateDefault();

    /// <summary>Draws a rehearsal.</summary>
    /// <returns>Whether it came to its end.</returns>
    public Task<bool> DrawAsync(string round, string boat) => Dispatcher.InvokeAsync(async () =>
    {
        IComponent rehearsal = InstantiateComponent(typeof(Rehearsal));
        await RenderRootComponentAsync(
            AssignRootComponentId(rehearsal),
            ParameterView.FromDictionary(new Dictionary<string, object?> { [nameof(Rehearsal.Round)] = round, [nameof(Rehearsal.Boat)] = boat }));
        return ((Rehearsal)rehearsal).IsOver;
    });

    /// <inheritdoc/>
    protected override Task UpdateDisplayAsync(in RenderBatch renderBatch) => Task.CompletedTask;

    /// <summary>A rehearsal that fails leaves the first tap slow, and nothing else wrong.</summary>
    protected override void HandleException(Exception exception)
    {
    }
}
#pragma warning restore BL0006
