using Gatewright.EmptyApp;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;

// The least that a program in the browser can be: what it takes to start is the runtime's own.
var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<Page>("#app");
await builder.Build().RunAsync();
