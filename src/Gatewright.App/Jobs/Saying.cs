using System.Globalization;
using Gatewright.App.Frame;
using Gatewright.Core;
using Gatewright.Core.Mending;
using Gatewright.Drawings;
using Gatewright.Journal.Facts;
using Gatewright.Words;

namespace Gatewright.App.Jobs;

/// <summary>How mending is told in the language the program was started in.</summary>
internal static class Saying
{
    /// <summary>How many times larger than true a lean is drawn where a remedy is shown: two degrees are hardly seen.</summary>
    public const double Larger = 4;

    /// <summary>The sentences of a check.</summary>
    public static Wording Words => Wording.In(Language.Of(CultureInfo.CurrentUICulture.Name));

    /// <summary>The words on drawings.</summary>
    public static DrawingLabels Labels(Texts<JobsTexts> texts) => new()
    {
        Port = Words.Names.Side(Side.Port),
        Starboard = Words.Names.Side(Side.Starboard),
        Bow = texts["Bow"],
        Stern = texts["Stern"],
        Hull = texts["Hull"],
        Away = texts["Away"],
        Culture = CultureInfo.CurrentCulture,
    };

    /// <summary>A day: "2026-03-14", "14.03.2026".</summary>
    public static string Day(DateOnly day) => Words.Language.Day(day);

    /// <summary>A moment by this device's clock: "2026-03-14 17:05".</summary>
    public static string Moment(DateTimeOffset at) =>
        $"{Day(DateOnly.FromDateTime(at.LocalDateTime))} {at.LocalDateTime.ToString("HH:mm", CultureInfo.InvariantCulture)}";

    /// <summary>Degrees with a true minus: "−0.5°".</summary>
    public static string Degrees(decimal degrees) =>
        (degrees < 0 ? "\u2212" : string.Empty) + Math.Abs(degrees).ToString("0.0", CultureInfo.CurrentCulture) + "°";

    /// <summary>"3.0 – 5.0°".</summary>
    public static string Band(ExpectedAt expected)
    {
        ArgumentNullException.ThrowIfNull(expected);
        return Band(expected.From, expected.To);
    }

    /// <summary>"3.0 – 5.0°".</summary>
    public static string Band(decimal from, decimal to) => Degrees(from).TrimEnd('°') + " – " + Degrees(to);

    /// <summary>"3 × insert 4°".</summary>
    public static string Part(PartUsed part) =>
        Words.Names.Part(new PartCount(Journal.Jobs.JobPart.PartOf(part), part.Count));

    /// <summary>How much a remedy moves, as it stands beside its picture: "2 + 0.5 mm", "4°"; null where there is no amount.</summary>
    public static string? Amount(Remedy remedy)
    {
        FigureWords figures = Words.Figures;
        return remedy.Steps is [{ } step, ..]
            ? step switch
            {
                Work.FitInsert insert => figures.Brief(insert.Degrees) + "°",
                Work.Pack pack => string.Join(" + ", pack.Sizes.ThicknessesMm.Select(figures.Brief)) + " mm",
                Work.SetStay stay => figures.Fixed(Math.Abs(stay.ToSternMm), 1) + " mm",
                Work.StraightenPin { Tip: var tip } => figures.Fixed(Largest(tip), 1) + " mm",
                Work.RefitRigger { Tip: var tip } => figures.Fixed(Largest(tip), 1) + " mm",
                Work.TurnSleeve sleeve => figures.Fixed(sleeve.RoundMm, 1) + " mm",
                _ => null,
            }
            : null;
    }

    private static double Largest(TipWay tip) => Math.Max(Math.Abs(tip.ToSternMm), Math.Abs(tip.OutMm));
}
