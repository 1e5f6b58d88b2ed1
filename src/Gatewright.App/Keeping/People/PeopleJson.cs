using System.Text.Json.Serialization;

namespace Gatewright.App.Keeping.People;

/// <summary>How the server's answers about people are read; made when the program is built, so that nothing of it is trimmed away.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata, PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(PersonSeen[]))]
[JsonSerializable(typeof(Dictionary<string, string>))]
[JsonSerializable(typeof(LinkListed[]))]
[JsonSerializable(typeof(LinkMade))]
[JsonSerializable(typeof(LinkAsked))]
[JsonSerializable(typeof(RoleGiven))]
[JsonSerializable(typeof(ProblemSaid))]
internal sealed partial class PeopleJson : JsonSerializerContext;

/// <summary>A member of the club.</summary>
/// <param name="Member">Their id in the journal.</param>
/// <param name="Name">Their name.</param>
/// <param name="Role">Their role's word, or "former".</param>
public sealed record PersonSeen(string Member, string Name, string Role)
{
    /// <summary>The word in a role's place for one who has left.</summary>
    public const string Former = "former";
}

/// <summary>A link that lets somebody in.</summary>
/// <param name="Invitation">Its id.</param>
/// <param name="Role">The role it gives.</param>
/// <param name="Label">For whom it is.</param>
/// <param name="Expires">When it stops working.</param>
/// <param name="Ended">When it was used or revoked.</param>
public sealed record LinkListed(string Invitation, string Role, string Label, DateTimeOffset Expires, DateTimeOffset? Ended);

/// <summary>A link that was just made: the only time it is seen.</summary>
/// <param name="Invitation">Its id.</param>
/// <param name="Link">The link.</param>
/// <param name="QrCode">The link as a picture: SVG.</param>
/// <param name="Expires">When it stops working.</param>
public sealed record LinkMade(string Invitation, string Link, string QrCode, DateTimeOffset Expires);

/// <summary>A link that is asked for.</summary>
/// <param name="Role">The role it gives.</param>
/// <param name="Label">For whom it is.</param>
/// <param name="Boats">For crew, the boats it shows.</param>
/// <param name="Days">For how many days.</param>
public sealed record LinkAsked(string Role, string Label, IReadOnlyList<string>? Boats, int? Days);

/// <summary>A role that is given.</summary>
/// <param name="Role">Its word.</param>
public sealed record RoleGiven(string Role);

/// <summary>What the server says when it does not do what was asked.</summary>
/// <param name="Title">In a few words.</param>
/// <param name="Detail">What to do.</param>
public sealed record ProblemSaid(string? Title = null, string? Detail = null);
