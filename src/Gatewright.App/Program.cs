using Gatewright.App;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;

var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<Root>("#app");
builder.Services.AddLocalization();
builder.Services.AddScoped(_ => new HttpClient { BaseAddress = new(new Uri(builder.HostEnvironment.BaseAddress), "/") });
await builder.Build().RunAsync();
