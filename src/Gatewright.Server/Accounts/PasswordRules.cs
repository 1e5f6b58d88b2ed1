using Gatewright.Server.Problems;
using Microsoft.AspNetCore.Identity;

namespace Gatewright.Server.Accounts;

/// <summary>
/// What a password must be: long, and nothing else. Rules on which signs it has make people write worse ones (NIST
/// SP 800-63B, section 3.1.1.2).
/// </summary>
internal static class PasswordRules
{
    /// <summary>Characters at least: 12.</summary>
    public const int Shortest = 12;

    /// <summary>Characters at most: 128, so that hashing cannot be made to take long.</summary>
    public const int Longest = 128;

    /// <summary>Tells Identity.</summary>
    public static void Configure(IdentityOptions options)
    {
        options.Password.RequiredLength = Shortest;
        options.Password.RequireDigit = false;
        options.Password.RequireLowercase = false;
        options.Password.RequireUppercase = false;
        options.Password.RequireNonAlphanumeric = false;
        options.Password.RequiredUniqueChars = 4;
        options.Lockout.MaxFailedAccessAttempts = 10;
        options.Lockout.DefaultLockoutTimeSpan = TimeSpan.FromMinutes(10);
    }

    /// <summary>Notes what is wrong with a new password.</summary>
    public static void Check(Fields fields, string? password, string field) => fields.Expect(
        password is { Length: >= Shortest and <= Longest } && password.Distinct().Count() >= 4,
        field,
        $"{Shortest} to {Longest} characters, of which at least four differ; a few words in a row do well");
}
