using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Stove.Tests.Controls;

/// <summary>How complaints follow from faults on a damper-regulated insert, in wide bands a technician would accept (common practice, no source).</summary>
public class BurnOddsTests
{
    private static readonly VirtualStove Stove = new(DamperInsert.Pattern, null, new Site());

    private static BurnOdds Odds(string? fault, int draws = 40) =>
        BurnOdds.Of(Stove, fault is null ? null : FaultList.All.Single(f => f.Id == fault), draws, new Random(7));

    [Fact]
    public void Most_sound_stoves_run() =>
        Assert.True(Odds(null).Frequency.GetValueOrDefault(BurnOutcome.Runs) > 0.8);

    [Theory]
    [InlineData("proof-disc-bad", BurnOutcome.LightsThenStops, 0.7)]
    [InlineData("high-limit-tripped", BurnOutcome.NoFeed, 0.9)]
    [InlineData("hose-off", BurnOutcome.NoFeed, 0.7)]
    [InlineData("vacuum-switch-open", BurnOutcome.NoFeed, 0.9)]
    [InlineData("lid-switch-open", BurnOutcome.NoFeed, 0.8)]
    [InlineData("igniter-dead", BurnOutcome.NeverLights, 0.9)]
    [InlineData("fuse-blown", BurnOutcome.Dead, 0.95)]
    public void A_fault_ends_as_the_trade_knows_it(string fault, BurnOutcome outcome, double atLeast) =>
        Assert.True(Odds(fault).Frequency.GetValueOrDefault(outcome) >= atLeast);

    [Fact]
    public void Frequencies_sum_to_one() => Assert.Equal(1, Odds("vacuum-switch-drifted").Frequency.Values.Sum(), 1e-12);

    [Fact]
    public void The_same_seed_gives_the_same_odds() =>
        Assert.Equal(Odds("door-gasket-leaking", 10).Frequency.OrderBy(f => f.Key), Odds("door-gasket-leaking", 10).Frequency.OrderBy(f => f.Key));
}
