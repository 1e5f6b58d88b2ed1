using System.Globalization;
using Gatewright.App.Frame;
using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Drawings;
using Gatewright.Words;

namespace Gatewright.App.Boat;

/// <summary>How figures, days and the words on drawings are written in the language of the app.</summary>
internal static class Said
{
    /// <summary>The sentences of a check.</summary>
    public static Wording Words => Wording.In(Language.Of(CultureInfo.CurrentUICulture.Name));

    /// <summary>The words on drawings.</summary>
    public static DrawingLabels Labels(Texts<BoatTexts> texts) => new()
    {
        Port = Words.Names.Side(Side.Port),
        Starboard = Words.Names.Side(Side.Starboard),
        Bow = texts["Bow"],
        Stern = texts["Stern"],
        Hull = texts["Hull"],
        Away = texts["Away"],
        Catch = Words.Names.Station(Station.Catch),
        Abeam = Words.Names.Station(Station.Abeam),
        Finish = Words.Names.Station(Station.Finish),
        Culture = CultureInfo.CurrentCulture,
    };

    /// <summary>Numbers, with a true minus.</summary>
    private static DrawingLabels Figures => new() { Culture = CultureInfo.CurrentCulture };

    /// <summary>"−0.5°".</summary>
    public static string Degrees(double degrees) => Figures.Degrees(degrees);

    /// <summary>"± 0.4".</summary>
    public static string PlusMinus(Estimate estimate) => "± " + Figures.Number(estimate.U.Degrees);

    /// <summary>"2.4° ± 0.4".</summary>
    public static string Degrees(Estimate estimate) => $"{Degrees(estimate.Value.Degrees)} {PlusMinus(estimate)}";

    /// <summary>As it was entered, with its unit: "−0.5°".</summary>
    public static string Entered(decimal degrees) =>
        (degrees < 0 ? "\u2212" : string.Empty) + Math.Abs(degrees).ToString("0.0##", CultureInfo.CurrentCulture) + "°";

    /// <summary>A day as it is written here.</summary>
    public static string Day(DateOnly day) => day.ToString("d", CultureInfo.CurrentCulture);
}
