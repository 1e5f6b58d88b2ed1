using Gatewright.App.Frame;
using Microsoft.AspNetCore.Components;

namespace Gatewright.App.Keeping;

/// <summary>A page on which something of the club is kept: it records, says that it has, and when it could not, leaves all that was typed as it is.</summary>
public abstract class KeepingPage : DeedPage
{
    /// <summary>Words that these pages have in common.</summary>
    [Inject]
    public required Texts<KeepingTexts> K { get; set; }

    /// <summary>What was just done; null before.</summary>
    protected string? Done { get; private set; }

    /// <summary>Does something that ends on this device's disk.</summary>
    /// <param name="act">What.</param>
    /// <param name="done">What is said of it then; by itself that it is kept.</param>
    /// <param name="eachCounts">Whether two taps, one soon after the other, mean two: of anything else the second is the same once more.</param>
    /// <returns>Whether it was done.</returns>
    protected async Task<bool> TryAsync(Func<Task> act, string? done = null, bool eachCounts = false)
    {
        Done = null;
        if (!await Deed.TryAsync(act, eachCounts))
        {
            return false;
        }

        Done = done ?? K["Kept"];
        return true;
    }

    /// <summary>How often something was handed in: each time what became of it is brought into sight.</summary>
    protected int Tries { get; private set; }

    /// <summary>Something is handed in: what was said before no longer matters.</summary>
    protected void HandIn()
    {
        if (!Deed.IsBusy)
        {
            Deed.Forget();
            (Done, Tries) = (null, Tries + 1);
        }
    }
}
