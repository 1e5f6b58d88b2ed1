using System.Globalization;
using Gatewright.Words;

namespace Gatewright.App.Frame;

/// <summary>How the app writes numbers and days.</summary>
/// <remarks>The browser's program carries no culture data: what the two languages need of it stands here.</remarks>
public static class AppCulture
{
    /// <summary>Texts are those of a language from here on.</summary>
    /// <param name="language">What browsers call it: "en", "de".</param>
    public static void Begin(string language) =>
        CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.CurrentUICulture = new(language);

    /// <summary>Numbers and days are those of the texts' language from here on.</summary>
    /// <remarks>The first screen has none: nobody who looks at it waits for them.</remarks>
    /// <returns>The sentences of that language.</returns>
    public static Wording BeginFigures()
    {
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.CurrentCulture = Of(Language.Of(CultureInfo.CurrentUICulture.Name));
        return Said.Words;
    }

    /// <summary>
    /// The culture of a language, with days as the app's sentences have them: 10/11 would be one day in one country and
    /// another in the next, so English has 2026-11-10.
    /// </summary>
    public static CultureInfo Of(Language language)
    {
        ArgumentNullException.ThrowIfNull(language);
        var culture = new CultureInfo(language.Tag)
        {
            NumberFormat = language.Numbers,
            DateTimeFormat = new DateTimeFormatInfo { ShortDatePattern = language.DayPattern, ShortTimePattern = "HH:mm" },
        };
        return CultureInfo.ReadOnly(culture);
    }
}
