namespace Gatewright.Server.Hosting;

/// <summary>The names of the cookies.</summary>
internal static class CookieNames
{
    /// <summary>Of those with an account.</summary>
    public const string Account = "gatewright";

    /// <summary>Of those who came by a crew's link.</summary>
    public const string Crew = "gatewright-crew";

    /// <summary>While a passkey is made or used.</summary>
    public const string Passkey = "gatewright-passkey";

    /// <summary>The half of the token that a page cannot read.</summary>
    public const string Antiforgery = "gatewright-token";
}
