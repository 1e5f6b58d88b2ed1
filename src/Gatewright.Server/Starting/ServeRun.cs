using Gatewright.Server.Hosting;
using Gatewright.Store.Faults;
using Gatewright.Store.Opening;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace Gatewright.Server.Starting;

/// <summary>Runs the server until it is told to stop.</summary>
internal static class ServeRun
{
    private const int Stopped = 0;
    private const int WrongInput = 2;
    private const int CannotStart = 74;

    public static async Task<int> RunAsync(ServeRequest request, CancellationToken cancellation)
    {
        using DemoFolder? demo = request.Demo ? DemoFolder.Make() : null;
        try
        {
            (ServeOptions? options, IReadOnlyList<string> problems) = request.Read(demo?.Location);
            if (options is null)
            {
                return Tell(problems, WrongInput);
            }

            await StoreOpening.OpenAsync(options.Location, cancellation).ConfigureAwait(false);
            await using WebApplication app = GatewrightServer.Build(options);
            if (request.IsOnce)
            {
                return await OnceAsync(app, options, request, cancellation).ConfigureAwait(false);
            }

            if (options.Demo)
            {
                await DemoShed.FillAsync(app.Services, cancellation).ConfigureAwait(false);
            }

            await app.StartAsync(cancellation).ConfigureAwait(false);
            await SayWhereAsync(app, options, cancellation).ConfigureAwait(false);
            await app.WaitForShutdownAsync(cancellation).ConfigureAwait(false);
            return Stopped;
        }
        catch (StoreException cannot)
        {
            return Tell([cannot.Message], CannotStart);
        }
        catch (IOException cannot)
        {
            // An address that another program listens on, above all.
            return Tell([cannot.Message], CannotStart);
        }
    }

    private static async Task SayWhereAsync(WebApplication app, ServeOptions options, CancellationToken cancellation)
    {
        string listening = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        Console.WriteLine($"Gatewright is at {options.PublicAddress?.GetLeftPart(UriPartial.Authority) ?? listening}");
        if (options.Demo)
        {
            Console.WriteLine("The demo shed: everything in it is invented, and all you do to it is gone when this ends.");
        }
        else if (await FirstKeeper.InviteAsync(app.Services, listening, cancellation).ConfigureAwait(false) is { } link)
        {
            Console.WriteLine("Nobody looks after anything here yet. Whoever opens this link, once and within two days, will:");
            Console.WriteLine(link);
        }

        Console.WriteLine("Stop with Ctrl-C.");
    }

    /// <summary>What whoever looks after the machine asks for, beside a server that runs.</summary>
    private static async Task<int> OnceAsync(
        WebApplication app, ServeOptions options, ServeRequest request, CancellationToken cancellation)
    {
        if (request.NewClub)
        {
            Console.WriteLine("Whoever opens this link, once and within two days, opens a club and looks after it:");
            Console.WriteLine(await FirstKeeper.MakeAsync(app.Services, options.Listen[0].ToString(), null, cancellation).ConfigureAwait(false));
        }

        if (request.KeeperOf is { } club)
        {
            if (!await FirstKeeper.HasAsync(app.Services, club, cancellation).ConfigureAwait(false))
            {
                return Tell([$"--keeper-of {club}: there is no such club; gatewright club list shows those there are."], WrongInput);
            }

            Console.WriteLine($"Whoever opens this link, once and within two days, looks after {club}:");
            Console.WriteLine(await FirstKeeper.MakeAsync(app.Services, options.Listen[0].ToString(), club, cancellation).ConfigureAwait(false));
        }

        if (request.NewPassword is not { } name)
        {
            return Stopped;
        }

        if (await NewPassword.SetAsync(app.Services, name).ConfigureAwait(false) is not { } password)
        {
            return Tell([$"--new-password {name}: nobody signs in by this name."], WrongInput);
        }

        Console.WriteLine($"{name} signs in by this password from now on, and changes it under Account:");
        Console.WriteLine(password);
        return Stopped;
    }

    private static int Tell(IReadOnlyList<string> problems, int status)
    {
        foreach (string problem in problems)
        {
            Console.Error.WriteLine(problem);
        }

        return status;
    }
}
