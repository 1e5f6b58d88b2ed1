using System.Globalization;

namespace Gatewright.App.Frame;

/// <summary>How the app writes numbers and days.</summary>
public static class AppCulture
{
    /// <summary>Numbers and days are written so from here on. Nothing of the first screen needs it, and it takes a while.</summary>
    public static void Begin() => CultureInfo.DefaultThreadCurrentCulture = CultureInfo.CurrentCulture = Of(CultureInfo.CurrentUICulture);

    /// <summary>
    /// The culture of a language, with days as the app's sentences have them: 10/11 would be one day in one country and
    /// another in the next, so English has 2026-11-10.
    /// </summary>
    public static CultureInfo Of(CultureInfo language)
    {
        ArgumentNullException.ThrowIfNull(language);
        var culture = (CultureInfo)language.Clone();
        culture.DateTimeFormat.ShortDatePattern = language.TwoLetterISOLanguageName == "de" ? "dd.MM.yyyy" : "yyyy-MM-dd";
        return CultureInfo.ReadOnly(culture);
    }
}
