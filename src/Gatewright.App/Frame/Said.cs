using System.Globalization;
using Gatewright.Core;
using Gatewright.Core.Measuring;
using Gatewright.Drawings;
using Gatewright.Words;

namespace Gatewright.App.Frame;

/// <summary>What the app says in the language it was started in: its sentences, its days, the words on its drawings.</summary>
internal static class Said
{
    /// <summary>The sentences of the trade.</summary>
    public static Wording Words => Wording.OnScreen(Language.Of(CultureInfo.CurrentUICulture.Name));

    /// <summary>The words on drawings.</summary>
    public static DrawingLabels Labels(Texts<FrameTexts> texts) => new()
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

    /// <summary>"± 0.4".</summary>
    public static string PlusMinus(Estimate estimate) => "± " + Figures.Degrees(estimate.U.Degrees, 1).TrimEnd('°');

    /// <summary>"2.4° ± 0.4".</summary>
    public static string Degrees(Estimate estimate) => $"{Figures.Degrees(estimate.Value.Degrees, 1)} {PlusMinus(estimate)}";

    /// <summary>A day: "2026-03-14", in German "14.03.2026".</summary>
    public static string Day(DateOnly day) => Words.Language.Day(day);

    /// <summary>A moment by this device's clock: "2026-03-14 17:05".</summary>
    public static string Moment(DateTimeOffset at) =>
        $"{Day(DateOnly.FromDateTime(at.LocalDateTime))} {Figures.Clock(at)}";
}
