using Gatewright.App.Frame;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Mending;
using Gatewright.Journal.Facts;
using Gatewright.Words;

namespace Gatewright.App.Jobs;

/// <summary>The figures of mending: bands, parts, amounts.</summary>
internal static class JobFigures
{
    /// <summary>How many times larger than true a lean is drawn where a remedy is shown: two degrees are hardly seen.</summary>
    public const double Larger = 4;

    /// <summary>"3.0 – 5.0°".</summary>
    public static string Band(ExpectedAt expected)
    {
        ArgumentNullException.ThrowIfNull(expected);
        return Band(expected.From, expected.To);
    }

    /// <summary>"3.0 – 5.0°".</summary>
    public static string Band(decimal from, decimal to) => Figures.Degrees((double)from, 1).TrimEnd('°') + " – " + Figures.Degrees((double)to, 1);

    /// <summary>"3 × insert 4°".</summary>
    public static string Part(PartUsed part) =>
        Said.Words.Names.Part(new PartCount(Journal.Jobs.JobPart.PartOf(part), part.Count));

    /// <summary>"wrong or worn insert + pin leaning aft"; null where nothing was found.</summary>
    public static string? Found(IReadOnlyList<Cause> causes) => causes.Count == 0 ? null : string.Join(" + ", causes.Select(Said.Words.Names.Cause));

    /// <summary>How much a remedy moves, as it stands beside its picture: "2 + 0.5 mm", "4°"; null where there is no amount.</summary>
    public static string? Amount(Remedy remedy)
    {
        FigureWords figures = Said.Words.Figures;
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
