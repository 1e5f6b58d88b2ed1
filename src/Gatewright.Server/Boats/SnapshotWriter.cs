using System.Collections.Concurrent;
using System.Threading.Channels;
using Gatewright.Journal.Replay.Snapshots;
using Gatewright.Store.Snapshots;

namespace Gatewright.Server.Boats;

/// <summary>Writes snapshots of clubs that have grown, one at a time, while nobody waits for them.</summary>
internal sealed partial class SnapshotWriter(SnapshotStore store, ILogger<SnapshotWriter> log) : BackgroundService
{
    // A tail of so many entries is read in some tens of milliseconds. Of a long journal it may be longer, or a busy club
    // would have its whole age written out all the time.
    private const long Tail = 2000;
    private const long Share = 20;

    private readonly ConcurrentDictionary<string, long> _there = [];
    private readonly Channel<OpenClub> _asked = Channel.CreateBounded<OpenClub>(
        new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropOldest, SingleReader = true });

    /// <summary>How many entries a club may be ahead of its snapshot.</summary>
    public static long Allowed(long number) => Math.Max(Tail, number / Share);

    /// <summary>Says how far the snapshot of a club goes that was found in the store; 0 for none.</summary>
    public void Found(string club, long number) => _there[club] = number;

    /// <summary>Has a snapshot of a club written, if it has come far enough since the last. What is dropped comes again.</summary>
    public void Offer(OpenClub open)
    {
        if (IsDue(open))
        {
            _asked.Writer.TryWrite(open);
        }
    }

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await foreach (OpenClub open in _asked.Reader.ReadAllAsync(stoppingToken).ConfigureAwait(false))
        {
            // What was asked for while the one before was written may be in that.
            if (IsDue(open))
            {
                await WriteAsync(open, stoppingToken).ConfigureAwait(false);
            }
        }
    }

    private bool IsDue(OpenClub open) =>
        open.Number - _there.GetValueOrDefault(open.Club.Name) > Allowed(open.Number);

    private async Task WriteAsync(OpenClub open, CancellationToken stopping)
    {
        try
        {
            await store.PutAsync(open.Club.Name, open.Number, to => ClubSnapshot.Write(open.Club, open.Number, to), stopping).ConfigureAwait(false);

            // Whether it was kept or another server's goes further: there is one.
            _there[open.Club.Name] = open.Number;
        }
        catch (Exception cannot) when (cannot is not OperationCanceledException)
        {
            // Nobody needs it, the journal has all there is: whatever went wrong, the server goes on.
            SayNotWritten(open.Club.Name, cannot.Message);
        }
    }

    [LoggerMessage(LogLevel.Warning, "No snapshot of {Club} was written: {Why}")]
    private partial void SayNotWritten(string club, string why);
}
