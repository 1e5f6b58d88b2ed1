using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;

namespace Gatewright.App.Tests.World;

/// <summary>A person's hand on a page that may be drawing itself anew: what is touched is looked for and touched with no drawing between.</summary>
internal static class Hand
{
    /// <summary>Presses a button, the <paramref name="nth"/> of those at <paramref name="place"/>, counted from zero.</summary>
    public static Task PressAsync<T>(this IRenderedComponent<T> page, string place, int nth = 0)
        where T : IComponent => page.TouchAsync(place, nth, e => e.ClickAsync(new MouseEventArgs()));

    /// <summary>Types into a field.</summary>
    public static Task TypeAsync<T>(this IRenderedComponent<T> page, string place, string text)
        where T : IComponent => page.TouchAsync(place, 0, e => e.InputAsync(new ChangeEventArgs { Value = text }));

    /// <summary>Chooses in a list, ticks a box, or leaves a field with what it says.</summary>
    public static Task ChooseAsync<T>(this IRenderedComponent<T> page, string place, object? value, int nth = 0)
        where T : IComponent => page.TouchAsync(place, nth, e => e.ChangeAsync(new ChangeEventArgs { Value = value }));

    /// <summary>Sends a form.</summary>
    public static Task SendAsync<T>(this IRenderedComponent<T> page, string form = "form", int nth = 0)
        where T : IComponent => page.TouchAsync(form, nth, e => e.SubmitAsync());

    private static Task TouchAsync<T>(this IRenderedComponent<T> page, string place, int nth, Func<IElement, Task> touched)
        where T : IComponent => page.InvokeAsync(() => touched(nth == 0 ? page.Find(place) : page.FindAll(place)[nth]));
}
