using System.Net.Http.Json;
using Gatewright.Journal.Entries;
using Gatewright.Server.Accounts;
using Gatewright.Server.Members;
using Gatewright.Server.Tests.Hosting;

namespace Gatewright.Server.Tests.Wall;

/// <summary>Who hears what, route by route. A route that is not here fails a test: its row comes before its code.</summary>
/// <remarks>
/// Statuses in the order of <see cref="Callers"/>. "2xx" stands for let in; 404 is what somebody hears who is in no way
/// part of a club, 403 a member whose role does not do this.
/// </remarks>
internal static class RouteTable
{
    public static IReadOnlyList<string> Callers { get; } = ["stranger", "keeper of another club", "crew", "coach", "helper", "keeper"];

    public static IReadOnlyList<RouteRow> Rows { get; } =
    [
        Row("GET /health/live", Open),
        Row("GET /health/ready", Open),
        Row("GET /app/{*place:nonfile}", Open) with { Path = "/app/jobs" },
        Row("GET /openapi/v1.json", Open),
        Row("GET /api/session", Open),
        Row("POST /api/session", "401 401 401 401 401 401") with { Body = _ => JsonContent.Create(new SignInRequest("nobody", "wrong")) },
        Row("DELETE /api/session", Open) with { IsLast = true },
        Row("POST /api/session/passkey/options", Open),
        Row("POST /api/session/passkey", "401 401 401 401 401 401") with { Body = _ => JsonContent.Create(new PasskeyRequest(null, null)) },
        Row("POST /api/invitation", "404 404 404 404 404 404") with { Body = _ => JsonContent.Create(new SecretRequest("guessed")) },
        Row("POST /api/join", "400 400 400 400 400 400") with { Body = _ => JsonContent.Create(new JoinRequest("guessed", null, null, null, null)) },
        Row("POST /api/crew", "404 404 404 404 404 404") with { Body = _ => JsonContent.Create(new SecretRequest("guessed")) },
        Row("PUT /api/account/name", Accounts) with { Body = _ => JsonContent.Create(new RenameRequest("Another")) },
        Row("PUT /api/account/password", "401 400 403 400 400 400") with { Body = _ => JsonContent.Create(new PasswordRequest("wrong", "short")) },
        Row("GET /api/account/data", Accounts),
        Row("POST /api/account/end", "401 400 403 400 400 400") with { Body = _ => JsonContent.Create(new ConfirmRequest("wrong")) },
        Row("GET /api/account/passkeys", Accounts),
        Row("POST /api/account/passkeys/options", Accounts),
        Row("POST /api/account/passkeys", "401 400 403 400 400 400") with { Body = _ => JsonContent.Create(new PasskeyRequest(null, null)) },
        Row("DELETE /api/account/passkeys/{id}", "401 404 403 404 404 404") with { Path = "/api/account/passkeys/AAAA" },
        Club("POST /entries", "401 404 403 2xx 2xx 2xx") with { Body = m => Lines(Written.Hold(m, WallTests.Club)) },
        Club("GET /entries", Members),
        Club("GET /news", Members),
        Club("PUT /photos/{sha256}", "401 404 403 2xx 2xx 2xx") with { Path = $"/photos/{Picture.Sha256}", Body = _ => Picture.Content },
        Club("GET /photos/{sha256}", Members) with { Path = $"/photos/{Picture.Sha256}" },
        Club("GET /boats", "401 404 2xx 2xx 2xx 2xx"),
        Club("GET /boats/{boat}/rig", "401 404 2xx 2xx 2xx 2xx") with { Path = "/boats/boat-1/rig" },
        Club("GET /boats/{boat}/gearing", "401 404 2xx 2xx 2xx 2xx") with { Path = "/boats/boat-1/gearing" },
        Club("GET /boats/{boat}/balance", "401 404 2xx 2xx 2xx 2xx") with { Path = "/boats/boat-1/balance" },
        Club("GET /check", "401 404 2xx 2xx 2xx 2xx"),
        Club("GET /oars", Members),
        Club("GET /plan", Members),
        Club("GET /print/sheets", "401 404 2xx 2xx 2xx 2xx"),
        Club("GET /print/cards", "401 404 2xx 2xx 2xx 2xx"),
        Club("GET /print/shed", "401 404 2xx 2xx 2xx 2xx"),
        Club("GET /print/jobs", Members),
        Club("GET /print/round", Members),
        Club("GET /print/labels", Members),
        Club("GET /boats/{boat}/change", Members) with { Path = "/boats/boat-1/change?toBoat=boat-1" },
        Club("GET /boats/{boat}/compare", Members) with { Path = "/boats/boat-1/compare?with=boat-1" },
        Club("GET /boats/{boat}/travel", Members) with { Path = "/boats/boat-1/travel" },
        Club("GET /members", Members),
        Club("PUT /members/{member}/role", Keepers) with { Path = "/members/m-spare/role", Body = _ => JsonContent.Create(new RoleRequest("coach")) },
        Club("DELETE /members/{member}", Keepers) with { Path = "/members/m-leaving" },
        Club("GET /invitations", Keepers),
        Club("POST /invitations", Keepers) with { Body = _ => JsonContent.Create(new InviteRequest("coach", "a coach", null, null)) },
        Club("DELETE /invitations/{invitation}", Keepers) with { Path = "/invitations/{spare}" },
        Club("GET /sign-ins", Keepers),
        Page("/", "2xx 302 302 302 302 302"),
        Page("/missing", Open),
        Page("/sign-in", Open),
        Page("/signed-in", "302 302 302 302 302 302"),
        Page("/join/{Secret}", Open) with { Path = "/join/guessed" },
        Page("/crew/{Secret}", Open) with { Path = "/crew/guessed" },
        Page("/account", "302 2xx 403 2xx 2xx 2xx"),
        Page("/club/{Club}", "302 404 2xx 2xx 2xx 2xx") with { Path = $"/club/{WallTests.Club}" },
        Page("/club/{Club}/boat", "302 404 2xx 2xx 2xx 2xx") with { Path = $"/club/{WallTests.Club}/boat?key=boat-1" },
        Page("/club/{Club}/report", "302 404 2xx 2xx 2xx 2xx") with { Path = $"/club/{WallTests.Club}/report?key=boat-1" },
        Page("/club/{Club}/people", "302 404 403 403 403 2xx") with { Path = $"/club/{WallTests.Club}/people" },
    ];

    private const string Open = "2xx 2xx 2xx 2xx 2xx 2xx";
    private const string Accounts = "401 2xx 403 2xx 2xx 2xx";
    private const string Members = "401 404 403 2xx 2xx 2xx";
    private const string Keepers = "401 404 403 403 403 2xx";

    private static RouteRow Row(string route, string answers) => new(route, answers);

    private static RouteRow Page(string path, string answers) => new($"PAGE {path}", answers);

    private static RouteRow Club(string route, string answers)
    {
        string[] parts = route.Split(' ');
        return new($"{parts[0]} /api/clubs/{{club}}{parts[1]}", answers) { IsOfClub = true };
    }

    private static ByteArrayContent Lines(params Entry[] entries)
    {
        var content = new ByteArrayContent([.. entries.SelectMany(EntryJson.ToLine)]);
        content.Headers.ContentType = new("application/x-ndjson");
        return content;
    }
}
