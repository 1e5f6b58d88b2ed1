using Bunit;
using Gatewright.App.Boat;
using Gatewright.App.Device;
using Gatewright.App.Frame;
using Gatewright.App.Jobs;
using Gatewright.App.Keeping.People;
using Gatewright.App.Shed;
using Gatewright.Journal.Facts;
using Gatewright.Replica.Exchanging;
using Gatewright.Replica.Shelves;
using Gatewright.Words;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.JSInterop;

namespace Gatewright.App.Tests.World;

/// <summary>A browser's page over a club on a server with two members: the one at this device, in any role, and a keeper elsewhere.</summary>
internal sealed class ClubOfTwo : IAsyncDisposable
{
    private readonly string _role;

    private ClubOfTwo(BunitContext page, FullShelf shelf, ClubInHand inHand, Replica.Device device, string role) =>
        (Page, Shelf, InHand, Device, _role) = (page, shelf, inHand, device, role);

    public BunitContext Page { get; }

    /// <summary>Where it is kept: it can be made to have no more room.</summary>
    public FullShelf Shelf { get; }

    public ClubInHand InHand { get; }

    public Replica.Device Device { get; }

    /// <summary>The club as a member of a role has it here.</summary>
    /// <param name="role">The role.</param>
    /// <param name="server">What answers for the server; by itself nothing does.</param>
    /// <param name="script">What answers for the browser; by itself it answers nothing to everything.</param>
    public static async Task<ClubOfTwo> StartAsync(string role, Func<HttpRequestMessage, HttpResponseMessage>? server = null, IJSRuntime? script = null)
    {
        var shelf = new FullShelf();
        var page = new BunitContext();
        page.JSInterop.Mode = JSRuntimeMode.Loose;
        if (script is not null)
        {
            page.Services.AddSingleton(script);
        }

        page.Services.AddSingleton(typeof(Texts<>));
        page.Services.AddSingleton<FocusNext>();
        page.Services.AddSingleton(TimeProvider.System);
        page.Services.AddSingleton(Wording.English);
        page.Services.AddSingleton<IDeviceShelf>(shelf);
        page.Services.AddSingleton<BrowserRoom>();
        page.Services.AddSingleton<ClubInHand>();
        page.Services.AddSingleton<ThisDevice>();
        page.Services.AddSingleton<Sharing>();
        page.Services.AddSingleton<ClubPeople>();
        page.Services.AddSingleton<MemberNames>();
        page.Services.AddSingleton<RecordWords>();
        page.Services.AddSingleton<LastShed>();
        page.Services.AddSingleton<PlanAsked>();
        page.Services.AddSingleton<Photos>();
        page.Services.AddSingleton(new HttpClient(new Answering(server ?? (_ => throw new HttpRequestException("There is no server."))))
        {
            BaseAddress = new("http://127.0.0.1:9/"),
        });
        ThisDevice here = page.Services.GetRequiredService<ThisDevice>();
        await here.OpenAsync();
        await here.Device.JoinAsync(Session("m-ada", role));
        await here.OpenClubAsync("c");
        return new(page, shelf, page.Services.GetRequiredService<ClubInHand>(), here.Device, role);
    }

    /// <summary>Records what the keeper elsewhere has recorded.</summary>
    /// <returns>The ids of the entries.</returns>
    public Task<IReadOnlyList<Guid>> RecordElsewhereAsync(params Fact[] facts) => RecordElsewhereAsAsync("m-bea", facts);

    /// <summary>Records what somebody else elsewhere has recorded: a crew over its link, say.</summary>
    /// <returns>The ids of the entries.</returns>
    public async Task<IReadOnlyList<Guid>> RecordElsewhereAsAsync(string member, params Fact[] facts)
    {
        await Device.JoinAsync(Session(member, "keeper"));
        IReadOnlyList<Guid> ids = await InHand.RecordAsync(facts);
        await Device.JoinAsync(Session("m-ada", _role));
        return ids;
    }

    /// <summary>The member here no longer belongs to the club.</summary>
    public Task LeaveAsync() => Device.JoinAsync(new("ada", "Ada", [], "token"));

    public async ValueTask DisposeAsync()
    {
        InHand.Close();
        await Page.DisposeAsync();
    }

    private sealed class Answering(Func<HttpRequestMessage, HttpResponseMessage> answer) : HttpMessageHandler
    {
        protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken) =>
            Task.FromResult(answer(request));
    }

    private static SessionAnswer Session(string member, string role) =>
        new("ada", "Ada", [new SessionClub("c", "Heron Rowing", member, role)], "token");
}
