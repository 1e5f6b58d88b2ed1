using Gatewright.Journal.Facts;

namespace Gatewright.Journal.Replay;

/// <summary>What a fact is about: the shelf its record is filed on.</summary>
/// <param name="Thing">A kind of thing of <see cref="Things"/>, or one of the fixed shelves.</param>
/// <param name="Key">Which one; empty for a fixed shelf.</param>
public readonly record struct Subject(string Thing, string Key)
{
    /// <summary>The stores.</summary>
    public static Subject Stores => new("stores", string.Empty);

    /// <summary>Rounds.</summary>
    public static Subject Rounds => new("rounds", string.Empty);

    /// <summary>Entries that this program cannot read, or that speak of other entries.</summary>
    public static Subject Journal => new("journal", string.Empty);

    /// <summary>A boat.</summary>
    public static Subject Boat(string key) => new(Things.Boat, key);

    /// <summary>What a fact is about. A seat's and a gate's facts are filed with their boat's.</summary>
    public static Subject Of(Fact fact) => fact switch
    {
        ThingSet { Thing: Things.Seat or Things.Gate } set => Boat(BoatOf(set.Key)),
        ThingSet set => new(set.Thing, set.Key),
        BoatLaid laid => Boat(laid.Boat),
        ReadingTaken reading => Boat(reading.Boat),
        ReadingKept kept => Boat(kept.Boat),
        Reported report => Boat(report.Boat),
        Held held => Boat(held.Boat),
        Released released => Boat(released.Boat),
        JobPlanned job => Boat(job.Boat),
        GateMended mended => Boat(mended.Boat),
        MeasureTaken measure => Boat(measure.Boat),
        MeasureSet set => Boat(set.Boat),
        ChangePlanned change => Boat(change.Boat),
        StepDone step => new("job", step.Job),
        JobDone done => new("job", done.Job),
        JobDropped dropped => new("job", dropped.Job),
        RackLevelRead level => new(Things.Rack, level.Rack),
        GaugeReversed reversed => new(Things.Gauge, reversed.Gauge),
        OarRead read => new(Things.Oar, read.Oar),
        StockChanged or StockCounted => Stores,
        RoundStarted or RoundEnded => Rounds,
        Noted note => new(note.Thing, note.Key),
        PhotoTaken photo => new(photo.Thing, photo.Key),
        _ => Journal,
    };

    private static string BoatOf(string key)
    {
        int slash = key.IndexOf('/', StringComparison.Ordinal);
        return slash < 0 ? key : key[..slash];
    }
}
