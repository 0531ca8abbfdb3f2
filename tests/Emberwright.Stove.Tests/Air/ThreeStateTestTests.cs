using Emberwright.Stove.Air;
using Xunit;
using static Emberwright.Stove.Tests.Air.Stoves;

namespace Emberwright.Stove.Tests.Air;

/// <summary>What the cold three-state test teaches, in its directions; magnitudes depend on the noise assumed.</summary>
public class ThreeStateTestTests
{
    private static readonly ThreeStateTest Full = ThreeStateTest.Plan(Insert(), [], []);

    private static TestGain Of(ThreeStateTest test, Parameter parameter) => test.Gains.Single(g => g.Parameter == parameter);

    [Fact]
    public void It_reads_every_port_in_every_state() => Assert.Equal(12, Full.Readings.Count);

    [Fact]
    public void It_narrows_passages_and_wheel()
    {
        Parameter[] narrowed = [Parameter.AshPassages, Parameter.Vent, Parameter.Wheel];

        Assert.All(narrowed, p => Assert.True(Of(Full, p).SdAfter < 0.7 * Of(Full, p).SdBefore, $"{p} {Of(Full, p).SdAfter}"));
    }

    [Fact]
    public void No_unknown_gets_wider() => Assert.All(Full.Gains, g => Assert.True(g.SdAfter <= g.SdBefore * (1 + 1e-9)));

    [Fact]
    public void Intake_and_pot_are_not_told_apart() =>
        Assert.True(Full.NotSeparated.Contains((Parameter.Intake, Parameter.BurnPot))
            || Of(Full, Parameter.Intake).SdAfter > 0.7 * Of(Full, Parameter.Intake).SdBefore);

    [Fact]
    public void Intake_stopped_tells_most_on_the_wheel() => Assert.Equal(Condition.IntakeStopped, Of(Full, Parameter.Wheel).Best);

    [Fact]
    public void One_port_or_fewer_states_teach_less()
    {
        var one = ThreeStateTest.Plan(Insert(), [Places.Firebox], []);
        var noFanOnly = ThreeStateTest.Plan(Insert(), [], [Condition.IntakeStopped, Condition.BlowerOff]);

        Assert.All(Full.Gains, g => Assert.True(Of(one, g.Parameter).SdAfter >= g.SdAfter - 1e-9));
        Assert.All(Full.Gains, g => Assert.True(Of(noFanOnly, g.Parameter).SdAfter >= g.SdAfter - 1e-9));
        Assert.True(Of(one, Parameter.Vent).SdAfter > 1.15 * Of(Full, Parameter.Vent).SdAfter);
    }

    [Fact]
    public void A_port_the_stove_does_not_have_is_refused() =>
        Assert.Equal("port", Assert.Throws<InputException>(() => ThreeStateTest.Plan(Insert(), ["attic"], [])).Field);
}
