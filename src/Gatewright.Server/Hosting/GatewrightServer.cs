using Gatewright.Server.Accounts;
using Gatewright.Server.Boats;
using Gatewright.Server.Members;
using Gatewright.Server.Pages;
using Gatewright.Server.Photos;
using Gatewright.Server.Planning;
using Gatewright.Server.Problems;
using Gatewright.Server.Starting;
using Gatewright.Server.Syncing;
using Microsoft.AspNetCore.HttpOverrides;

namespace Gatewright.Server.Hosting;

/// <summary>The server, ready to be started.</summary>
internal static class GatewrightServer
{
    // By name, since what hosts this may be another program: a test.
    private const string Name = "gatewright-server";
    private const long LargestBody = 10 * 1024 * 1024;

    /// <summary>Builds it. The store must have been opened, and its tables be up to date.</summary>
    public static WebApplication Build(ServeOptions options)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions
        {
            ApplicationName = Name,

            // The program's own folder, from wherever it was started.
            ContentRootPath = AppContext.BaseDirectory,
            WebRootPath = "wwwroot",
        });
        builder.WebHost.UseKestrelHttpsConfiguration();
        builder.WebHost.UseUrls([.. options.Listen.Select(u => u.ToString())]);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = LargestBody;
        });
        builder.WebHost.UseStaticWebAssets();
        ConfigureLogs(builder.Logging, options);
        builder.AddGatewright(options);
        WebApplication app = builder.Build();
        Pipe(app, options);
        Map(app, options, builder.Services);
        return app;
    }

    private static void ConfigureLogs(ILoggingBuilder logs, ServeOptions options)
    {
        logs.ClearProviders();
        if (options.LogsAsJson)
        {
            logs.AddJsonConsole(json => json.UseUtcTimestamp = true);
        }
        else
        {
            logs.AddSimpleConsole(simple => (simple.SingleLine, simple.TimestampFormat) = (true, "HH:mm:ss "));
        }

        // Below this, the framework names addresses, accounts and values of queries.
        logs.SetMinimumLevel(LogLevel.Warning);
        logs.AddFilter("Microsoft.AspNetCore.Diagnostics.ExceptionHandlerMiddleware", LogLevel.Error);

        // What the tables could not do is thrown, and put on record where it is answered, if it was not mended there.
        logs.AddFilter("Microsoft.EntityFrameworkCore", LogLevel.Critical);

        // It warns at each page with a form that its own header stands in place of ours, which says the same.
        logs.AddFilter("Microsoft.AspNetCore.Antiforgery", LogLevel.Error);

        // It warns that the keys of cookies lie in the store as they are: whoever has the store has all they open.
        logs.AddFilter("Microsoft.AspNetCore.DataProtection.KeyManagement.XmlKeyManager", LogLevel.Error);
    }

    private static void Pipe(WebApplication app, ServeOptions options)
    {
        if (options.IsBehindProxy)
        {
            var forwarded = new ForwardedHeadersOptions { ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto };
            app.UseForwardedHeaders(forwarded);
        }

        app.UseSecurityHeaders();
        app.UseExceptionHandler(new ExceptionHandlerOptions
        {
            // A request that cannot be read is its sender's matter; all else goes on record, answered or not.
            SuppressDiagnosticsCallback = context =>
                context.Exception is BadHttpRequestException || StoreTrouble.IsUnavailable(context.Exception),
        });
        app.UseStatusCodePages();
        app.UseKnownHosts(options);
        if (options.IsHttps)
        {
            app.UseHsts();
        }

        app.UsePackedFiles();
        app.UseResponseCompression();
        app.UseRouting();
        app.UseAuthentication();
        app.UseRateLimiter();
        app.UseAuthorization();
        app.UseAntiforgery();
        app.UseRequestDecompression();
    }

    private static void Map(WebApplication app, ServeOptions options, IServiceCollection services)
    {
        app.MapHealthChecks("/health/live", new() { Predicate = _ => false }).DisableRateLimiting();
        app.MapHealthChecks("/health/ready", new() { Predicate = check => check.Tags.Contains("ready") }).DisableRateLimiting();
        app.MapDescription(services);
        app.MapApp();
        RouteGroupBuilder api = app.MapGroup("/api").AddEndpointFilter<TokenCheck>().DisableAntiforgery();
        api.MapAccounts();
        api.MapOwnAccount();
        RouteGroupBuilder club = api.MapGroup("/clubs/{club}");
        club.MapSync();
        club.MapPhotos();
        club.MapBoats();
        club.MapPlan();
        club.MapMembers();
        app.MapRazorComponents<Frame>();
        if (options.Demo)
        {
            app.MapDemo();
        }
    }
}
