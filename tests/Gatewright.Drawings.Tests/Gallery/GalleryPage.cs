using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace Gatewright.Drawings.Tests.Gallery;

/// <summary>A page of drawings, rendered as a server would render it.</summary>
internal static class GalleryPage
{
    public static async Task<string> OfAsync<TComponent>()
        where TComponent : IComponent
    {
        string body = await RenderAsync<TComponent>(ParameterView.Empty);
        return $"""
            <!doctype html>
            <html lang="en"><head><meta charset="utf-8"><title>Drawings</title>
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <style>{Text("page.css")}</style><style>{Text("drawings.css")}</style></head>
            <body><main><h1>Drawings</h1>{body}</main></body></html>
            """;
    }

    public static async Task<string> RenderAsync<TComponent>(ParameterView parameters)
        where TComponent : IComponent
    {
        await using ServiceProvider services = new ServiceCollection().AddLogging().BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, services.GetRequiredService<ILoggerFactory>());
        return await renderer.Dispatcher.InvokeAsync(async () =>
            (await renderer.RenderComponentAsync<TComponent>(parameters)).ToHtmlString());
    }

    public static string Text(string resource)
    {
        using Stream stream = typeof(GalleryPage).Assembly.GetManifestResourceStream(resource)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
