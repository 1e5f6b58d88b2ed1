namespace Gatewright.Store.Schema;

/// <summary>A link that lets somebody into a club: it works once, or, for crew, until it is revoked.</summary>
public sealed class InvitationRow
{
    /// <summary>The club; every key starts with it.</summary>
    public required string Club { get; set; }

    /// <summary>The SHA-256 of the link's secret: the secret itself is not kept.</summary>
    public required string SecretHash { get; set; }

    /// <summary>The role it gives.</summary>
    public required string Role { get; set; }

    /// <summary>For crew, the boats the link shows, as keys with spaces between.</summary>
    public string? Boats { get; set; }

    /// <summary>When it stops working, in ticks of universal time.</summary>
    public long ExpiresTicks { get; set; }

    /// <summary>When it was used or revoked, in ticks of universal time; null while it works.</summary>
    public long? EndedTicks { get; set; }
}
