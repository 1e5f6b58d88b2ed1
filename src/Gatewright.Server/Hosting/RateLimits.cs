using System.Globalization;
using System.Security.Claims;
using System.Threading.RateLimiting;
using Gatewright.Server.Members;
using Microsoft.AspNetCore.RateLimiting;

namespace Gatewright.Server.Hosting;

/// <summary>How often one may ask.</summary>
internal static class RateLimits
{
    /// <summary>The policy for whatever takes a password or a secret.</summary>
    public const string SignIn = "sign-in";

    /// <summary>The policy for what a crew tells: many share one link, and it is handed round.</summary>
    public const string Report = "report";

    private const int ReportsAMinute = 30;

    // A phone that comes back after a week in the shed sends and fetches in long pages; a page of the site asks for a
    // handful of files.
    private const int Burst = 600;
    private const int ASecond = 300;

    /// <summary>Tells the limiter.</summary>
    public static void Configure(RateLimiterOptions options, int signInsAMinute)
    {
        options.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        options.OnRejected = (context, _) =>
        {
            TellWait(context.HttpContext.Response, context.Lease.TryGetMetadata(MetadataName.RetryAfter, out TimeSpan after) ? after : TimeSpan.FromSeconds(1));
            return ValueTask.CompletedTask;
        };
        options.AddPolicy(SignIn, context => RateLimitPartition.GetFixedWindowLimiter(
            Address(context),
            _ => new() { PermitLimit = signInsAMinute, Window = TimeSpan.FromMinutes(1) }));
        options.AddPolicy(Report, context => RateLimitPartition.GetFixedWindowLimiter(
            Who(context),
            _ => new() { PermitLimit = ReportsAMinute, Window = TimeSpan.FromMinutes(1) }));
        options.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, string>(context => RateLimitPartition.GetTokenBucketLimiter(
            Who(context),
            _ => new() { TokenLimit = Burst, TokensPerPeriod = ASecond, ReplenishmentPeriod = TimeSpan.FromSeconds(1), QueueLimit = 0 }));
    }

    /// <summary>Says when to ask again, in whole seconds, one at least.</summary>
    public static void TellWait(HttpResponse response, TimeSpan wait) => response.Headers.RetryAfter =
        Math.Max(1, (int)Math.Ceiling(wait.TotalSeconds)).ToString(CultureInfo.InvariantCulture);

    private static string Who(HttpContext context) =>
        context.User.FindFirstValue(ClaimTypes.NameIdentifier)
        ?? context.User.FindFirstValue(CrewLink.Claim)
        ?? Address(context);

    /// <summary>Of IPv6 the network: one household has as many addresses as it likes.</summary>
    private static string Address(HttpContext context)
    {
        if (context.Connection.RemoteIpAddress is not { } address)
        {
            return "unknown";
        }

        byte[] bytes = (address.IsIPv4MappedToIPv6 ? address.MapToIPv4() : address).GetAddressBytes();
        return Convert.ToHexString(bytes.AsSpan(0, Math.Min(bytes.Length, 8)));
    }
}
