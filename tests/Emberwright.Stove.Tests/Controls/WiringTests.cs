using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Faults;
using Xunit;

namespace Emberwright.Stove.Tests.Controls;

/// <summary>Wirings as data: complete, checked, within the trade's ranges (common practice, no source).</summary>
public class WiringTests
{
    public static TheoryData<string> Patterns() => [.. WiringLibrary.All.Select(w => w.Pattern)];

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Parts_lie_within_the_ranges_of_the_trade(string pattern)
    {
        var wiring = WiringLibrary.For(pattern);
        var low = wiring.Mains.NominalV < 200;
        Assert.Equal(low ? 60 : 50, wiring.Mains.FrequencyHz);
        var igniter = wiring.Components.OfType<Igniter>().Single();
        Assert.InRange(igniter.HotOhm, low ? 29 : 130, low ? 58 : 210);
        var feed = (Motor)wiring[ComponentIds.FeedMotor];
        Assert.InRange(feed.RunningA, 0.2, 0.7);
        Assert.InRange(feed.WindingOhm, low ? 25 : 100, low ? 150 : 600);
        var blower = (Motor)wiring[ComponentIds.CombustionBlower];
        Assert.InRange(blower.RunningA, low ? 0.6 : 0.25, low ? 2 : 0.5);
        Assert.InRange(blower.WindingOhm, low ? 6 : 40, low ? 30 : 150);
        Assert.InRange(wiring.FeedChain.Length, 3, 4);
        foreach (var loop in wiring.Components.OfType<LowVoltageSupply>()) Assert.InRange(loop.Volts, 5, 24);
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void A_sound_stove_does_not_blow_its_fuse_and_the_fuse_is_not_far_too_large(string pattern)
    {
        var wiring = WiringLibrary.For(pattern);
        foreach (var operation in Enum.GetValues<Operation>())
        {
            var solved = SolvedWiring.Alternating(wiring, wiring.In(operation), []);
            Assert.False(solved.FuseBlown);
            Assert.True(solved.CurrentA(ComponentIds.Fuse) < ((Fuse)wiring[ComponentIds.Fuse]).RatedA);
        }
        var start = SolvedWiring.Alternating(wiring, wiring.In(Operation.Igniting), []).CurrentA(ComponentIds.Fuse);
        Assert.True(((Fuse)wiring[ComponentIds.Fuse]).RatedA < 3 * start);
    }

    [Fact]
    public void A_missing_value_is_an_error_naming_the_component()
    {
        var wiring = DamperInsertWiring.Create();
        var motor = (Motor)wiring[ComponentIds.FeedMotor];
        foreach (var wrong in new[] { motor with { WindingOhm = 0 }, motor with { RunningA = double.NaN }, motor with { RunningPowerFactor = 1.2 }, motor with { StalledA = 0.1 } })
            Assert.Contains("feed-motor", Assert.Throws<CircuitException>(() => wiring.With(wrong)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_motor_cannot_draw_more_than_its_winding_lets_pass()
    {
        var wiring = DamperInsertWiring.Create();
        var motor = (Motor)wiring[ComponentIds.FeedMotor];
        Assert.Throws<CircuitException>(() => wiring.With(motor with { StalledA = 2 }));
    }

    [Fact]
    public void A_leak_without_its_resistance_is_an_error_naming_the_component() =>
        Assert.Contains("igniter", Assert.Throws<CircuitException>(() => SolvedWiring.Alternating(
            DamperInsertWiring.Create(), DamperInsertWiring.Create().In(Operation.Igniting),
            [new CircuitChange(ComponentIds.Igniter, ComponentState.LeakingToEarth)])).Message, StringComparison.Ordinal);

    [Fact]
    public void A_card_may_reorder_the_chain_and_the_bridge_follows_the_proof_disc()
    {
        var wiring = DamperInsertWiring.Create().WithFeedOrder(
            [ComponentIds.ProofDisc, ComponentIds.VacuumSwitch, ComponentIds.LidSwitch, ComponentIds.HighLimitDisc]);
        Assert.Equal(("tp1", "tp2"), (wiring[ComponentIds.ProofDisc].From, wiring[ComponentIds.ProofDisc].To));
        Assert.Equal(("tp1", "tp2"), (wiring[ComponentIds.ProofBypass].From, wiring[ComponentIds.ProofBypass].To));
        Assert.Equal("tp5", wiring[ComponentIds.HighLimitDisc].To);
        Assert.Throws<CircuitException>(() => wiring.WithFeedOrder([ComponentIds.ProofDisc]));
    }

    [Fact]
    public void An_unknown_pattern_is_named_with_those_there_are() =>
        Assert.Contains("damper-insert", Assert.Throws<CircuitException>(() => WiringLibrary.For("wood")).Message, StringComparison.Ordinal);
}
