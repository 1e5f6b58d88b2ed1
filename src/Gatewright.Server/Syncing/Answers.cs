namespace Gatewright.Server.Syncing;

/// <summary>What became of the entries that were sent.</summary>
/// <param name="Now">The server's clock, in milliseconds since 1970: a device whose own is off puts itself right by it.</param>
/// <param name="Last">The number the journal has come to.</param>
/// <param name="Taken">Those the journal has, with their numbers: new ones, and those it had.</param>
/// <param name="Refused">Those it does not take, each with why; a device keeps them.</param>
public sealed record PushAnswer(long Now, long Last, IReadOnlyList<Taken> Taken, IReadOnlyList<Refused> Refused);

/// <summary>An entry the journal has.</summary>
/// <param name="Id">The entry.</param>
/// <param name="Number">Its number.</param>
public sealed record Taken(Guid Id, long Number);

/// <summary>An entry the journal does not take.</summary>
/// <param name="Line">Which line of what was sent, from 1.</param>
/// <param name="Id">The entry, where its id could be read.</param>
/// <param name="Code">Why, for programs: one of <see cref="RefusalCode"/>.</param>
/// <param name="Reasons">Why, for people: everything that is wrong.</param>
public sealed record Refused(int Line, Guid? Id, string Code, IReadOnlyList<string> Reasons);

/// <summary>Why an entry is not taken.</summary>
public static class RefusalCode
{
    /// <summary>It cannot be read, or says what cannot be.</summary>
    public const string Malformed = "malformed";

    /// <summary>It is of another club.</summary>
    public const string OtherClub = "other-club";

    /// <summary>It is in another member's name.</summary>
    public const string OtherMember = "other-member";

    /// <summary>The member's role does not record this.</summary>
    public const string NotAllowed = "not-allowed";

    /// <summary>Its time is ahead of the server's: the device's clock is to be put right, and the entry made anew with it.</summary>
    public const string ClockAhead = "clock-ahead";

    /// <summary>The journal has another entry under its id.</summary>
    public const string Conflict = "conflict";

    /// <summary>It retracts an entry that is not in the journal yet.</summary>
    public const string NotYet = "not-yet";
}
