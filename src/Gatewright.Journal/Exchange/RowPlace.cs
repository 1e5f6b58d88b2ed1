using System.Globalization;

namespace Gatewright.Journal.Exchange;

/// <summary>Where a row stands: the source's place among the sources, its name, and the line.</summary>
internal readonly record struct RowPlace(int SourceIndex, string Source, int Line)
{
    /// <summary>The place as a row of some source speaks of it: "line 2", "round.csv, line 2".</summary>
    public string SeenFrom(RowPlace other) => SourceIndex == other.SourceIndex
        ? string.Create(CultureInfo.InvariantCulture, $"line {Line}")
        : string.Create(CultureInfo.InvariantCulture, $"{Source}, line {Line}");
}
