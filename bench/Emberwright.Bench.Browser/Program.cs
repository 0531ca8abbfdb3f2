using Emberwright.Bench;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;

// Runs in the page and writes Markdown rows to the browser's console; see browser.sh.
var host = WebAssemblyHostBuilder.CreateDefault(args).Build();
var times = SolveTimes.Operations().Select(o => (o.Name, Us: SolveTimes.BestUs(o.Call))).ToList();
times.ForEach(t => Console.WriteLine(SolveTimes.Row(t.Name, t.Us, times[1].Us)));
Console.WriteLine("measured");
await host.RunAsync().ConfigureAwait(false);
