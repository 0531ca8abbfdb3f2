using Emberwright.Field.Tests.Running;
using Xunit;

[assembly: AssemblyFixture(typeof(Site))]

namespace Emberwright.Field.Tests.Running;

/// <summary>
/// One running server for all tests. A release build tests what people get: the app is published once and served from
/// there, which also starts it three times as fast. A debug build serves its own output, so that one test is tried at once;
/// a published server is tested by naming its folder in EMBERWRIGHT_SERVER.
/// </summary>
public sealed class Site : IAsyncLifetime
{
    private Host? host;

    /// <summary>Where it answers.</summary>
    public string Address => host!.Address;

    public async ValueTask InitializeAsync()
    {
        if (Environment.GetEnvironmentVariable("EMBERWRIGHT_SERVER") is { Length: > 0 } folder)
        {
            host = await Host.Published(folder);
        }
        else if (Repo.Configuration == "Release")
        {
            await PublishedApp.Folder;
            host = await Host.Published(Repo.Artifacts("server"));
        }
        else
        {
            host = await Host.Built();
        }
    }

    public async ValueTask DisposeAsync()
    {
        if (host is not null) await host.DisposeAsync();
    }
}
