using Gatewright.App.Frame;
using Gatewright.Replica.Copies;
using Gatewright.Replica.Shelves;

namespace Gatewright.App.Device;

/// <summary>What is done from one place of the screen and ends on this device's disk: one thing at a time, and where it cannot be done, why not.</summary>
/// <param name="faults">Words for what this device could not do.</param>
public sealed class Deed(Texts<DeviceTexts> faults)
{
    private int _underWay;

    /// <summary>Why the last was not done, in the reader's language; null where nothing was in the way.</summary>
    public string? Fault { get; private set; }

    /// <summary>Whether something is being done now.</summary>
    public bool IsBusy => _underWay > 0;

    /// <summary>What was in the way no longer matters.</summary>
    public void Forget() => Fault = null;

    /// <summary>Does something. What cannot be recorded, kept or read is told; anything else that goes wrong is thrown on.</summary>
    /// <param name="act">What.</param>
    /// <param name="eachCounts">Whether two taps, one soon after the other, mean two: of anything else the second is the same once more, and is not done.</param>
    /// <returns>Whether it was done.</returns>
    public async Task<bool> TryAsync(Func<Task> act, bool eachCounts = false)
    {
        ArgumentNullException.ThrowIfNull(act);
        if (IsBusy && !eachCounts)
        {
            return false;
        }

        Fault = null;
        _underWay++;
        try
        {
            await act();
            return true;
        }
        catch (Exception broken) when (broken is NotRecordedException or ShelfException or PhotoException)
        {
            Fault = ShelfFaults.Told(broken, faults);
            return false;
        }
        finally
        {
            _underWay--;
        }
    }
}
