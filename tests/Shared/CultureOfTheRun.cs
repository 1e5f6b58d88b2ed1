using System.Globalization;
using System.Runtime.CompilerServices;

namespace Gatewright.Tests;

/// <summary>
/// Puts a whole run of the tests under the culture that GATEWRIGHT_TEST_CULTURE names, before any test starts.
/// </summary>
/// <remarks>
/// The name alone proves nothing: where globalization is invariant every culture writes a decimal point, and the run
/// would be the plain one again. So a culture without a decimal comma ends the run.
/// </remarks>
internal static class CultureOfTheRun
{
    private const string Variable = "GATEWRIGHT_TEST_CULTURE";

    [ModuleInitializer]
    internal static void Set()
    {
        string? name = Environment.GetEnvironmentVariable(Variable);
        if (string.IsNullOrEmpty(name))
        {
            return;
        }

        var culture = CultureInfo.GetCultureInfo(name);
        if (culture.NumberFormat.NumberDecimalSeparator != ",")
        {
            throw new InvalidOperationException($"{Variable}={name} has no decimal comma here: is globalization invariant, or ICU missing?");
        }

        CultureInfo.DefaultThreadCurrentCulture = culture;
        CultureInfo.DefaultThreadCurrentUICulture = culture;
        CultureInfo.CurrentCulture = culture;
        CultureInfo.CurrentUICulture = culture;
    }
}
