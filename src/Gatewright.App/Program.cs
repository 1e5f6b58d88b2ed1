using Gatewright.App;
using Gatewright.App.Boat;
using Gatewright.App.Device;
using Gatewright.App.Frame;
using Gatewright.App.Jobs;
using Gatewright.App.Keeping.People;
using Gatewright.App.Round;
using Gatewright.App.Shed;
using Gatewright.Replica.Shelves;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;

AppCulture.Begin(Environment.GetEnvironmentVariable("GATEWRIGHT_LANGUAGE") ?? "en");
var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<Root>("#app");
builder.Services.AddSingleton(typeof(Texts<>));
builder.Services.AddSingleton(_ => new HttpClient { BaseAddress = new(new Uri(builder.HostEnvironment.BaseAddress), "/") });
builder.Services.AddSingleton(TimeProvider.System);
builder.Services.AddSingleton(_ => AppCulture.BeginFigures());
builder.Services.AddSingleton<IDeviceShelf, IndexedDbShelf>();
builder.Services.AddSingleton<ClubInHand>();
builder.Services.AddSingleton<ThisDevice>();
builder.Services.AddSingleton<Photos>();
builder.Services.AddSingleton<FocusNext>();
builder.Services.AddSingleton<Sharing>();
builder.Services.AddSingleton<LastShed>();
builder.Services.AddSingleton<PlanAsked>();
builder.Services.AddSingleton<RecordWords>();
builder.Services.AddSingleton<BrowserRoom>();
builder.Services.AddSingleton<ClubPeople>();
builder.Services.AddSingleton<MemberNames>();
builder.Services.AddSingleton<Rehearsals>();
WebAssemblyHost host = builder.Build();

_ = ShareAsync();
await host.RunAsync();

async Task ShareAsync()
{
    // What others recorded can wait for the first screen.
    ThisDevice device = host.Services.GetRequiredService<ThisDevice>();
    await device.Opened;
    if (device.IsOpen)
    {
        await Task.Delay(TimeSpan.FromMilliseconds(500));
        await host.Services.GetRequiredService<Sharing>().RunAsync();
    }
}
