using Gatewright.Core.Judging;

namespace Gatewright.Drawings.History;

/// <summary>Where readings stand over the days. A mend begins a new line: before and after it are two gates.</summary>
public sealed class HistoryGeometry
{
    /// <summary>How wide the drawing is.</summary>
    public const double Width = 360;

    /// <summary>How high the drawing is.</summary>
    public const double Height = 220;

    /// <summary>How many standard uncertainties a bar reaches to each side.</summary>
    public const double Coverage = 2;

    /// <summary>With more readings than this their bars would run into each other, and a band stands for them.</summary>
    public const int MostWithBars = 24;

    private readonly DateOnly _first;

    /// <summary>A drawing wide and high enough for all of it.</summary>
    public HistoryGeometry(IReadOnlyList<HistoryReading> readings, IReadOnlyList<DateOnly> mends, StationLimits? limits)
    {
        Readings = [.. readings.OrderBy(r => r.Day)];
        Mends = [.. mends.Order()];
        DateOnly[] days = [.. Readings.Select(r => r.Day), .. Mends];
        (_first, Last) = days.Length == 0 ? (default, default) : (days.Min(), days.Max());
        double span = Math.Max(1, Last.DayNumber - _first.DayNumber);
        X = new(0, span, 44, Width - 16);
        double[] all =
        [
            .. Readings.SelectMany(r => new[] { Low(r), High(r) }),
            .. limits is null ? [0.0, 5] : new[] { limits.Floor.Degrees, limits.Highest.Degrees },
        ];
        Y = new(all.Max() + 0.4, all.Min() - 0.4, 18, Height - 32);
        Segments = [.. Readings.GroupBy(r => Mends.Count(mend => mend <= r.Day)).Select(g => (IReadOnlyList<HistoryReading>)[.. g])];
    }

    /// <summary>The readings, oldest first.</summary>
    public IReadOnlyList<HistoryReading> Readings { get; }

    /// <summary>The days of mends, oldest first. A reading on the day of a mend is taken to be the one that proves it.</summary>
    public IReadOnlyList<DateOnly> Mends { get; }

    /// <summary>Runs of readings without a mend between them.</summary>
    public IReadOnlyList<IReadOnlyList<HistoryReading>> Segments { get; }

    /// <summary>The first day shown.</summary>
    public DateOnly First => _first;

    /// <summary>The last day shown.</summary>
    public DateOnly Last { get; }

    /// <summary>Whether there are too many readings for a bar each.</summary>
    public bool IsDense => Readings.Count > MostWithBars;

    /// <summary>Days since the first.</summary>
    public Scale X { get; }

    /// <summary>Pitch in degrees, the highest at the top.</summary>
    public Scale Y { get; }

    /// <summary>Where a day stands; a single day stands at the end, where the next will follow it.</summary>
    public double Along(DateOnly day) => First == Last ? X.End : X[day.DayNumber - _first.DayNumber];

    /// <summary>The place of a reading.</summary>
    public Spot At(HistoryReading reading) => new(Along(reading.Day), Y[reading.Pitch.Value.Degrees]);

    /// <summary>From a reading's lower to its upper end, twice its uncertainty to each side.</summary>
    public (double Low, double High) Bar(HistoryReading reading) => (Y[Low(reading)], Y[High(reading)]);

    /// <summary>The line through a run.</summary>
    public string Line(IEnumerable<HistoryReading> run) => Outline.Through(run.Select(At)).ToString();

    /// <summary>The band about a run.</summary>
    public string Band(IReadOnlyList<HistoryReading> run) => Outline.Through(
    [
        .. run.Select(r => new Spot(Along(r.Day), Y[High(r)])),
        .. run.Reverse().Select(r => new Spot(Along(r.Day), Y[Low(r)])),
    ]).Close().ToString();

    private static double Low(HistoryReading reading) => reading.Pitch.Value.Degrees - (Coverage * reading.Pitch.U.Degrees);

    private static double High(HistoryReading reading) => reading.Pitch.Value.Degrees + (Coverage * reading.Pitch.U.Degrees);
}
