using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;

namespace Gatewright.Journal.Exchange.Recording;

/// <summary>Writes facts as entries, each with the next time of the device's clock.</summary>
internal sealed class RecordingPen(Club club, RecordingStamp stamp)
{
    private readonly List<Entry> _entries = [];
    private readonly Dictionary<Guid, int> _repeats = [];
    private HybridClock _clock = stamp.Clock.Seen(club.Last);

    /// <summary>What the file says now and may say again another time, as a name set: it has an id of its own each time.</summary>
    public void New(Fact fact) => Add(stamp.NewId(), FactKinds.Write(fact));

    /// <summary>What stands in the file once and for all.</summary>
    public void Once(DateOnly? day, Fact fact)
    {
        (string Kind, int Version, byte[] Body) written = FactKinds.Write(fact);
        Guid first = ContentId.Of(club.Name, day, written.Kind, written.Body, 0);
        int repeat = _repeats.GetValueOrDefault(first);
        _repeats[first] = repeat + 1;
        Guid id = repeat == 0 ? first : ContentId.Of(club.Name, day, written.Kind, written.Body, repeat);
        if (club.Find(id) is null)
        {
            Add(id, written);
        }
    }

    public RecordedFile Close() => new(_entries, _clock);

    private void Add(Guid id, (string Kind, int Version, byte[] Body) written)
    {
        (HybridTime time, _clock) = _clock.Tick(stamp.Now);
        _entries.Add(new()
        {
            Id = id,
            Club = club.Name,
            Member = stamp.Member,
            Device = stamp.Device,
            Time = time,
            Kind = written.Kind,
            Version = written.Version,
            Body = written.Body,
        });
    }
}
