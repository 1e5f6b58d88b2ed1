using Gatewright.Core.Checking;
using Gatewright.Core.Diagnosing;
using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Exchange;

/// <summary>Readings as CSV: what a spreadsheet saves, and what one opens.</summary>
/// <remarks>The format is in docs/formats.md. Neither way depends on the culture.</remarks>
public static class ReadingsCsv
{
    /// <summary>
    /// Reads every source to its end, or as far as it can be read. A boat, a gauge or a rack that several sources name
    /// is one, and rows mean the same in any order and in any source.
    /// </summary>
    /// <remarks>Never fails over what a source holds; a stream that cannot be read throws as streams do.</remarks>
    /// <param name="sources">The files; given none there is nothing to read, and nothing wrong.</param>
    /// <param name="settings">The angles of the stations, and what a gauge of unknown make can do.</param>
    public static ReadingsInput Read(IEnumerable<ReadingsSource> sources, MeasuringSettings settings)
    {
        ArgumentNullException.ThrowIfNull(sources);
        ArgumentNullException.ThrowIfNull(settings);
        var shed = new Shed(settings);
        int index = 0;
        ReadingsSource? last = null;
        foreach (ReadingsSource source in sources)
        {
            SourceReader.Read(source, index++, shed);
            last = source;
        }

        // Racks alone are nothing to judge, and must not pass for a shed in which all is well.
        if (last is not null && shed.Boats.All.Count == 0 && shed.KeepsReadings)
        {
            new Reporter(shed.Problems, new(index - 1, last.Name, 1)).NoReadings();
        }

        return shed.Close();
    }

    /// <summary>
    /// Writes boats with what was told of them, so that they are judged as they are on record: old readings are among
    /// those written where a report on its day makes them old again, and left out where only the journal tells.
    /// </summary>
    /// <exception cref="ArgumentException">As for readings alone.</exception>
    /// <param name="to">Where to; it is neither flushed nor closed.</param>
    /// <param name="boats">The boats.</param>
    /// <param name="measures">What was measured of their rigs.</param>
    internal static void Write(TextWriter to, IReadOnlyList<BoatRecord> boats, IReadOnlyList<BoatMeasures> measures)
    {
        ILookup<string, Report> told = boats.SelectMany(b => b.Reports.Where(IsARow).Select(r => (b.Current.Boat, r))).ToLookup(t => t.Boat, t => t.r);
        new ReadingsWriter(to, [.. boats.Select(b => b.Current with { Readings = [.. b.Old.Where(r => IsStillOld(r, b)), .. b.Current.Readings] })], told, measures).Write();
    }

    /// <summary>A report of a whole boat other than that it sits down to one side has no row, and weighs nothing.</summary>
    private static bool IsARow(Report report) => report.Gate is not null || report is { Kind: ReportKind.DownToOneSide, Side: not null };

    private static bool IsStillOld(Reading reading, BoatRecord boat) =>
        reading.Item != ReadItem.Sleeve
        && boat.Reports.Any(r => r.Gate == reading.Gate && r.Kind.ChangesTheGate() && reading.Lie.Date < r.Date);

    /// <summary>Writes readings so that they read back as they are, under the same settings.</summary>
    /// <remarks>
    /// A gauge is written by its name: its own figures are the club's to keep. Names are written as they are; they read
    /// back so as long as they have no double spaces and no characters that cannot be seen. A boat without readings
    /// leaves no row.
    /// </remarks>
    /// <param name="to">Where to; it is neither flushed nor closed.</param>
    /// <param name="boats">The boats, each name once.</param>
    /// <exception cref="ArgumentException">
    /// Two boats of one name, or a rack with several levels of which a boat's date does not tell which it had.
    /// </exception>
    public static void Write(TextWriter to, IEnumerable<BoatReadings> boats)
    {
        ArgumentNullException.ThrowIfNull(to);
        ArgumentNullException.ThrowIfNull(boats);
        new ReadingsWriter(to, [.. boats], Enumerable.Empty<Report>().ToLookup(_ => ""), []).Write();
    }
}
