namespace Gatewright.Replica.Exchanging;

/// <summary>What became of the entries that were sent.</summary>
internal sealed record PushAnswer(long Now, long Last, IReadOnlyList<TakenEntry> Taken, IReadOnlyList<RefusedEntry> Refused);

/// <summary>An entry the journal has.</summary>
internal sealed record TakenEntry(Guid Id, long Number);

/// <summary>An entry the journal does not take: which line of what was sent, and why.</summary>
internal sealed record RefusedEntry(int Line, Guid? Id, string Code, IReadOnlyList<string> Reasons);

/// <summary>Why a server does not take an entry, where there is something to be done about it.</summary>
internal static class RefusalCode
{
    /// <summary>In another member's name.</summary>
    public const string OtherMember = "other-member";

    /// <summary>Ahead of the server's clock.</summary>
    public const string ClockAhead = "clock-ahead";

    /// <summary>Another entry has its id.</summary>
    public const string Conflict = "conflict";

    /// <summary>It retracts what the journal does not have yet.</summary>
    public const string NotYet = "not-yet";

    /// <summary>Alone it is larger than what a request may be; said on the device.</summary>
    public const string TooLarge = "too-large";
}
