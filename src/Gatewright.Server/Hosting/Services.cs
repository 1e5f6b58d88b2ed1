using System.IO.Compression;
using Gatewright.Server.Accounts;
using Gatewright.Server.Boats;
using Gatewright.Server.Members;
using Gatewright.Server.Planning;
using Gatewright.Server.Problems;
using Gatewright.Server.Syncing;
using Gatewright.Store;
using Gatewright.Store.Blobs;
using Gatewright.Store.Schema;
using Gatewright.Store.Snapshots;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.ResponseCompression;

namespace Gatewright.Server.Hosting;

/// <summary>What the server is made of.</summary>
internal static class Services
{
    /// <summary>The scheme that looks at both cookies.</summary>
    private const string EitherCookie = "either";

    /// <summary>Adds everything.</summary>
    public static void AddGatewright(this WebApplicationBuilder builder, ServeOptions options)
    {
        IServiceCollection services = builder.Services;
        services.AddSingleton(options);
        services.AddSingleton<PublicAddress>();
        services.AddSingleton(options.Clock);
        services.AddDbContextPool<StoreDb>(options.Location.Configure);
        services.AddSingleton(new JournalStore(options.Location));
        services.AddSingleton(new BlobStore(options.Location));
        services.AddSingleton(new SnapshotStore(options.Location));
        services.AddSingleton<SnapshotWriter>();
        services.AddHostedService(made => made.GetRequiredService<SnapshotWriter>());
        services.AddSingleton<OpenClubs>();
        services.AddSingleton(_ => new PlanTurns(TimeSpan.FromSeconds(15)));
        services.AddSingleton<ClubPlans>();
        services.AddSingleton<ClubNews>();
        services.AddSingleton<Push>();
        services.AddSingleton<ServerEntries>();
        services.AddScoped<SignInLog>();
        services.AddScoped<SignIns>();
        services.AddScoped<Invitations>();
        services.AddScoped<Joining>();
        services.AddScoped<Leaving>();
        services.AddScoped<MemberList>();
        services.AddScoped<OwnAccount>();
        services.AddScoped<OwnData>();
        services.AddAccounts(options);
        services.AddLimitsAndForms(options);
        services.AddHealthChecks().AddCheck<StoreHealth>("store", tags: ["ready"]);
        services.AddRazorComponents();
        if (options.SendsTelemetry)
        {
            services.AddTelemetry();
        }
    }

    private static void AddAccounts(this IServiceCollection services, ServeOptions options)
    {
        CookieSecurePolicy secure = options.IsHttps ? CookieSecurePolicy.Always : CookieSecurePolicy.SameAsRequest;
        services.AddIdentityCore<Account>(PasswordRules.Configure)
            .AddEntityFrameworkStores<StoreDb>()
            .AddSignInManager();
        services.Configure<IdentityOptions>(StoreDb.WithPasskeys);
        services.AddAuthentication(EitherCookie)
            .AddPolicyScheme(EitherCookie, null, scheme => scheme.ForwardDefaultSelector = context =>
                context.Request.Cookies.ContainsKey(CookieNames.Crew) && !context.Request.Cookies.ContainsKey(CookieNames.Account)
                    ? CrewLink.Scheme
                    : IdentityConstants.ApplicationScheme)
            .AddCookie(CrewLink.Scheme, cookie => Shape(cookie, CookieNames.Crew, secure, TimeSpan.FromDays(90)))
            .AddIdentityCookies(cookies =>
            {
                cookies.ApplicationCookie!.Configure(cookie => Shape(cookie, CookieNames.Account, secure, TimeSpan.FromDays(30)));
                cookies.TwoFactorUserIdCookie!.Configure(cookie => Shape(cookie, CookieNames.Passkey, secure, TimeSpan.FromMinutes(5)));
            });
        services.Configure<SecurityStampValidatorOptions>(stamp => stamp.ValidationInterval = TimeSpan.FromMinutes(2));
        services.AddDataProtection().SetApplicationName("gatewright").PersistKeysToDbContext<StoreDb>();
        AuthorizationBuilder authorization = services.AddAuthorizationBuilder();
        foreach (ClubRight right in Enum.GetValues<ClubRight>())
        {
            authorization.AddPolicy(right.Policy(), policy => policy.RequireAuthenticatedUser().AddRequirements(new ClubRequirement(right)));
        }

        authorization.AddPolicy(OwnAccountEndpoints.SignedIn, policy =>
            policy.RequireAuthenticatedUser().AddRequirements(new AccountRequirement()));
        services.AddScoped<IAuthorizationHandler, AccountRequirementHandler>();
        services.AddScoped<IAuthorizationHandler, ClubRequirementHandler>();
        services.AddSingleton<IAuthorizationMiddlewareResultHandler, WallAnswers>();
        services.AddAntiforgery(forgery =>
        {
            forgery.HeaderName = TokenCheck.Header;
            forgery.Cookie.Name = CookieNames.Antiforgery;
            forgery.Cookie.SameSite = SameSiteMode.Strict;
            forgery.Cookie.SecurePolicy = secure;
            forgery.Cookie.HttpOnly = true;
        });
    }

    private static void Shape(CookieAuthenticationOptions options, string name, CookieSecurePolicy secure, TimeSpan life)
    {
        options.Cookie.Name = name;
        options.Cookie.HttpOnly = true;
        options.Cookie.SecurePolicy = secure;
        options.Cookie.SameSite = SameSiteMode.Lax;
        options.ExpireTimeSpan = life;
        options.SlidingExpiration = true;
        options.LoginPath = "/sign-in";
        options.Events.OnRedirectToLogin = context => Answer(context, StatusCodes.Status401Unauthorized);
        options.Events.OnRedirectToAccessDenied = context => Answer(context, StatusCodes.Status403Forbidden);
    }

    /// <summary>Programs hear a status; people are shown where to sign in.</summary>
    private static Task Answer(RedirectContext<CookieAuthenticationOptions> context, int status)
    {
        if (context.Request.Path.StartsWithSegments("/api", StringComparison.Ordinal) || status != StatusCodes.Status401Unauthorized)
        {
            context.Response.StatusCode = status;
        }
        else
        {
            context.Response.Redirect(context.RedirectUri);
        }

        return Task.CompletedTask;
    }

    private static void AddLimitsAndForms(this IServiceCollection services, ServeOptions options)
    {
        services.AddRateLimiter(limiter => RateLimits.Configure(limiter, options.SignInsAMinute));
        services.AddRequestDecompression();
        services.AddResponseCompression(compression =>
        {
            // Nothing that is compressed holds a secret beside what a stranger chose: tokens travel in /api/session alone.
            compression.EnableForHttps = true;
            compression.MimeTypes = ["application/x-ndjson", "text/html", "text/css", "text/javascript", "image/svg+xml"];
            compression.Providers.Add<BrotliCompressionProvider>();
            compression.Providers.Add<GzipCompressionProvider>();
        });
        services.Configure<BrotliCompressionProviderOptions>(brotli => brotli.Level = CompressionLevel.Fastest);
        services.ConfigureHttpJsonOptions(json => json.SerializerOptions.TypeInfoResolverChain.Insert(0, ServerJson.Default));
        services.AddProblemDetails();
        services.AddExceptionHandler<ExceptionAnswers>();
    }
}
