using System.Net.Http.Headers;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Gatewright.App.Device;

namespace Gatewright.App.Keeping.People;

/// <summary>Who belongs to a club, as its server knows it: names stay there, so that none lie about on devices.</summary>
public sealed class ClubPeople(HttpClient http, Sharing sharing)
{
    /// <summary>The members, those who left included.</summary>
    /// <exception cref="PeopleException">The server could not be asked, or would not answer.</exception>
    public Task<PersonSeen[]> MembersAsync(string club) => AskAsync(HttpMethod.Get, $"api/clubs/{club}/members", null, PeopleJson.Default.PersonSeenArray);

    /// <summary>The links that let people in.</summary>
    /// <exception cref="PeopleException">The server could not be asked, or would not answer.</exception>
    public Task<LinkListed[]> LinksAsync(string club) => AskAsync(HttpMethod.Get, $"api/clubs/{club}/invitations", null, PeopleJson.Default.LinkListedArray);

    /// <summary>Makes a link.</summary>
    /// <exception cref="PeopleException">None was made.</exception>
    public Task<LinkMade> MakeLinkAsync(string club, LinkAsked asked) => AskAsync(
        HttpMethod.Post, $"api/clubs/{club}/invitations", Json(asked, PeopleJson.Default.LinkAsked), PeopleJson.Default.LinkMade);

    /// <summary>Revokes a link.</summary>
    /// <exception cref="PeopleException">It was not revoked.</exception>
    public Task RevokeAsync(string club, string link) => AskAsync<object>(HttpMethod.Delete, $"api/clubs/{club}/invitations/{link}", null, null);

    /// <summary>Gives a member another role.</summary>
    /// <exception cref="PeopleException">The role is as it was.</exception>
    public Task ChangeRoleAsync(string club, string member, string role) => AskAsync<object>(
        HttpMethod.Put, $"api/clubs/{club}/members/{member}/role", Json(new RoleGiven(role), PeopleJson.Default.RoleGiven), null);

    /// <summary>Ends a membership.</summary>
    /// <exception cref="PeopleException">It goes on.</exception>
    public Task EndAsync(string club, string member) => AskAsync<object>(HttpMethod.Delete, $"api/clubs/{club}/members/{member}", null, null);

    /// <summary>Signs out.</summary>
    /// <exception cref="PeopleException">Whoever was signed in still is.</exception>
    public async Task SignOutAsync()
    {
        await AskAsync<object>(HttpMethod.Delete, "api/session", null, null);
        sharing.SessionChanged();
    }

    private static ByteArrayContent Json<T>(T sent, JsonTypeInfo<T> type) => new(JsonSerializer.SerializeToUtf8Bytes(sent, type))
    {
        Headers = { ContentType = new MediaTypeHeaderValue("application/json") },
    };

    private async Task<T> AskAsync<T>(HttpMethod method, string path, HttpContent? content, JsonTypeInfo<T>? read)
    {
        try
        {
            using var request = new HttpRequestMessage(method, new Uri(path, UriKind.Relative)) { Content = content };
            if (method != HttpMethod.Get)
            {
                request.Headers.Add("X-Gatewright-Token", sharing.Exchange?.Session?.Antiforgery);
            }

            using HttpResponseMessage response = await http.SendAsync(request);
            if (!response.IsSuccessStatusCode)
            {
                throw new PeopleException(await SaidAsync(response), isUnreachable: false);
            }

            return read is null ? default! : await JsonSerializer.DeserializeAsync(await response.Content.ReadAsStreamAsync(), read) ?? throw new JsonException("null");
        }
        catch (Exception cut) when (cut is HttpRequestException or JsonException or OperationCanceledException)
        {
            throw new PeopleException(null, isUnreachable: true, cut);
        }
    }

    private static async Task<string> SaidAsync(HttpResponseMessage response)
    {
        try
        {
            ProblemSaid? said = await JsonSerializer.DeserializeAsync(await response.Content.ReadAsStreamAsync(), PeopleJson.Default.ProblemSaid);
            return $"{said?.Title}: {said?.Detail}";
        }
        catch (JsonException)
        {
            return $"{(int)response.StatusCode}";
        }
    }
}

/// <summary>The server did not do what was asked about people.</summary>
/// <param name="said">What it said; null where it said nothing.</param>
/// <param name="isUnreachable">Whether it could not be reached.</param>
/// <param name="cause">What lies behind it.</param>
public sealed class PeopleException(string? said, bool isUnreachable, Exception? cause = null) : Exception(said, cause)
{
    /// <summary>What the server said; null where it said nothing.</summary>
    public string? Said { get; } = said;

    /// <summary>Whether it could not be reached.</summary>
    public bool IsUnreachable { get; } = isUnreachable;
}
