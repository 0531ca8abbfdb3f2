using Emberwright.Stove.Controls;
using static Emberwright.Stove.Faults.Complaints;

namespace Emberwright.Stove.Faults;

/// <summary>Faults of thermocouple, probes and pressure sensor.</summary>
internal static class Sensors
{
    public static IReadOnlyList<Fault> Faults { get; } =
    [
        new()
        {
            Id = "thermocouple-open",
            Name = "Thermocouple open",
            Aliases = ["thermocouple open/dirty/out of place", "thermocouple broken"],
            Area = Area.Interlocks,
            BaseRatePercent = 2.5,
            Origin = Origins.Memory,
            Patterns = [PatternIds.Thermocouple],
            Circuit = [new(ComponentIds.Thermocouple, ComponentState.Open)],
            Symptoms = [.. Says((StopsProving, .75), (AlarmShown, .15)), new("code", "sensor", .4), new("code", "no-fire", .45), new("flame", "lively", .85), new("onset", "sudden", .5), new("thermocouple-millivolts", "none", .92)],
            Remedy = new(RemedyKind.Replace, "Replace the thermocouple once it reads open off the board; red is negative on type K.", 10, 35, [Cautions.MakeSafe]),
            ProvedBy = ["thermocouple-ohms"],
        },
        new()
        {
            Id = "thermocouple-dirty",
            Name = "Thermocouple dirty or out of place",
            Aliases = ["thermocouple dirty", "thermocouple out of place", "thermocouple open/dirty/out of place", "thermocouple slid back"],
            Area = Area.Interlocks,
            BaseRatePercent = 3,
            Origin = Origins.Memory,
            Patterns = [PatternIds.Thermocouple],
            Shifts = [new(Parameter.ProofSensor, -220, 70)],
            Symptoms =
            [
                .. Says((StopsProving, .85), (AlarmShown, .08)),
                new("thermocouple-seat", "crusted", .5), new("thermocouple-seat", "slid", .45), new("thermocouple-millivolts", "weak", .92), new("flame", "lively", .85), new("code", "no-fire", .6),
            ],
            Remedy = new(RemedyKind.Clean, "Scrape the sleeve, push the probe to its stop, read the millivolts again.", 6, 0, [Cautions.MakeSafe, Cautions.Ash]),
        },
        new()
        {
            Id = "thermocouple-reversed",
            Name = "Thermocouple leads reversed",
            Aliases = ["thermocouple reversed", "reversed wiring after a repair"],
            Area = Area.Interlocks,
            BaseRatePercent = 0.5,
            Origin = Origins.Practice,
            Patterns = [PatternIds.Thermocouple],
            Circuit = [new(ComponentIds.Thermocouple, ComponentState.Drifted, -1)],
            Symptoms = [.. Says((StopsProving, .85), (AlarmShown, .1)), new("onset", "after-work", .92), new("work-done", "repair", .85), new("wiring-order", "changed", .9), new("thermocouple-millivolts", "negative", .95)],
            Remedy = new(RemedyKind.Adjust, "Change the two leads over: on type K red is negative.", 5, 0, [Cautions.MakeSafe]),
        },
        new()
        {
            Id = "exhaust-probe-drifted",
            Name = "Exhaust probe drifted",
            Aliases = ["exhaust probe", "exhaust probe reads low", "esp drifted", "flue gas sensor"],
            Area = Area.Interlocks,
            BaseRatePercent = 2,
            Origin = Origins.Memory,
            Patterns = PatternIds.ExhaustProbe,
            Shifts = [new(Parameter.ProofSensor, -50, 20)],
            Circuit = [new(ComponentIds.ExhaustProbe, ComponentState.Drifted, 0.91)],
            Symptoms = [.. Says((FierceFlame, .35), (StopsProving, .25), (EatsFuel, .15), (AlarmShown, .15)), new("code", "sensor", .3), new("code", "no-fire", .3)],
            Remedy = new(RemedyKind.Replace, "Replace the probe once it is off its table at a known temperature after wiping and seating it.", 12, 40, [Cautions.MakeSafe], 0.5),
            ProvedBy = ["exhaust-probe-ohms", "exhaust-probe-compare"],
        },
        new()
        {
            Id = "exhaust-probe-sooted",
            Name = "Exhaust probe sooted or not seated",
            Aliases = ["exhaust probe dirty", "probe out of place"],
            Area = Area.Interlocks,
            BaseRatePercent = 1.5,
            Origin = Origins.Memory,
            Patterns = PatternIds.ExhaustProbe,
            Shifts = [new(Parameter.ProofSensor, -30, 12)],
            Symptoms = [.. Says((StopsProving, .4), (FierceFlame, .2), (EatsFuel, .1), (AlarmShown, .2)), new("probe-seat", "sooted", .6), new("probe-seat", "loose", .33), new("code", "no-fire", .4)],
            Remedy = new(RemedyKind.Clean, "Wipe the probe, seat it, clean its plug.", 6, 0, [Cautions.MakeSafe]),
        },
        new()
        {
            Id = "exhaust-probe-open",
            Name = "Exhaust probe open or its plug off",
            Aliases = ["exhaust probe open", "probe broken"],
            Area = Area.Interlocks,
            BaseRatePercent = 1.2,
            Origin = Origins.Memory,
            Patterns = PatternIds.ExhaustProbe,
            Circuit = [new(ComponentIds.ExhaustProbe, ComponentState.Open)],
            Symptoms = [.. Says((AlarmShown, .75), (Dead, .05), (StopsProving, .1)), new("code", "sensor", .9), new("onset", "sudden", .7)],
            Remedy = new(RemedyKind.Replace, "Seat the plug; replace a probe that reads open.", 12, 40, [Cautions.MakeSafe], 0.5),
            ProvedBy = ["exhaust-probe-ohms"],
        },
        new()
        {
            Id = "pressure-sensor-zero",
            Name = "Pressure sensor drifted (zero error)",
            Aliases = ["pressure sensor drifted", "vacuum switch or sensor drifted", "sensor zero", "pressure-sensor zero"],
            Area = Area.Interlocks,
            BaseRatePercent = 2.5,
            Origin = Origins.Memory,
            Patterns = [PatternIds.Sealed],
            Shifts = [new(Parameter.SensorZero, 22, 8)],
            Symptoms = [.. Says((AlarmShown, .75), (StopsProving, .15)), new("code", "low-draught", .85), new("onset", "gradual", .4), new("draught-shown", "offset", .9)],
            Remedy = new(RemedyKind.Replace, "Replace the pressure sensor once its zero with the hoses off is out while its supply is right.", 12, 85, [Cautions.MakeSafe], 0.4),
            ProvedBy = ["pressure-sensor-zero", "pressure-sensor-volts"],
        },
        new()
        {
            Id = "sensor-hoses-swapped",
            Name = "Sensor hoses swapped",
            Aliases = ["sensor hoses swapped", "reversed hoses", "hoses swapped", "reversed wiring after a repair"],
            Area = Area.Interlocks,
            BaseRatePercent = 0.6,
            Origin = Origins.Practice,
            Patterns = [PatternIds.Sealed],
            Circuit = [new(ComponentIds.PressureSensor, ComponentState.Drifted, -1)],
            Symptoms = [.. Says((AlarmShown, .9)), new("hose-ports", "swapped", .96), new("onset", "after-work", .92), new("work-done", "repair", .9), new("code", "low-draught", .9), new("draught-shown", "wrong-sign", .94)],
            Remedy = new(RemedyKind.Adjust, "Change the two hoses over and read again; look for what the first alarm was about.", 5, 0, [Cautions.HoseOff]),
        },
        new()
        {
            Id = "pressure-sensor-dead",
            Name = "Pressure sensor or its lead dead",
            Aliases = ["pressure sensor dead", "no signal from the pressure sensor"],
            Area = Area.Interlocks,
            BaseRatePercent = 0.8,
            Origin = Origins.Memory,
            Patterns = [PatternIds.Sealed],
            Circuit = [new(ComponentIds.PressureSensor, ComponentState.Open)],
            Symptoms = [.. Says((AlarmShown, .9)), new("code", "sensor", .6), new("code", "low-draught", .35), new("draught-shown", "frozen", .9)],
            Remedy = new(RemedyKind.Replace, "Mend the lead; replace the sensor if its supply is right and it gives no output.", 12, 85, [Cautions.MakeSafe], 0.4),
            ProvedBy = ["pressure-sensor-volts"],
        },
        new()
        {
            Id = "room-probe-bad",
            Name = "Room probe reads wrong",
            Aliases = ["room sensor", "ambient probe"],
            Area = Area.Electrical,
            BaseRatePercent = 0.7,
            Origin = Origins.Memory,
            Patterns = [PatternIds.Sealed, PatternIds.Hydronic],
            Circuit = [new(ComponentIds.RoomProbe, ComponentState.Drifted, 0.8)],
            Symptoms = [.. Says((LittleHeat, .35), (AutomaticOnly, .35), (AlarmShown, .1)), new("room-shown", "off", .94), new("code", "sensor", .2)],
            Remedy = new(RemedyKind.Adjust, "Hang the room probe where room air reaches it; replace one that is off its table.", 8, 15, [Cautions.MakeSafe]),
        },
    ];
}
