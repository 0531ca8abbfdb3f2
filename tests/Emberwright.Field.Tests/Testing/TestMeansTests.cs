using Emberwright.Field.Testing;
using Emberwright.Stove;
using Emberwright.Stove.Air;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Field.Tests.Testing;

public class TestMeansTests
{
    private static readonly VirtualStove Stove = new(DamperInsert.Pattern, null, new Site());

    [Fact]
    public void A_door_switch_or_no_fan_only_mode_takes_the_open_door_away()
    {
        Assert.Contains(Condition.DoorOpen, new TestMeans([Places.Firebox], true, false).States);
        Assert.DoesNotContain(Condition.DoorOpen, new TestMeans([Places.Firebox], true, true).States);
        Assert.DoesNotContain(Condition.DoorOpen, new TestMeans([Places.Firebox], false, false).States);
    }

    [Fact]
    public void Every_state_says_what_to_do()
    {
        var means = new TestMeans([Places.Firebox], true, false);
        Assert.Equal(means.States.Count, means.States.Select(means.Doing).Distinct().Count());
    }

    [Fact]
    public void Fewer_ports_and_states_tell_no_more()
    {
        var whole = Plan(new([.. DamperInsert.Pattern.Ports.Select(p => p.Id)], true, false));
        var little = Plan(new([Places.Firebox], true, true));
        Assert.All(whole.Gains.Zip(little.Gains), pair => Assert.True(pair.First.SdAfter <= pair.Second.SdAfter + 1e-9));
        Assert.True(Silent(little) > Silent(whole));
    }

    private static int Silent(ThreeStateTest test) => test.Gains.Count(gain => GainWords.Told(gain) == "hardly");

    private static ThreeStateTest Plan(TestMeans means) => ThreeStateTest.Plan(Stove, means.Ports, means.States);
}
