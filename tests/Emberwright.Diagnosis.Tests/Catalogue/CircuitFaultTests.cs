using Emberwright.Diagnosis.Checks;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Faults;
using Xunit;

namespace Emberwright.Diagnosis.Tests.CatalogueTests;

public class CircuitFaultTests
{
    public static TheoryData<string> Patterns => [.. PatternIds.All];

    [Theory, MemberData(nameof(Patterns))]
    public void Every_circuit_fault_is_in_the_wiring_and_changes_a_reading_or_shows_plainly(string pattern)
    {
        var readings = new ElectricalReadings(WiringLibrary.For(pattern), Meter.Ordinary);
        foreach (var fault in Catalogue.For(pattern).Faults.Where(f => f.Circuit.Count > 0))
        {
            Assert.All(fault.Circuit, c => Assert.True(readings.Wiring.HasComponent(c.Component), $"{fault.Id}: {pattern} has no {c.Component}"));
            CircuitChange[] changes = [.. fault.Circuit];
            var seen = changes.Any(c => c.State == ComponentState.LeakingToEarth
                && IsolatedPart.ToEarthOhm(readings.Wiring, changes, c.Component) < 1e5)
                || fault.Shifts.Count > 0
                || fault.Symptoms.Any(x => x.Probability >= 0.9 && Catalogue.For(pattern).Sign(x.Sign) is { } sign && sign.Outcomes[sign.IndexOf(x.Outcome)].Usual <= 0.05)
                || readings.All().Any(r => Conditions.Any(c => Differ(readings, r.Measure, r.Place, c, changes)));
            Assert.True(seen, $"{fault.Id} changes no reading");
        }
    }

    [Theory, MemberData(nameof(Patterns))]
    public void Every_electrical_reading_of_a_check_can_be_taken_on_its_pattern(string pattern)
    {
        var wiring = WiringLibrary.For(pattern);
        var unknown = Catalogue.For(pattern).Checks
            .SelectMany(c => c.Reads.Select(r => (c.Id, Read: r)))
            .Where(x => x.Read.Measure is Measure.Voltage or Measure.Resistance or Measure.Current && !wiring.HasComponent(x.Read.Place) && !wiring.HasPoint(x.Read.Place));
        Assert.Empty(unknown.Select(x => $"{x.Id}: {x.Read.Place}"));
    }

    private static readonly Condition[] Conditions = [Condition.FanOnly, Condition.BlowerOff, Condition.HighBurn];

    private static bool Differ(ElectricalReadings readings, Measure measure, string place, Condition condition, CircuitChange[] changes)
    {
        // A contact that cannot open shows only where it should stand open.
        string[] open = [.. changes.Where(c => c.State == ComponentState.Shorted && readings.Wiring[c.Component] is Interlock).Select(c => c.Component)];
        var sound = readings.Predict(new(measure, place, condition), open, []);
        var faulty = readings.Predict(new(measure, place, condition), open, changes);
        return !(Math.Abs(sound - faulty) <= 0.05 * Math.Abs(sound) + 1e-3) && !(double.IsInfinity(sound) && double.IsInfinity(faulty));
    }
}
