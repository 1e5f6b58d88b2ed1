using Gatewright.Journal.Members;
using Gatewright.Server.Hosting;
using Gatewright.Server.Members;
using Gatewright.Store;
using Gatewright.Store.Schema;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;

namespace Gatewright.Server.Tests.Hosting;

/// <summary>A server over a store, listening on a free port of the loopback, with the doors that people use.</summary>
internal sealed class RunningServer : IAsyncDisposable
{
    /// <summary>The password of every account made here.</summary>
    public const string Password = "four dry oars stand";

    // Enough for any test: those on the limit itself set their own.
    private const int Unlimited = 100_000;

    // Made once: making it takes long, as it should.
    private static readonly string Hash = new PasswordHasher<Account>().HashPassword(
        new() { UserName = "anybody" }, Password);

    private readonly WebApplication _app;

    private RunningServer(WebApplication app, Uri address) => (_app, Address) = (app, address);

    public Uri Address { get; }

    public IServiceProvider Services => _app.Services;

    public static async Task<RunningServer> StartAsync(StoreLocation location, Func<ServeOptions, ServeOptions>? change = null)
    {
        var options = new ServeOptions(location, [new("http://127.0.0.1:0")], null, false, false, false) { SignInsAMinute = Unlimited };
        WebApplication app = GatewrightServer.Build(change?.Invoke(options) ?? options);
        await app.StartAsync(TestContext.Current.CancellationToken);
        string address = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        return new(app, new(address));
    }

    /// <summary>A browser without cookies.</summary>
    public Visitor Visitor() => new(Address);

    /// <summary>Makes an account that is a member of a club, and signs it in.</summary>
    public async Task<Visitor> MemberAsync(string club, string member, Role role)
    {
        await MakeAccountAsync($"{member}.{club}", club, member, role);
        Visitor visitor = Visitor();
        await visitor.SignInAsync($"{member}.{club}", Password);
        return visitor;
    }

    /// <summary>Makes an account that is a member of a club.</summary>
    public async Task MakeAccountAsync(string name, string club, string member, Role role, string? displayName = null)
    {
        await using AsyncServiceScope scope = Services.CreateAsyncScope();
        var account = new Account
        {
            UserName = name, DisplayName = displayName ?? $"{role.Word()} of {club}", PasswordHash = Hash,
        };
        IdentityResult made = await scope.ServiceProvider.GetRequiredService<UserManager<Account>>().CreateAsync(account);
        Assert.True(made.Succeeded, string.Join(' ', made.Errors.Select(e => e.Description)));
        await JoinAsync(account.Id, club, member, role);
    }

    /// <summary>Does something with the store's tables.</summary>
    public async Task WithTablesAsync(Func<StoreDb, Task> act)
    {
        await using AsyncServiceScope scope = Services.CreateAsyncScope();
        await act(scope.ServiceProvider.GetRequiredService<StoreDb>());
    }

    /// <summary>The id of the account that signs in by a name.</summary>
    public async Task<string> AccountIdAsync(string name)
    {
        await using AsyncServiceScope scope = Services.CreateAsyncScope();
        return (await scope.ServiceProvider.GetRequiredService<UserManager<Account>>().FindByNameAsync(name))!.Id;
    }

    /// <summary>Makes an account a member of a club.</summary>
    public async Task JoinAsync(string account, string club, string member, Role role)
    {
        await using AsyncServiceScope scope = Services.CreateAsyncScope();
        StoreDb db = scope.ServiceProvider.GetRequiredService<StoreDb>();
        db.Memberships.Add(new() { Club = club, Member = member, AccountId = account, Role = role.Word() });
        await db.SaveChangesAsync(TestContext.Current.CancellationToken);
    }

    /// <summary>Makes a link, as a keeper would.</summary>
    public async Task<(string Invitation, string Secret)> InviteAsync(
        string club, Role role, IReadOnlyList<string>? boats = null, string? madeBy = "m-keeper", string label = "first eight")
    {
        await using AsyncServiceScope scope = Services.CreateAsyncScope();
        (InvitationRow row, string secret) = await scope.ServiceProvider.GetRequiredService<Invitations>().MakeAsync(
            club, role, label, boats, madeBy, Invitations.Usual, TestContext.Current.CancellationToken);
        return (row.Invitation, secret);
    }

    /// <summary>Stops it as an operator would.</summary>
    public Task StopAsync() => _app.StopAsync();

    public async ValueTask DisposeAsync()
    {
        await _app.StopAsync();
        await _app.DisposeAsync();
    }
}
