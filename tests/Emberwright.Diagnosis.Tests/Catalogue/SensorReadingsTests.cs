using Emberwright.Diagnosis.Signs;
using Emberwright.Stove;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Diagnosis.Tests.CatalogueTests;

public class SensorReadingsTests
{
    private static StoveCase Stove(string pattern) =>
        new(PatternLibrary.All.Single(p => p.Id == pattern), null, new Site(), new History());

    private static ReadingEvidence Read(string id, Measure measure, string place, Condition condition, double value) => new(id, 0, new(measure, place, condition), value);

    private static string? Outcome(string pattern, string id, params ReadingEvidence[] readings) =>
        (SensorReadings.Judged(readings, Stove(pattern)).Single(e => e.Id == id) as SignEvidence)?.Outcome;

    [Theory] // rated −12.5 Pa on the pattern; twice and three times that is late, a tenth more is not
    [InlineData(1.1, "right")]
    [InlineData(2.0, "late")]
    [InlineData(3.4, "late")]
    public void A_switch_on_a_hand_pump_is_held_against_its_rating(double ratio, string outcome)
    {
        var rated = Stove(PatternIds.Damper).Pattern.Switch.ClosesPa;
        Assert.Equal(outcome, Outcome(PatternIds.Damper, "p", Read("p", Measure.Pressure, "vacuum-switch", Condition.BlowerOff, ratio * rated)));
    }

    [Theory]
    [InlineData(-39, -39, "follows")]
    [InlineData(-13, -39, "offset")]
    [InlineData(38, -39, "wrong-sign")]
    [InlineData(0, -39, "frozen")]
    public void Draught_shown_is_held_against_a_gauge(double shown, double gauge, string outcome) =>
        Assert.Equal(outcome, Outcome(PatternIds.Sealed, "s",
            Read("s", Measure.Pressure, "pressure-sensor", Condition.FanOnly, shown), Read("g", Measure.Pressure, Places.Firebox, Condition.FanOnly, gauge)));

    [Fact]
    public void Without_a_gauge_beside_it_what_is_shown_stays_a_reading() =>
        Assert.Null(Outcome(PatternIds.Sealed, "s", Read("s", Measure.Pressure, "pressure-sensor", Condition.FanOnly, -13)));

    [Theory]
    [InlineData(26, "high")]
    [InlineData(1, "nought")]
    [InlineData(-15, "low")]
    public void The_zero_is_held_against_nought(double shown, string outcome) =>
        Assert.Equal(outcome, Outcome(PatternIds.Sealed, "z", Read("z", Measure.Pressure, "pressure-sensor", Condition.BlowerOff, shown)));

    [Theory]
    [InlineData(0.0041, "weak")]
    [InlineData(0.0156, "right")]
    [InlineData(-0.012, "negative")]
    [InlineData(0, "none")]
    public void Millivolts_are_held_against_what_proves_a_fire(double volts, string outcome) =>
        Assert.Equal(outcome, Outcome(PatternIds.Thermocouple, "t", Read("t", Measure.Voltage, "thermocouple", Condition.HighBurn, volts)));

    [Fact]
    public void Exhaust_shown_is_held_against_the_thermometer_beside_it() =>
        Assert.Equal("low", Outcome(PatternIds.Underfed, "e",
            Read("e", Measure.Temperature, "exhaust-probe", Condition.HighBurn, 117), Read("m", Measure.Temperature, Places.Collar, Condition.HighBurn, 178)));
}
