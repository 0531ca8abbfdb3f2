// What do readings of the stove's own sensors and switches say, beside what a gauge says?
// Switch: closes at p, rated p_r: late when p/p_r > 1.35. Sensor: shown − gauge; zero shown with the hoses off.
// Exhaust: shown − measured at the collar. Thermocouple: millivolts against the 8 mV that prove a fire.
// Symbols: pressures in Pa below the room, temperatures in °C, volts in V.
// Validity: readings of one epoch and condition belong together; without its partner a reading stays a reading.
// Assumptions: the gauge is right; limits are common practice, no source.
// Source: common practice, no source.
// Worked: rated −12.5 Pa, closes at −42 Pa: ratio 3.4, late.
using Emberwright.Stove;
using Emberwright.Stove.Controls;

namespace Emberwright.Diagnosis.Signs;

/// <summary>
/// Turns readings of the stove's own sensors and switches into signs: only beside a gauge, a rating or nought do they mean
/// anything. Codes, counters and settings become signs too, where card or counters give them a meaning.
/// </summary>
public static class SensorReadings
{
    private const double Late = 1.35;
    private const double NoughtPa = 8;
    private const double FrozenPa = 1.5;
    private const double ExhaustK = 20;
    private const double ProvedV = 0.008;
    private const double NothingV = 0.001;

    /// <summary>The evidence with the signs that its sensor readings amount to in place of those readings.</summary>
    /// <param name="evidence">All evidence.</param>
    /// <param name="stove">The stove, whose switch has a rating.</param>
    public static IReadOnlyList<Evidence> Judged(IReadOnlyList<Evidence> evidence, StoveCase stove)
    {
        ArgumentNullException.ThrowIfNull(evidence);
        ArgumentNullException.ThrowIfNull(stove);
        evidence = StoveRecord.Judged(evidence, stove);
        var readings = evidence.OfType<ReadingEvidence>().ToList();
        return [.. evidence.SelectMany(e => e is ReadingEvidence r ? Judged(r, readings, evidence, stove) : [e])];
    }

    private static IEnumerable<Evidence> Judged(ReadingEvidence reading, List<ReadingEvidence> readings, IReadOnlyList<Evidence> all, StoveCase stove)
    {
        if (Judge(reading, readings, stove) is { } own) return [new SignEvidence(reading.Id, reading.Epoch, own.Sign, own.Outcome)];
        if (SurroundingReadings.Judge(reading, readings, stove) is not { } sign) return [reading];
        var judged = new SignEvidence(reading.Id, reading.Epoch, sign.Sign, sign.Outcome);
        return !SurroundingReadings.IsKept(reading) ? [judged] : all.Contains(judged) ? [reading] : [reading, judged];
    }

    private static SignOutcome? Judge(ReadingEvidence reading, List<ReadingEvidence> all, StoveCase stove) =>
        (reading.Observable.Measure, reading.Observable.Place) switch
        {
            (Measure.Pressure, ComponentIds.VacuumSwitch) => Switch(reading.Value, stove.Card?.SwitchClosesPa ?? stove.Pattern.Switch.ClosesPa),
            (Measure.Pressure, ComponentIds.PressureSensor) when reading.Observable.Condition.Blower == BlowerState.Off => Zero(reading.Value),
            (Measure.Pressure, ComponentIds.PressureSensor) => Beside(reading, all, Measure.Pressure, Places.SwitchHose, Places.Firebox) is { } gauge ? Shown(reading.Value, gauge) : null,
            (Measure.Temperature, ComponentIds.ExhaustProbe) => Beside(reading, all, Measure.Temperature, Places.Collar) is { } measured ? Exhaust(reading.Value - measured) : null,
            (Measure.Voltage, ComponentIds.Thermocouple) when reading.Observable.Condition.Fire is FireState.High or FireState.Low => Thermocouple(reading.Value),
            _ => null,
        };

    private static SignOutcome Switch(double closesPa, double ratedPa) =>
        new("switch-pump", Math.Abs(closesPa) > Late * Math.Abs(ratedPa) ? "late" : "right");

    private static SignOutcome Zero(double shownPa) =>
        new("zero-shown", shownPa > NoughtPa ? "high" : shownPa < -NoughtPa ? "low" : "nought");

    private static SignOutcome Shown(double shownPa, double gaugePa) => new("draught-shown",
        Math.Abs(shownPa - gaugePa) <= NoughtPa ? "follows"
        : Math.Abs(shownPa + gaugePa) <= NoughtPa ? "wrong-sign"
        : Math.Abs(shownPa) <= FrozenPa ? "frozen"
        : "offset");

    private static SignOutcome Exhaust(double differenceK) =>
        new("exhaust-shown", differenceK < -ExhaustK ? "low" : differenceK > ExhaustK ? "high" : "right");

    private static SignOutcome Thermocouple(double volts) => new("thermocouple-millivolts",
        volts <= -NothingV ? "negative" : volts < NothingV ? "none" : volts < ProvedV ? "weak" : "right");

    private static double? Beside(ReadingEvidence reading, List<ReadingEvidence> all, Measure measure, params string[] places) => places
        .SelectMany(place => all.Where(r => r.Epoch == reading.Epoch && r.Observable == new Observable(measure, place, reading.Observable.Condition)))
        .Select(r => (double?)r.Value)
        .FirstOrDefault();
}
