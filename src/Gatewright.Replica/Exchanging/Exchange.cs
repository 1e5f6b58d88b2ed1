using System.Globalization;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Shelves;

namespace Gatewright.Replica.Exchanging;

/// <summary>
/// Exchanges what a device has with the server, one round at a time. Nothing here is needed to record: whatever happens,
/// what is on the shelf stays there.
/// </summary>
/// <remarks>Two pages of one browser may exchange at once without harm; letting one do it spares the server.</remarks>
public sealed class Exchange
{
    private const string InTouchSetting = "in-touch";
    private static readonly TimeSpan InTouchEvery = TimeSpan.FromMinutes(1);

    private readonly Device _device;
    private readonly Server _server;
    private readonly Waits _waits;
    private readonly BatchSize _size = new();
    private readonly Dictionary<string, string> _photosRefused = [];
    private Task<ExchangeStatus>? _running;
    private bool _isAsked;

    /// <summary>An exchange that has not begun.</summary>
    /// <param name="http">How the server is spoken to; its base address is the server's, and it keeps cookies.</param>
    /// <param name="device">The device.</param>
    /// <param name="chance">What the differences of waits are drawn from.</param>
    /// <param name="gzip">Packs what is sent, where there is something to pack with; null sends it as it is.</param>
    public Exchange(HttpClient http, Device device, Random chance, Func<ReadOnlyMemory<byte>, ValueTask<byte[]?>>? gzip = null)
    {
        ArgumentNullException.ThrowIfNull(http);
        ArgumentNullException.ThrowIfNull(device);
        _device = device;
        _server = new(http, gzip);
        _waits = new(chance);
        Status = new(ExchangePhase.Sending, LastInTouch: InTouch(device));
        device.HasNews += _ => Say(
            Status.Phase is ExchangePhase.Shared or ExchangePhase.Refused ? ExchangePhase.Sending : Status.Phase, Status.NextTry, Status.Trouble);
    }

    /// <summary>How it stands.</summary>
    public ExchangeStatus Status { get; private set; }

    /// <summary>Who is signed in, as the server last said; null before it has, and after it said that nobody is.</summary>
    public SessionAnswer? Session { get; private set; }

    /// <summary>Pictures that the server does not take, by hash, with why. They stay on the device.</summary>
    public IReadOnlyDictionary<string, string> PhotosRefused => _photosRefused;

    /// <summary>Said when the status has changed.</summary>
    public event Action<ExchangeStatus>? Changed;

    /// <summary>Until when the server asked to be left alone.</summary>
    public DateTimeOffset NotBefore { get; private set; }

    /// <summary>Exchanges now. While one round goes on another is made after it, and this waits for both.</summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public Task<ExchangeStatus> RunAsync(CancellationToken cancellation = default)
    {
        _isAsked = true;
        return _running is { IsCompleted: false } ? _running : _running = RoundsAsync(cancellation);
    }

    /// <summary>Somebody has signed in or out: the next round asks who it is.</summary>
    public void SessionChanged() => Session = null;

    /// <summary>
    /// What the server said of a picture that it did not take no longer counts: it was thrown away, or is to be sent again, which
    /// the next round does.
    /// </summary>
    public void ForgetRefusal(string sha256)
    {
        if (_photosRefused.Remove(sha256))
        {
            Say(Status.Phase == ExchangePhase.Refused ? Settled() : Status.Phase, Status.NextTry, Status.Trouble, Status.Server, Status.Shelf);
        }
    }

    /// <summary>A picture: from the device, or from the server and then kept; null where neither can give it now.</summary>
    /// <exception cref="ShelfException">The shelf cannot be read.</exception>
    public async Task<KeptPhoto?> PhotoAsync(string club, string sha256, CancellationToken cancellation = default)
    {
        if (await _device.PhotoAsync(club, sha256).ConfigureAwait(true) is { } kept)
        {
            return kept;
        }

        try
        {
            KeptPhoto photo = await _server.PhotoAsync(club, sha256, cancellation).ConfigureAwait(true);
            await KeepAsync(() => _device.Shelf.PutPhotoAsync(club, photo)).ConfigureAwait(true);
            return photo;
        }
        catch (ServerException)
        {
            return null;
        }
    }

