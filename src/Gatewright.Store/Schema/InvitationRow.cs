namespace Gatewright.Store.Schema;

/// <summary>
/// A link that lets somebody into a club. One for an account works once; one for crew works until it expires or is
/// revoked.
/// </summary>
public sealed class InvitationRow
{
    /// <summary>The club; every key starts with it.</summary>
    public required string Club { get; set; }

    /// <summary>What it is spoken of by, so that it can be revoked by somebody who does not have the secret.</summary>
    public required string Invitation { get; set; }

    /// <summary>The SHA-256 of the link's secret, in lower-case hexadecimal: the secret itself is not kept.</summary>
    public required string SecretHash { get; set; }

    /// <summary>The role it gives.</summary>
    public required string Role { get; set; }

    /// <summary>What the keeper calls it, such as the crew it is for.</summary>
    public string Label { get; set; } = string.Empty;

    /// <summary>For crew, the boats the link shows: their keys as a JSON array.</summary>
    public string? Boats { get; set; }

    /// <summary>Who made it; null for the first keeper's, which the server makes.</summary>
    public string? MadeBy { get; set; }

    /// <summary>When it was made, in ticks of universal time.</summary>
    public long MadeTicks { get; set; }

    /// <summary>When it stops working, in ticks of universal time.</summary>
    public long ExpiresTicks { get; set; }

    /// <summary>When it was used or revoked, in ticks of universal time; null while it works.</summary>
    public long? EndedTicks { get; set; }
}
