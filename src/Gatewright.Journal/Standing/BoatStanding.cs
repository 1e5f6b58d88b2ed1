using Gatewright.Core.Checking;
using Gatewright.Core.Judging;
using Gatewright.Journal.Exchange.Check;
using Gatewright.Journal.Replay;
using Gatewright.Journal.Views;

namespace Gatewright.Journal.Standing;

/// <summary>How a boat stands: what is on record of it and how it was judged.</summary>
/// <param name="View">The boat.</param>
/// <param name="Check">The check; null while nothing is read since its gates were last changed, or its class is not known.</param>
/// <param name="Changed">The gates that were changed and not read since; null for none.</param>
public sealed record BoatStanding(BoatView View, BoatCheck? Check, ChangedUnread? Changed = null)
{
    private readonly Lazy<Task<CheckedBoat?>> _checked = new(() => Task.Run(() => Check is null ? null : CheckMapping.Boat(Check, Changed)));

    /// <summary>The check with causes, what to read next and remedies, worked out when first asked for: that takes longest.</summary>
    public Task<CheckedBoat?> CheckedAsync() => _checked.Value;

    /// <summary>The holds on it.</summary>
    public IReadOnlyList<Recorded> Holds { get; } = View.Holds;

    /// <summary>Whether it is no longer used.</summary>
    public bool IsOutOfUse => View.IsOutOfUse;

    /// <summary>Whether it is to stay ashore: held by somebody, or by its readings.</summary>
    public bool StaysAshore => Holds.Count > 0 || IsKeptByReadings;

    /// <summary>Whether its readings keep it ashore, or did at a gate that was changed and not read since.</summary>
    public bool IsKeptByReadings => Check?.Verdict.StaysAshore == true || Changed?.KeepAshore == true;

    /// <summary>Whether a reading alone may let it go: what keeps it ashore is in doubt, or was changed since it was read.</summary>
    public bool WaitsForReading => IsKeptByReadings && (Check?.Verdict is not { StaysAshore: true } verdict || verdict.Verdict == Verdict.Unsure);

    /// <summary>
    /// The verdict as it is shown of the boat as a whole: none where nothing was read, and none that is good while a gate was changed
    /// and not read since.
    /// </summary>
    public Verdict? Shown => Check?.Verdict.Verdict is { } verdict && (verdict != Verdict.Good || Changed is not { Gates.Count: > 0 }) ? verdict : null;

    /// <summary>The day it was last read.</summary>
    public DateOnly? LastRead => Check?.Readings.Readings.Max(r => r.Lie.Date);

    /// <summary>Whether no verdict is shown of it though some gates were read: the others are to be read again.</summary>
    public bool IsToBeReadAgain => Check is not null && Shown is null;

    /// <summary>What is shown of it as a word: one of the four, "read-again" or "not-read".</summary>
    public string Word => Shown?.Word() ?? (IsToBeReadAgain ? "read-again" : "not-read");

    /// <summary>What comes first in a list: what is held or to stay ashore, then the worst verdict.</summary>
    public int Urgency => (StaysAshore ? 10 : 0) + (Shown is { } shown ? (int)shown * 2 : 1);
}
