using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace Gatewright.Server.Hosting;

/// <summary>What the API is, as an OpenAPI document.</summary>
/// <remarks>Few ask for it: what makes it is loaded when somebody does, and let go again.</remarks>
internal static class ApiDescription
{
    private const string Name = "v1";

    /// <summary>Answers at /openapi/v1.json.</summary>
    public static void MapDescription(this WebApplication app, IServiceCollection services) =>
        app.MapGet($"/openapi/{Name}.json", context => DescribeAsync(context, services)).AllowAnonymous().ExcludeFromDescription();

    private static async Task DescribeAsync(HttpContext context, IServiceCollection ofServer)
    {
        await using ServiceProvider services = Describing(ofServer, context.RequestServices);
        OpenApiDocument document = await services.GetRequiredKeyedService<IOpenApiDocumentProvider>(Name)
            .GetOpenApiDocumentAsync(context.RequestAborted).ConfigureAwait(false);
        using var written = new MemoryStream();
        await document.SerializeAsJsonAsync(written, OpenApiSpecVersion.OpenApi3_1, context.RequestAborted).ConfigureAwait(false);
        context.Response.ContentType = "application/json;charset=utf-8";
        await context.Response.BodyWriter.WriteAsync(written.GetBuffer().AsMemory(0, (int)written.Length), context.RequestAborted).ConfigureAwait(false);
    }

    /// <summary>
    /// The server's own services beside what describes it: which parameters are an asker's and which the server's own is told
    /// by them. None of theirs is made.
    /// </summary>
    private static ServiceProvider Describing(IServiceCollection ofServer, IServiceProvider server)
    {
        var services = new ServiceCollection();
        foreach (ServiceDescriptor service in ofServer)
        {
            ((ICollection<ServiceDescriptor>)services).Add(service);
        }

        // The name stands here as it is: where a constant stands instead, the generator leaves the comments out of the document.
        services.AddOpenApi("v1");
        services.AddSingleton(server.GetRequiredService<EndpointDataSource>());
        services.AddSingleton(server.GetRequiredService<IServer>());
        return services.BuildServiceProvider();
    }
}
