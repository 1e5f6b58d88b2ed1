using System.Globalization;
using Gatewright.App.Frame;
using Gatewright.Core.Changing;
using Gatewright.Core.Rig;

namespace Gatewright.App.Changing;

/// <summary>The pages about a boat's whole rig.</summary>
internal static class ChangingLinks
{
    /// <summary>The way to another rig; with one chosen, to that.</summary>
    public static string Change(string boat, string? to = null, bool mayExchange = false) =>
        Of(boat, "change") + (to is null ? string.Empty : "?to=" + Uri.EscapeDataString(to) + (mayExchange ? "&exchange=yes" : string.Empty));

    /// <summary>The boat beside another, or beside itself on a day.</summary>
    public static string Compare(string boat, string? with = null) =>
        Of(boat, "compare") + (with is null ? string.Empty : "?with=" + Uri.EscapeDataString(with));

    /// <summary>The boat on the road.</summary>
    public static string Travel(string boat) => Of(boat, "travel");

    /// <summary>A day as a choice: "day:2026-05-04".</summary>
    public static string Day(DateOnly day) => "day:" + day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>What was chosen: its kind, and which; null for nothing that is known.</summary>
    public static (string Kind, string Which)? Chosen(string? choice) =>
        choice?.Split(':', 2) is [{ } kind, { Length: > 0 } which] ? (kind, which) : null;

    /// <summary>The day of a choice; null where it is none.</summary>
    public static DateOnly? DayOf(string which) =>
        DateOnly.TryParseExact(which, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : null;

    /// <summary>A seat with some measures set anew as a choice: "set:3:inboard=116.5,work-through=17", in centimetres.</summary>
    public static string Set(int seat, IEnumerable<(RigMeasure Measure, double Centimetres)> figures) => string.Create(
        CultureInfo.InvariantCulture,
        $"set:{seat}:{string.Join(',', figures.Select(f => string.Create(CultureInfo.InvariantCulture, $"{f.Measure.Word()}={Math.Round(f.Centimetres, 2)}")))}");

    /// <summary>The seat and its measures of such a choice; null where it is none, and where a figure is none that occurs.</summary>
    public static (int Seat, IReadOnlyList<(RigMeasure Measure, double Value)> Figures)? SetOf(string which)
    {
        string[] parts = which.Split(':');
        if (parts.Length != 2 || !int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out int seat))
        {
            return null;
        }

        var figures = new List<(RigMeasure, double)>();
        foreach (string part in parts[1].Split(','))
        {
            if (part.Split('=') is not [{ } word, { } number]
                || RigMeasures.OfWord(word) is not { } measure
                || !double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value)
                || value < measure.Plausible().Least || value > measure.Plausible().Most)
            {
                return null;
            }

            figures.Add((measure, value));
        }

        return (seat, figures);
    }

    /// <summary>What such a seat is called: "seat 3 with inboard 116.5 cm".</summary>
    public static string NameOf((int Seat, IReadOnlyList<(RigMeasure Measure, double Value)> Figures) set, Texts<ChangingTexts> texts)
    {
        ArgumentNullException.ThrowIfNull(texts);
        IEnumerable<string> figures = set.Figures.Select(f => $"{Said.Words.Rig.Measure(f.Measure)} {Said.Words.Changes.Figure(RigItems.Of(f.Measure), f.Value)}");
        return texts["SeatSet", set.Seat, string.Join(", ", figures)];
    }

    private static string Of(string boat, string page) => $"boat/{Uri.EscapeDataString(boat)}/{page}";
}
