using System.Globalization;
using Gatewright.Core;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Reporting;
using Gatewright.Words;

namespace Gatewright.Server.Reporting;

/// <summary>What was filled in to tell of something; nothing of it is trusted.</summary>
public sealed class ReportForm
{
    /// <summary>The longest text: a report is a line or two.</summary>
    public const int LongestText = 500;

    /// <summary>What happened: the name of a <see cref="ReportSubject"/>.</summary>
    public string? What { get; set; }

    /// <summary>Where: "3 port", "port" for a boat that sits down to a side, empty for nobody knows.</summary>
    public string? Where { get; set; }

    /// <summary>In their words.</summary>
    public string? Text { get; set; }

    /// <summary>What is recorded of it; null where something in it is missing or cannot be.</summary>
    /// <param name="boat">The boat's key.</param>
    /// <param name="gates">The boat's gates: nothing is told of another.</param>
    public IReadOnlyList<Fact>? Facts(string boat, IReadOnlyList<GatePlace> gates)
    {
        ArgumentNullException.ThrowIfNull(gates);
        string text = (Text ?? string.Empty).ReplaceLineEndings("\n");
        if (!ReportSubjects.All.Any(s => s.ToString() == What)
            || Place(gates) is not { } where
            || text.Length > LongestText
            || text.Any(c => char.IsControl(c) && c is not ('\n' or '\t')))
        {
            return null;
        }

        ReportSubject what = Enum.Parse<ReportSubject>(What!);

        // A form without scripts offers every place for everything told: the side is what counts of a boat down to one.
        ReportPlace told = (what, where) switch
        {
            (ReportSubject.DownToOneSide, { Side: { } side }) => new ReportPlace.OnSide(side),
            (_, ReportPlace.OnSide) => new ReportPlace.Somewhere(),
            _ => where,
        };
        return ReportDraft.Takes(what, told)
            ? (new ReportDraft(boat, what, told, text) with { HoldsAshore = false }).Facts(Wording.English)
            : null;
    }

    /// <summary>The value of a gate in the form: "3 port".</summary>
    public static string ValueOf(GatePlace gate) => string.Create(CultureInfo.InvariantCulture, $"{gate.Seat} {gate.Side.Word()}");

    private ReportPlace? Place(IReadOnlyList<GatePlace> gates) =>
        string.IsNullOrEmpty(Where) ? new ReportPlace.Somewhere()
        : Where == Side.Port.Word() ? new ReportPlace.OnSide(Side.Port)
        : Where == Side.Starboard.Word() ? new ReportPlace.OnSide(Side.Starboard)
        : gates.Any(g => ValueOf(g) == Where) ? new ReportPlace.AtGate(gates.First(g => ValueOf(g) == Where))
        : null;
}
