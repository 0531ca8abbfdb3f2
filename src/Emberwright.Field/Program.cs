using Emberwright.Field;
using Emberwright.Field.Store;
using Emberwright.Field.Visiting;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;
using Microsoft.JSInterop;

var builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<App>("#app");
builder.RootComponents.Add<Microsoft.AspNetCore.Components.Web.HeadOutlet>("head::after");
builder.Services.AddSingleton<JournalStore>();
builder.Services.AddSingleton<Names>();
builder.Services.AddSingleton<Preferences>();
builder.Services.AddSingleton<Office>();
builder.Services.AddSingleton<Shelf>();
builder.Services.AddSingleton<Book>();
builder.Services.AddSingleton<Erasing>();
builder.Services.AddSingleton<OwnRates>();
builder.Services.AddSingleton<Readout>();
builder.Services.AddSingleton<Bench>();
builder.Services.AddSingleton<VisitPrint>();
builder.Services.AddSingleton<Screen>();
builder.Services.AddSingleton(TimeProvider.System);
builder.Services.AddSingleton(new HttpClient { BaseAddress = new Uri(builder.HostEnvironment.BaseAddress) });

var host = builder.Build();
var browser = await host.Services.GetRequiredService<IJSRuntime>().GetValueAsync<string>("navigator.language");
await host.Services.GetRequiredService<Preferences>().Load(browser);
await host.Services.GetRequiredService<Book>().Load();
await host.RunAsync();