    private static DateTimeOffset? InTouch(Device device) =>
        device.Settings.TryGetValue(InTouchSetting, out string? text)
        && DateTimeOffset.TryParseExact(text, "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTimeOffset at) ? at : null;

    /// <summary>Keeps what can be done without, if there is room.</summary>
    private static async Task KeepAsync(Func<Task> keep)
    {
        try
        {
            await keep().ConfigureAwait(true);
        }
        catch (ShelfException full) when (full.Fault == ShelfFault.Full)
        {
            // What was recorded goes before it.
        }
    }

    private async Task<ExchangeStatus> RoundsAsync(CancellationToken cancellation)
    {
        // First it is known to be running.
        await Task.Yield();
        do
        {
            _isAsked = false;
            await RoundAsync(cancellation).ConfigureAwait(true);
        }
        while (_isAsked && Status is { NextTry: null, Phase: not ExchangePhase.SignedOut });
        return Status;
    }

    private async Task RoundAsync(CancellationToken cancellation)
    {
        // What is said of a server that does not answer holds until it does.
        if (Status.Phase is not (ExchangePhase.Waiting or ExchangePhase.SignedOut) && Settled() == ExchangePhase.Sending)
        {
            Say(ExchangePhase.Sending);
        }

        try
        {
            if (!await AllAsync(cancellation).ConfigureAwait(true))
            {
                Session = null;
                await TouchAsync().ConfigureAwait(true);
                Say(ExchangePhase.SignedOut);
                return;
            }

            _waits.Reset();
            await TouchAsync().ConfigureAwait(true);
            Say(Settled());
        }
        catch (ServerException cannot)
        {
            if (cannot.Trouble == ServerTrouble.Unreachable)
            {
                _size.Shrink();
            }

            NotBefore = cannot.Wait is { } asked ? _device.Clock.Now + asked : default;
            Say(ExchangePhase.Waiting, _device.Clock.Now + _waits.Next(cannot.Wait), cannot.Message, server: cannot.Trouble);
        }
        catch (ShelfException cannot)
        {
            Say(ExchangePhase.Waiting, _device.Clock.Now + _waits.Next(null), cannot.Message, shelf: cannot.Fault);
        }
    }

    /// <summary>All clubs; asks who is signed in where that is not known, or no longer so.</summary>
    /// <returns>Whether anybody is.</returns>
    private async Task<bool> AllAsync(CancellationToken cancellation)
    {
        if (Session is not null)
        {
            try
            {
                await ClubsAsync(isSure: false, cancellation).ConfigureAwait(true);
                return true;
            }
            catch (ServerException stale) when (stale.Trouble == ServerTrouble.Session)
            {
                Session = null;
            }
        }

        SessionAnswer session = await _server.SessionAsync(cancellation).ConfigureAwait(true);
        if (session.Account is null)
        {
            return false;
        }

        await _device.JoinAsync(session).ConfigureAwait(true);
        Session = session;
        await ClubsAsync(isSure: true, cancellation).ConfigureAwait(true);
        return true;
    }

    /// <summary>One club after another; what is wrong with one keeps none of the others back.</summary>
    private async Task ClubsAsync(bool isSure, CancellationToken cancellation)
    {
        ServerException? trouble = null;
        var round = new ClubRound(_server, _device, _size, isSure, _photosRefused);
        foreach (HeldClub held in _device.Clubs.Where(c => c.Home != ClubHome.Device))
        {
            ClubCopy copy = await _device.ClubAsync(held.Club).ConfigureAwait(true);
            if (held.Home == ClubHome.Left)
            {
                continue;
            }

            try
            {
                await round.RunAsync(copy, cancellation).ConfigureAwait(true);
                await KeepAsync(() => copy.RestAsync()).ConfigureAwait(true);
            }
            catch (ServerException one) when (one.Trouble is ServerTrouble.Refused or ServerTrouble.TooLarge || (isSure && one.Trouble == ServerTrouble.Session))
            {
                trouble = one;
            }
        }

        if (trouble is not null)
        {
            throw trouble;
        }
    }

    private async Task TouchAsync()
    {
        DateTimeOffset now = _device.Clock.Now;
        Status = Status with { LastInTouch = now };
        if (!(InTouch(_device) > now - InTouchEvery))
        {
            await KeepAsync(() => _device.SetAsync(InTouchSetting, now.ToString("O", CultureInfo.InvariantCulture))).ConfigureAwait(true);
        }
    }

    private ExchangePhase Settled()
    {
        ExchangeStatus counted = Counted();
        return counted.Unsent > counted.OfOthers ? ExchangePhase.Sending
            : counted.Refused + counted.OfOthers + counted.PhotosRefused > 0 ? ExchangePhase.Refused
            : ExchangePhase.Shared;
    }

    private ExchangeStatus Counted()
    {
        ClubCopy[] copies = [.. _device.Open];
        return Status with
        {
            Unsent = copies.Sum(c => c.NotShared.Count),
            OfOthers = copies.Sum(c => c.OfOthers.Count),
            Refused = copies.Sum(c => c.Refused.Count + c.Unreadable.Count),
            PhotosRefused = _photosRefused.Count,
        };
    }

    private void Say(
        ExchangePhase phase, DateTimeOffset? nextTry = null, string? trouble = null, ServerTrouble? server = null, ShelfFault? shelf = null)
    {
        Status = Counted() with { Phase = phase, NextTry = nextTry, Trouble = trouble, Server = server, Shelf = shelf };
        Changed?.Invoke(Status);
    }
}
