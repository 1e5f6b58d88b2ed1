using System.Globalization;
using Gatewright.App;
using Gatewright.App.Boat;
using Gatewright.App.Device;
using Gatewright.App.Frame;
using Gatewright.App.Jobs;
using Gatewright.App.Keeping.People;
using Gatewright.App.Shed;
using Gatewright.Replica.Shelves;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;

CultureInfo.DefaultThreadCurrentCulture = CultureInfo.CurrentCulture = AppCulture.Of(CultureInfo.CurrentUICulture);
var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<Root>("#app");
builder.Services.AddLocalization();
builder.Services.AddSingleton(typeof(Texts<>));
builder.Services.AddSingleton(_ => new HttpClient { BaseAddress = new(new Uri(builder.HostEnvironment.BaseAddress), "/") });
builder.Services.AddSingleton(TimeProvider.System);
builder.Services.AddSingleton(_ => Said.Words);
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
WebAssemblyHost host = builder.Build();

// Before the first page is drawn: until then the shed stands there as it was last seen.
// It hears of each change from the first on.
_ = host.Services.GetRequiredService<LastShed>();
_ = host.Services.GetRequiredService<MemberNames>();
ThisDevice device = host.Services.GetRequiredService<ThisDevice>();
await device.OpenAsync();
if (device.IsOpen)
{
    _ = ShareAsync();
}

await host.RunAsync();

async Task ShareAsync()
{
    // What others recorded can wait for the first screen.
    await device.Opened;
    await Task.Delay(TimeSpan.FromMilliseconds(500));
    await host.Services.GetRequiredService<Sharing>().RunAsync();
}
