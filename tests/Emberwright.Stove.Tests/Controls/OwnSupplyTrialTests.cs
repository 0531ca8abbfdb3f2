using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Wirings;
using Xunit;

namespace Emberwright.Stove.Tests.Controls;

/// <summary>Rules of the test lead (common practice, no source).</summary>
public class OwnSupplyTrialTests
{
    public static TheoryData<string> Patterns() => [.. WiringLibrary.All.Select(w => w.Pattern)];

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Only_mains_loads_may_be_tried_and_the_igniter_at_most_90_s(string pattern)
    {
        var wiring = WiringLibrary.For(pattern);
        foreach (var trial in OwnSupplyTrial.For(wiring))
        {
            var load = wiring[trial.Component] is Igniter or Motor && trial.Component != ComponentIds.CombustionAuxiliary;
            Assert.Equal(load, trial.Allowed);
            Assert.NotEmpty(trial.Cautions);
            if (!trial.Allowed) continue;
            Assert.Equal(wiring.Mains.NominalV, trial.SupplyV);
            Assert.True(trial.LeadFuseA >= trial.ExpectedA);
            Assert.True(trial.RunsWhenSound > trial.RunsThoughFaulty);
            if (trial.Component == ComponentIds.Igniter) Assert.Equal(90, trial.LongestS);
        }
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Every_motor_igniter_sensor_and_contact_has_a_verdict(string pattern)
    {
        var wiring = WiringLibrary.For(pattern);
        var judged = OwnSupplyTrial.For(wiring).Select(t => t.Component).ToHashSet();
        foreach (var part in wiring.Components)
            if (part is Motor or Igniter or Interlock or Thermocouple or ResistanceProbe or PressureSensor) Assert.Contains(part.Id, judged);
    }
}
