using Gatewright.App.Device;
using Gatewright.Journal.Standing;

namespace Gatewright.App.Round;

/// <summary>
/// The whole check of a boat that is being read, with what is expected where nobody read: made once it has been read or nobody
/// taps any more, since in the browser it holds up what is tapped meanwhile.
/// </summary>
/// <param name="inHand">The club.</param>
/// <param name="changed">It is made: the page is drawn anew.</param>
/// <param name="failed">It cannot be made: whoever waits for it is told.</param>
public sealed class RestingCheck(ClubInHand inHand, Action changed, Action<Exception> failed)
{
    private int _asked;

    /// <summary>How the boat stands; null until that is worked out after the last reading.</summary>
    public BoatStanding? Standing { get; private set; }

    /// <summary>Something was read since: what was worked out no longer holds.</summary>
    public void Forget() => Standing = null;

    /// <summary>Nobody waits for it any more.</summary>
    public void Stop() => _asked++;

    /// <summary>Works it out after a wait, unless it is asked for anew meanwhile.</summary>
    public void Later(string boat, TimeSpan wait) => _ = TryAsync(boat, ++_asked, wait);

    private async Task TryAsync(string boat, int mine, TimeSpan wait)
    {
        try
        {
            await CheckAsync(boat, mine, wait);
        }
        catch (Exception broken) when (mine == _asked && inHand.IsOpen)
        {
            failed(broken);
        }
    }

    private async Task CheckAsync(string boat, int mine, TimeSpan wait)
    {
        await Task.Delay(wait);
        await inHand.Breath.TakeAsync();
        if (mine != _asked || !inHand.IsOpen)
        {
            return;
        }

        BoatStanding? standing = await inHand.BoatAsync(boat);

        // What was tapped while it was worked out is heard before the page is drawn.
        await Task.Delay(1);
        if (mine == _asked)
        {
            Standing = standing;
            changed();
        }
    }
}
