using Emberwright.Field.Tests.Running;
using Xunit;

[assembly: AssemblyFixture(typeof(Site))]

namespace Emberwright.Field.Tests.Running;

/// <summary>The server from its build output, started once for the tests that only need one.</summary>
public sealed class Site : IAsyncLifetime
{
    private Host? host;

    /// <summary>Where it answers.</summary>
    public string Address => host!.Address;

    public async ValueTask InitializeAsync() => host = await Host.Built();

    public async ValueTask DisposeAsync()
    {
        if (host is not null) await host.DisposeAsync();
    }
}
