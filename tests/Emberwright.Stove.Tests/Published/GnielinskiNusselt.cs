using Emberwright.Stove.Heat;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>
/// Gnielinski's form for gases: Re 1e5, Pr 1.2 gives Nu 227.888 (value of the open library "ht", from Lienhard, A Heat Transfer
/// Textbook).
/// </summary>
public class GnielinskiNusselt
{
    [Fact]
    public void Turbulent() => Assert.Equal(227.888, PipeNusselt.Of(1e5, 1.2), 1e-3);
}
