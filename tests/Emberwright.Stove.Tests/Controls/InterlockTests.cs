using CsCheck;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Faults;
using Xunit;

namespace Emberwright.Stove.Tests.Controls;

/// <summary>What must hold on every wiring whatever the order of its switches (common practice, no source).</summary>
public class InterlockTests
{
    private const double RunsA = 0.01;

    public static TheoryData<string> Patterns() => [.. WiringLibrary.All.Select(w => w.Pattern)];

    [Theory]
    [MemberData(nameof(Patterns))]
    public void No_single_open_switch_lets_the_feed_run(string pattern)
    {
        var wiring = WiringLibrary.For(pattern);
        foreach (var id in wiring.FeedChain)
        {
            Assert.False(FeedRuns(wiring, Operation.High, wiring.Bit(id)), id);
            Assert.False(FeedRuns(wiring, Operation.High, 0, new CircuitChange(id, ComponentState.Open)), id);
        }
        Assert.True(FeedRuns(wiring, Operation.High, 0));
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Nothing_but_the_proof_of_fire_is_bridged_at_the_start(string pattern)
    {
        var wiring = WiringLibrary.For(pattern);
        foreach (var id in wiring.FeedChain)
            Assert.Equal(((Interlock)wiring[id]).Kind == ContactKind.ProofDisc, FeedRuns(wiring, Operation.Igniting, wiring.Bit(id)));
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Any_open_switch_stops_the_feed_in_any_order(string pattern)
    {
        var wiring = WiringLibrary.For(pattern);
        Gen.Select(Gen.Shuffle(wiring.FeedChain.ToArray()), Gen.Bool.Array[wiring.FeedChain.Length]).Sample((order, open) =>
        {
            var reordered = wiring.WithFeedOrder(order);
            ulong bits = 0;
            for (var i = 0; i < order.Length; i++)
                if (open[i]) bits |= reordered.Bit(order[i]);
            Assert.Equal(bits == 0, FeedRuns(reordered, Operation.High, bits));
        }, iter: 200);
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void A_single_open_switch_shows_the_supply_and_all_others_nothing(string pattern)
    {
        var wiring = WiringLibrary.For(pattern);
        var readings = new ElectricalReadings(wiring, Meter.Ordinary);
        foreach (var open in wiring.FeedChain)
        {
            var state = wiring.In(Operation.High);
            var solved = SolvedWiring.Alternating(wiring, state with { Positions = state.Positions.Opened(wiring.Bit(open)) }, []);
            var supply = readings.Read(solved, Measure.Voltage, ComponentIds.Supply);
            foreach (var id in wiring.FeedChain)
                Assert.Equal(id == open ? supply : 0, readings.Read(solved, Measure.Voltage, id), 0.01 * supply);
        }
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void A_bridged_switch_lets_the_feed_run_although_it_should_not(string pattern)
    {
        var wiring = WiringLibrary.For(pattern);
        foreach (var id in wiring.FeedChain)
            Assert.True(FeedRuns(wiring, Operation.High, wiring.Bit(id), new CircuitChange(id, ComponentState.Shorted)), id);
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Every_reading_offered_can_be_predicted_in_every_condition(string pattern)
    {
        var readings = new ElectricalReadings(WiringLibrary.For(pattern), Meter.Ordinary);
        Condition[] conditions = [Condition.FanOnly, Condition.BlowerOff, Condition.LowBurn, Condition.HighBurn];
        foreach (var (measure, place) in readings.All())
            foreach (var condition in conditions)
                Assert.False(double.IsNaN(readings.Predict(new Observable(measure, place, condition), [], [])), $"{measure} at {place}");
    }

    private static bool FeedRuns(Wiring wiring, Operation operation, ulong open, params CircuitChange[] changes)
    {
        var state = wiring.In(operation);
        return SolvedWiring.Alternating(wiring, state with { Positions = state.Positions.Opened(open) }, changes)
            .CurrentA(ComponentIds.FeedMotor) > RunsA;
    }
}
