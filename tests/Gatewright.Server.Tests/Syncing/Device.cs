using Gatewright.Journal.Entries;
using Gatewright.Journal.Facts;
using Gatewright.Journal.Replay;
using Gatewright.Server.Syncing;
using Gatewright.Server.Tests.Hosting;

namespace Gatewright.Server.Tests.Syncing;

/// <summary>A phone as the server's protocol means it: records, sends until it hears that it was taken, fetches on.</summary>
internal sealed class Device(Visitor visitor, string club, string member)
{
    private readonly List<Entry> _unsent = [];
    private HybridClock _clock;
    private long _fetched;

    public Club Replica { get; private set; } = Club.Empty(club);

    public void Record(Fact fact, DateTimeOffset now)
    {
        (HybridTime time, _clock) = _clock.Tick(now);
        (string kind, int version, byte[] body) = FactKinds.Write(fact);
        var entry = new Entry
        {
            Id = Guid.CreateVersion7(now), Club = club, Member = member, Device = member + "-phone", Time = time, Kind = kind, Version = version, Body = body,
        };
        _unsent.Add(entry);
        Take(entry);
    }

    /// <summary>Sends in the order that a shuffle gives, some of it twice; the answer may be lost on the way.</summary>
    public async Task SendAsync(Random chance, bool isAnswerLost)
    {
        Entry[] some = [.. _unsent.Where(_ => chance.Next(4) > 0)];
        Entry[] sent = [.. some, .. some.Where(_ => chance.Next(3) == 0)];
        chance.Shuffle(sent);
        await SendAsync(sent, isAnswerLost);
    }

    public async Task FetchAsync(int most, bool isCut)
    {
        string[] lines = await visitor.PullAsync(club, _fetched, most);
        foreach (Line line in lines.Take(isCut ? lines.Length / 2 : lines.Length).Select(Line.Read))
        {
            Assert.Equal(_fetched + 1, line.Number);
            _fetched = line.Number;
            Take(line.Entry);
        }
    }

    /// <summary>Sends all that is left.</summary>
    public Task FinishAsync() => SendAsync(_unsent, isAnswerLost: false);

    public async Task FetchAllAsync()
    {
        long before;
        do
        {
            before = _fetched;
            await FetchAsync(3, isCut: false);
        }
        while (_fetched > before);
    }

    private async Task SendAsync(IReadOnlyList<Entry> entries, bool isAnswerLost)
    {
        PushAnswer answer = await visitor.TakenAsync(club, entries);
        Assert.True(answer.Refused.Count == 0, string.Join(' ', answer.Refused.SelectMany(r => r.Reasons)));
        if (!isAnswerLost)
        {
            var taken = answer.Taken.Select(t => t.Id).ToHashSet();
            _unsent.RemoveAll(e => taken.Contains(e.Id));
        }
    }

    private void Take(Entry entry)
    {
        _clock = _clock.Seen(entry.Time);
        Replica = Replica.With(Recorded.Of(entry));
    }
}
