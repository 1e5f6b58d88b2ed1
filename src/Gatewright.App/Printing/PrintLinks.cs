using System.Globalization;
using Gatewright.App.Device;
using Gatewright.Words;

namespace Gatewright.App.Printing;

/// <summary>Where the server has a club's documents.</summary>
internal static class PrintLinks
{
    /// <summary>One of them, in the language the program was started in; what is asked beside begins with <c>&amp;</c>.</summary>
    public static string Of(ClubInHand inHand, string document, string asked = "") =>
        $"/api/clubs/{Uri.EscapeDataString(inHand.Held.Club)}/print/{document}?language={Language.Of(CultureInfo.CurrentUICulture.Name).Tag}{asked}";

    /// <summary>The rig sheet of a boat.</summary>
    public static string Sheet(ClubInHand inHand, string boat) => Of(inHand, "sheets", "&boat=" + Uri.EscapeDataString(boat));

    /// <summary>The sheet of a job.</summary>
    public static string Job(ClubInHand inHand, string job) => Of(inHand, "jobs", "&job=" + Uri.EscapeDataString(job));
}
