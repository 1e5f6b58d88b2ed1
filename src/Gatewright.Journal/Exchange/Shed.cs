using Gatewright.Core.Measuring;

namespace Gatewright.Journal.Exchange;

/// <summary>Everything read so far, from all sources.</summary>
internal sealed class Shed(MeasuringSettings settings)
{
    private readonly List<ReadingNote> _notes = [];

    public MeasuringSettings Settings => settings;

    public Problems Problems { get; } = new();

    public NameTable<BoatRows> Boats { get; } = new(name => new(name));

    public NameTable<RackRows> Racks { get; } = new(name => new(name));

    public NameTable<Gauge> Gauges { get; } = new(settings.GaugeNamed);

    /// <summary>Whether what is read is still going to be used: not when there are errors.</summary>
    public bool KeepsReadings => !Problems.Errors.Any;

    /// <summary>Whether rows are still compared with one another: not when there are more errors than are kept.</summary>
    public bool ComparesRows => !Problems.Errors.IsFull;

    public void Note(ReadingNote note)
    {
        if (KeepsReadings)
        {
            _notes.Add(note);
        }
    }

    /// <summary>Settles what only all rows together can tell, and answers the boats or the errors.</summary>
    public ReadingsInput Close()
    {
        foreach (BoatRows boat in Boats.All)
        {
            LyingSettlement.Settle(boat, Problems);
        }

        if (KeepsReadings)
        {
            List<BoatRows> read = [.. Boats.All.Where(b => b.IsRead)];
            List<BoatReadings> boats = [.. read.Select(b => b.Close())];
            return new(boats, [], Problems.Warnings.InOrder(), 0)
            {
                Notes = _notes,
                Records = [.. read.Zip(boats, (rows, readings) => rows.Record(readings))],
                Told = [.. Boats.All.Select(b => b.Tell())],
                Racks = [.. Racks.All.SelectMany(r => r.Levels)],
                OnlyToldOf = [.. Boats.All.Where(b => b.IsOnlyToldOf).Select(b => b.Name)],
                Measures = [.. Boats.All.Where(b => b.Measures.Count > 0).Select(b => new BoatMeasures(b.Name, b.Class!, [.. b.Measures]))],
            };
        }

        return new([], Problems.Errors.InOrder(), Problems.Warnings.InOrder(), Problems.Errors.Beyond);
    }
}
