using Emberwright.Stove.Vent;
using Xunit;

namespace Emberwright.Stove.Tests.Published;

/// <summary>Exit 1.0 (Crane TP-410); a duct flush in a wall 0.5 (Idelchik, diagram 3-1). Both are exact in their books.</summary>
public class CraneFittings
{
    [Fact]
    public void Entry_and_open_end() =>
        Assert.Equal(0.5 + 1.0, VentDuct.Of(new VentRun(76, 1, 3, Terminal: "open")).Loss, 1e-12);
}
