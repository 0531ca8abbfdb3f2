using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Text;

namespace Emberwright.Field.Tests.Running;

/// <summary>One running server, from its build output or as published; ended on disposal.</summary>
internal sealed class Host : IAsyncDisposable
{
    private readonly Process process;

    private Host(Process process, string address)
    {
        this.process = process;
        Address = address;
    }

    public string Address { get; }

    public static Task<Host> Built() => Start(
        Path.Combine(Repo.Root, "src", "Emberwright.Server", "bin", Repo.Configuration, "net10.0", "Emberwright.Server.dll"),
        Path.Combine(Repo.Root, "src", "Emberwright.Server"));

    public static Task<Host> Published(string folder) => Start(Path.Combine(folder, "Emberwright.Server.dll"), folder);

    private static async Task<Host> Start(string program, string folder)
    {
        var address = $"http://localhost:{FreePort()}";
        var start = new ProcessStartInfo("dotnet", [program, "--urls", address])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        var said = new StringBuilder();
        var process = Process.Start(start)!;
        process.OutputDataReceived += (_, line) => said.AppendLine(line.Data);
        process.ErrorDataReceived += (_, line) => said.AppendLine(line.Data);
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();

        using var client = new HttpClient();
        for (var tries = 0; tries < 150; tries++)
        {
            if (process.HasExited) break;
            try
            {
                if ((await client.GetAsync(new Uri(address))).IsSuccessStatusCode) return new Host(process, address);
            }
            catch (HttpRequestException)
            {
            }
            await Task.Delay(200);
        }
        throw new InvalidOperationException($"{program} did not answer at {address}. It said:\n{said}");
    }

    internal static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    public async ValueTask DisposeAsync()
    {
        if (!process.HasExited) process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
        process.Dispose();
    }
}
