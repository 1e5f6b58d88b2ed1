using Gatewright.Journal.Entries;

namespace Gatewright.Journal.Exchange.Recording;

/// <summary>Who records a file, and when.</summary>
/// <param name="Member">The member.</param>
/// <param name="Device">The device.</param>
/// <param name="Clock">Its clock.</param>
/// <param name="Now">What its wall clock says.</param>
/// <param name="NewId">Makes a UUID of version 7.</param>
public sealed record RecordingStamp(string Member, string Device, HybridClock Clock, DateTimeOffset Now, Func<Guid> NewId);

/// <summary>A file as entries.</summary>
/// <param name="Entries">What the club does not have yet, in order.</param>
/// <param name="After">The device's clock after them.</param>
public sealed record RecordedFile(IReadOnlyList<Entry> Entries, HybridClock After);
