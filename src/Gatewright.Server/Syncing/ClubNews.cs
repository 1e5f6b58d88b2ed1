using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using System.Threading.Channels;
using Gatewright.Store;

namespace Gatewright.Server.Syncing;

/// <summary>
/// Tells devices that a club's journal has grown: at once when it grew through this server, within some seconds when
/// through another over the same store.
/// </summary>
internal sealed class ClubNews(JournalStore store, TimeProvider clock)
{
    private static readonly TimeSpan Every = TimeSpan.FromSeconds(3);

    private readonly ConcurrentDictionary<Channel<long>, string> _listeners = [];

    /// <summary>Says that a club's journal has come to a number.</summary>
    public void Tell(string club, long last)
    {
        foreach ((Channel<long> listener, string of) in _listeners)
        {
            if (of == club)
            {
                listener.Writer.TryWrite(last);
            }
        }
    }

    /// <summary>The numbers a club's journal comes to, from the one it has now; each greater than the one before.</summary>
    public async IAsyncEnumerable<long> FollowAsync(string club, [EnumeratorCancellation] CancellationToken cancellation)
    {
        // Only the latest number matters to one who was slow.
        var mine = Channel.CreateBounded<long>(new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropOldest });
        _listeners.TryAdd(mine, club);
        try
        {
            long told = await store.LastAsync(club, cancellation).ConfigureAwait(false);
            yield return told;
            using var timer = new PeriodicTimer(Every, clock);
            Task<bool> news = mine.Reader.WaitToReadAsync(cancellation).AsTask();
            Task<bool> tick = timer.WaitForNextTickAsync(cancellation).AsTask();
            while (true)
            {
                long last;
                if (await Task.WhenAny(news, tick).ConfigureAwait(false) == news)
                {
                    await news.ConfigureAwait(false);
                    mine.Reader.TryRead(out last);
                    news = mine.Reader.WaitToReadAsync(cancellation).AsTask();
                }
                else
                {
                    await tick.ConfigureAwait(false);
                    last = await store.LastAsync(club, cancellation).ConfigureAwait(false);
                    tick = timer.WaitForNextTickAsync(cancellation).AsTask();
                }

                if (last > told)
                {
                    told = last;
                    yield return told;
                }
            }
        }
        finally
        {
            _listeners.TryRemove(mine, out _);
        }
    }
}
