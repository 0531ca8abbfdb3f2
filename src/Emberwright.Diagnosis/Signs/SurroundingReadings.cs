// What do readings taken round the stove say: carbon monoxide outside it, the house, the supply, the water?
// CO: a rise from 5 ppm. House: deep below −4 Pa, below −8 Pa where the stove is room-sealed. Supply: low under 0.88 of
// nominal. Water, cold: low under 0.8 bar, the gauge wide from 2.6 bar hot. Return: cold when 25 K and more below the flow and
// under 45 °C. Water in the stove: hot from 80 °C.
// Symbols: CO in ppm, pressures in Pa, temperatures in °C, volts in V.
// Validity: a field instrument zeroed outdoors; a supply under half its nominal value is left to the circuit.
// Assumptions: house read with its fans on; water read on a fire that has burned for half an hour.
// Source: 4 and 8 Pa: usual allowances for heaters that draw room air and for room-sealed ones; the rest common practice, no source.
// Worked: flow 79 °C, return 26 °C: 53 K apart and under 45 °C, the return is cold.
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Signs;

/// <summary>Signs that readings round the stove amount to.</summary>
internal static class SurroundingReadings
{
    private const double RisePpm = 5;
    private const double Low = 0.88;
    private const double Nearly = 0.5;
    private const double Bar = 1e5;

    /// <summary>The sign of a reading, or null when it is none of these.</summary>
    public static SignOutcome? Judge(ReadingEvidence reading, List<ReadingEvidence> all, StoveCase stove)
    {
        var (measure, place, condition) = reading.Observable;
        var burning = condition.Fire != FireState.Cold;
        return (measure, place) switch
        {
            (Measure.CarbonMonoxide, Places.Room) when burning => new("room-monoxide", reading.Value >= RisePpm ? "rise" : "none"),
            (Measure.CarbonMonoxide, Places.WarmAir) => new("warm-air-monoxide", reading.Value >= RisePpm ? "rise" : "none"),
            (Measure.CarbonMonoxide, Places.BlowerFlange) when burning => new("flange-monoxide", reading.Value >= 2 * RisePpm ? "rise" : "none"),
            (Measure.Pressure, Places.House) => new("house-pressure", reading.Value < (stove.Pattern.Id == PatternIds.Sealed && stove.Site.OutsideAir ? -8 : -4) ? "deep" : "within"),
            (Measure.Voltage, Places.Supply) when reading.Value > Nearly * stove.SupplyV => new(burning ? "supply-loaded" : "supply-idle", Volts(reading.Value, stove)),
            (Measure.Voltage, Places.Panel) when reading.Value > Nearly * stove.SupplyV => new("panel-volts", Volts(reading.Value, stove)),
            _ => stove.Pattern.Id == PatternIds.Hydronic ? Water(reading, all, burning) : null,
        };
    }

    /// <summary>True when other parts of the engine need the reading beside its sign.</summary>
    public static bool IsKept(ReadingEvidence reading) => reading.Observable.Measure == Measure.CarbonMonoxide;

    private static SignOutcome? Water(ReadingEvidence reading, List<ReadingEvidence> all, bool burning) =>
        (reading.Observable.Measure, reading.Observable.Place) switch
        {
            (Measure.Pressure, Places.Water) when !burning => new("water-gauge", reading.Value < 0.8 * Bar ? "low" : "right"),
            (Measure.Pressure, Places.Water) => new("pressure-swing", reading.Value >= 2.6 * Bar ? "wide" : "narrow"),
            (Measure.Temperature, ComponentIds.WaterProbe) when burning => new("water-heat", reading.Value >= 80 ? "hot" : "right"),
            (Measure.Temperature, Places.ReturnPipe) when burning => new("return-pipe",
                reading.Value < 45 && (Flow(reading, all) ?? 70) - reading.Value >= 25 ? "cold" : "warm"),
            (Measure.Temperature, Places.FlowPipe) when burning && Shown(reading, all) is { } shown => new("water-shown", Math.Abs(shown - reading.Value) > 12 ? "off" : "right"),
            _ => null,
        };

    private static string Volts(double value, StoveCase stove) => value < Low * stove.SupplyV ? "low" : "right";

    private static double? Flow(ReadingEvidence reading, List<ReadingEvidence> all) => Temperature(reading, all, Places.FlowPipe) ?? Shown(reading, all);

    private static double? Shown(ReadingEvidence reading, List<ReadingEvidence> all) => Temperature(reading, all, ComponentIds.WaterProbe);

    private static double? Temperature(ReadingEvidence reading, List<ReadingEvidence> all, string place) => all
        .Where(r => r.Epoch == reading.Epoch && r.Observable.Measure == Measure.Temperature && r.Observable.Place == place)
        .Select(r => (double?)r.Value).LastOrDefault();
}
