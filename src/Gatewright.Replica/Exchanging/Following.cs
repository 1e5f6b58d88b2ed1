namespace Gatewright.Replica.Exchanging;

/// <summary>Keeps exchanging for as long as a page is open: when something was recorded, on news, after a wait, now and then.</summary>
public sealed class Following
{
    private static readonly TimeSpan Usually = TimeSpan.FromMinutes(5);

    /// <summary>So long what was just recorded is being shown: a page has one thread, and whoever tapped waits for nothing else.</summary>
    private static readonly TimeSpan Shown = TimeSpan.FromMilliseconds(150);

    private readonly Exchange _exchange;
    private readonly Device _device;
    private TaskCompletionSource _woken = New();

    /// <summary>Follows with an exchange.</summary>
    public Following(Exchange exchange, Device device)
    {
        ArgumentNullException.ThrowIfNull(exchange);
        ArgumentNullException.ThrowIfNull(device);
        (_exchange, _device) = (exchange, device);
        device.HasNews += _ => WakeUnlessWaiting();
    }

    /// <summary>
    /// Tries at once: the network is back, somebody has signed in, somebody asked. A server that asked to be left alone is
    /// left alone for as long as it said.
    /// </summary>
    public void Wake() => _woken.TrySetResult();

    /// <summary>Takes news: the journal of a club has come to a number.</summary>
    public async Task NewsAsync(string club, long number)
    {
        // Where the server sends news it can be reached.
        if (_device.Clubs.Any(c => c.Club == club) && (await _device.ClubAsync(club).ConfigureAwait(true)).Number < number)
        {
            Wake();
        }
    }

    /// <summary>Exchanges until it is stopped.</summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public async Task RunAsync(CancellationToken cancellation)
    {
        while (true)
        {
            _woken = New();
            ExchangeStatus status = await _exchange.RunAsync(cancellation).ConfigureAwait(true);
            await PauseAsync(_exchange.NotBefore, null, cancellation).ConfigureAwait(true);
            await PauseAsync(status.NextTry ?? _device.Clock.Now + Usually, _woken.Task, cancellation).ConfigureAwait(true);
            await Task.Delay(Shown, _device.Clock.Wall, cancellation).ConfigureAwait(true);
        }
    }

    private static TaskCompletionSource New() => new(TaskCreationOptions.RunContinuationsAsynchronously);

    /// <summary>A network that is away is not tried anew at each tap, and a server that wants a sign-in not either.</summary>
    private void WakeUnlessWaiting()
    {
        if (_exchange.Status is { NextTry: null, Phase: not ExchangePhase.SignedOut })
        {
            Wake();
        }
    }

    private async Task PauseAsync(DateTimeOffset until, Task? sooner, CancellationToken cancellation)
    {
        TimeSpan wait = until - _device.Clock.Now;
        if (wait <= TimeSpan.Zero)
        {
            return;
        }

        using var enough = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        var pause = Task.Delay(wait, _device.Clock.Wall, enough.Token);
        await Task.WhenAny(pause, sooner ?? pause).ConfigureAwait(true);
        await enough.CancelAsync().ConfigureAwait(true);
        cancellation.ThrowIfCancellationRequested();
    }
}
