namespace Gatewright.Store.Schema;

/// <summary>One line of the record of who signed in, tried to, or changed who may.</summary>
public sealed class SignInRow
{
    /// <summary>Its identity, a UUID of version 7.</summary>
    public Guid Id { get; set; }

    /// <summary>When, in ticks of universal time.</summary>
    public long AtTicks { get; set; }

    /// <summary>The account, where it is known; a name that nobody has is not kept, since it may be a password.</summary>
    public string? AccountId { get; set; }

    /// <summary>The club, where the line is about one.</summary>
    public string? Club { get; set; }

    /// <summary>What happened, such as signed-in, refused, locked-out.</summary>
    public required string Outcome { get; set; }
}
