using System.Diagnostics;
using OpenTelemetry;
using OpenTelemetry.Metrics;
using OpenTelemetry.Trace;

namespace Gatewright.Server.Hosting;

/// <summary>Traces and metrics, sent by OTLP where OTEL_EXPORTER_OTLP_ENDPOINT says so.</summary>
internal static class Telemetry
{
    /// <summary>Adds them.</summary>
    public static void AddTelemetry(this IServiceCollection services) =>
        services.AddOpenTelemetry()
            .WithTracing(tracing => tracing.AddAspNetCoreInstrumentation(options =>
            {
                options.EnrichWithHttpRequest = Scrub;
                options.EnrichWithHttpResponse = (activity, response) => Scrub(activity, response.HttpContext.Request);
            }))
            .WithMetrics(metrics => metrics.AddAspNetCoreInstrumentation().AddRuntimeInstrumentation())
            .UseOtlpExporter();

    /// <summary>Paths hold the secrets of links and the ids of members: a trace names the route alone.</summary>
    internal static void Scrub(Activity activity, HttpRequest request)
    {
        activity.SetTag("url.path", (request.HttpContext.GetEndpoint() as RouteEndpoint)?.RoutePattern.RawText ?? "(no route)");
        activity.SetTag("url.query", null);
        activity.SetTag("client.address", null);
        activity.SetTag("network.peer.address", null);
        activity.SetTag("user_agent.original", null);
    }
}
