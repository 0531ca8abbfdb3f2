using Emberwright.Stove.Controls;
using static Emberwright.Stove.Faults.Complaints;

namespace Emberwright.Stove.Faults;

/// <summary>Faults of the water side, and of the agitator, each of one pattern only.</summary>
internal static class Water
{
    private static readonly IReadOnlyList<string> Hydronic = [PatternIds.Hydronic];

    public static IReadOnlyList<Fault> Faults { get; } =
    [
        new()
        {
            Id = "pump-seized",
            Name = "Circulating pump seized",
            Aliases = ["pump seized", "hydronic pump seized", "circulating pump stuck", "pump rotor stuck"],
            Area = Area.Water,
            BaseRatePercent = 4,
            Origin = Origins.Memory,
            Patterns = Hydronic,
            Circuit = [new(ComponentIds.CirculatingPump, ComponentState.Stalled)],
            Symptoms =
            [
                .. Says((Boils, .7), (TripsLimit, .2), (AlarmShown, .05)), new("water-heat", "hot", .9),
                new("pump-feel", "still", .75), new("pump-feel", "hums", .2), new("onset", "season-start", .7), new("noise", "bang", .6), new("return-pipe", "cold", .9),
                new("safety-thermostat-button", "up", .6), new("code", "over-temperature", .7),
            ],
            Remedy = new(RemedyKind.Adjust, "Isolate, open the end screw, turn the rotor free; watch current and return temperature. A gritty rotor that sticks again is replaced.",
                15, 0, [Cautions.Water, Cautions.MakeSafe, Cautions.FindWhy]),
        },
        new()
        {
            Id = "pump-dead",
            Name = "Circulating pump winding open",
            Aliases = ["pump dead", "circulating pump dead"],
            Area = Area.Water,
            BaseRatePercent = 1.5,
            Origin = Origins.Memory,
            Patterns = Hydronic,
            Circuit = [new(ComponentIds.CirculatingPump, ComponentState.Open)],
            Symptoms = [.. Says((Boils, .7), (TripsLimit, .2)), new("water-heat", "hot", .9), new("pump-feel", "still", .95), new("noise", "bang", .6), new("return-pipe", "cold", .9), new("onset", "sudden", .6), new("code", "over-temperature", .7)],
            Remedy = new(RemedyKind.Replace, "Replace the pump once it has its voltage and draws no current.", 45, 160, [Cautions.MakeSafe, Cautions.Water, Cautions.Licensed], 0.2),
            ProvedBy = ["pump-current"],
        },
        new()
        {
            Id = "pump-output-dead",
            Name = "Board gives the pump no voltage",
            Aliases = ["pump output", "board output dead (pump)"],
            Area = Area.Electrical,
            BaseRatePercent = 0.8,
            Origin = Origins.Memory,
            Patterns = Hydronic,
            Circuit = [new(ComponentIds.PumpOutput, ComponentState.Open)],
            Symptoms = [.. Says((Boils, .7), (TripsLimit, .2)), new("water-heat", "hot", .9), new("pump-feel", "still", .95), new("return-pipe", "cold", .9), new("noise", "bang", .5), new("board-look", "scorched", .2), new("code", "over-temperature", .7)],
            Remedy = new(RemedyKind.Replace, "Save the parameters, replace the board once its pump output stays at 0 V while it calls.", 30, 280, [Cautions.MakeSafe], 0.1),
            ProvedBy = ["pump-output-voltage"],
        },
        new()
        {
            Id = "air-lock",
            Name = "Air lock in the heating circuit",
            Aliases = ["air lock", "hydronic air lock", "air in the pump", "air in the radiators"],
            Area = Area.Water,
            BaseRatePercent = 4,
            Origin = Origins.Memory,
            Patterns = Hydronic,
            Symptoms =
            [
                .. Says((Boils, .8), (TripsLimit, .1), (LittleHeat, .05)), new("water-heat", "hot", .85),
                new("pump-feel", "gurgles", .8), new("work-done", "plumbing", .6), new("onset", "after-work", .6), new("noise", "gurgle", .65), new("return-pipe", "cold", .9), new("bleed", "hiss", .93),
            ],
            Remedy = new(RemedyKind.Adjust, "Cooled: bleed high points and pump, refill to the cold pressure, run and bleed again.", 20, 0, [Cautions.Water]),
        },
        new()
        {
            Id = "water-valve-shut",
            Name = "Valve shut or strainer blocked in the circuit",
            Aliases = ["valves shut", "strainer blocked", "radiator valves shut", "return valve shut"],
            Area = Area.Water,
            BaseRatePercent = 2,
            Origin = Origins.Memory,
            Patterns = Hydronic,
            Symptoms = [.. Says((Boils, .75), (TripsLimit, .12), (LittleHeat, .08)), new("water-heat", "hot", .85), new("water-valves", "shut", .93), new("work-done", "plumbing", .55), new("onset", "after-work", .55), new("return-pipe", "cold", .85), new("pump-feel", "flow", .3)],
            Remedy = new(RemedyKind.Adjust, "Open the valves, clean the strainer.", 12, 0, [Cautions.Water]),
        },
        new()
        {
            Id = "return-valve-bad",
            Name = "Return-temperature valve stuck",
            Aliases = ["return valve", "anti-condensation valve", "mixing valve stuck"],
            Area = Area.Water,
            BaseRatePercent = 1.2,
            Origin = Origins.Memory,
            Patterns = Hydronic,
            Symptoms = [.. Says((LittleHeat, .35), (Boils, .35), (LazyFlame, .05)), new("water-heat", "hot", .4), new("return-valve", "stuck", .92), new("return-pipe", "cold", .6), new("jacket", "tarry", .5)],
            Remedy = new(RemedyKind.Replace, "Replace the valve's cartridge.", 40, 60, [Cautions.MakeSafe, Cautions.Water, Cautions.Licensed], 0.2),
            ProvedBy = ["return-valve-temperatures"],
        },
        new()
        {
            Id = "expansion-vessel-flat",
            Name = "Expansion vessel flat",
            Aliases = ["expansion vessel", "vessel lost its precharge", "relief valve drips"],
            Area = Area.Water,
            BaseRatePercent = 2,
            Origin = Origins.Memory,
            Patterns = Hydronic,
            Symptoms = [.. Says((AlarmShown, .4), (Boils, .15), (Noise, .1)), new("relief", "drips", .8), new("code", "water-pressure", .75), new("pressure-swing", "wide", .92), new("vessel-tap", "water", .4)],
            Remedy = new(RemedyKind.Adjust, "Drained: pump the vessel to its precharge; replace one whose valve gives water.", 35, 15, [Cautions.Water, Cautions.Licensed]),
        },
        new()
        {
            Id = "water-pressure-low",
            Name = "System pressure low",
            Aliases = ["water pressure low", "low system pressure", "pressure lost"],
            Area = Area.Water,
            BaseRatePercent = 2,
            Origin = Origins.Memory,
            Patterns = Hydronic,
            Symptoms = [.. Says((AlarmShown, .65), (Boils, .15)), new("code", "water-pressure", .9), new("water-gauge", "low", .95), new("work-done", "plumbing", .2)],
            Remedy = new(RemedyKind.Adjust, "Fill to the cold pressure, look for where the water went, hold the pressure twenty minutes.", 15, 0, [Cautions.Water]),
        },
        new()
        {
            Id = "water-jacket-leak",
            Name = "Water jacket leaking",
            Aliases = ["water-jacket leak", "jacket leak", "boiler leaking"],
            Area = Area.Water,
            BaseRatePercent = 0.7,
            Origin = Origins.Memory,
            Patterns = Hydronic,
            Symptoms = [.. Says((AlarmShown, .4), (SmokeOrSmell, .1), (NoLight, .1)), new("water-leak", "firebox", .85), new("code", "water-pressure", .7), new("water-gauge", "low", .7), new("hold-pressure", "falls", .92)],
            Remedy = new(RemedyKind.Advise, "Out of use: no fire on a leaking jacket. Repair or replacement is the maker's.", 15, 0, [Cautions.Water]),
            SafetyStop = "water-jacket-leak",
        },
        new()
        {
            Id = "safety-thermostat-tripped",
            Name = "Safety thermostat tripped",
            Aliases = ["safety thermostat", "water over-temperature", "95 degree thermostat"],
            Area = Area.Water,
            BaseRatePercent = 3,
            Origin = Origins.Memory,
            Patterns = Hydronic,
            Circuit = [new(ComponentIds.SafetyThermostat, ComponentState.Open)],
            Symptoms = [.. Says((TripsLimit, .3), (NoFeed, .25), (AlarmShown, .25), (Boils, .15)), new("water-heat", "hot", .5), new("safety-thermostat-button", "up", .96), new("code", "over-temperature", .7)],
            CausedBy = [new("pump-seized", 12), new("pump-dead", 12), new("pump-output-dead", 12), new("air-lock", 10), new("water-valve-shut", 10), new("return-valve-bad", 6), new("water-probe-bad", 4)],
            Remedy = new(RemedyKind.Reset, "Prove that the water circulates first; then press the button and watch the water temperature on a test fire.", 3, 0, [Cautions.FindWhy, Cautions.NoBridge, Cautions.Water]),
        },
        new()
        {
            Id = "water-probe-bad",
            Name = "Water probe reads wrong",
            Aliases = ["water probe", "boiler probe", "water sensor"],
            Area = Area.Water,
            BaseRatePercent = 1,
            Origin = Origins.Memory,
            Patterns = Hydronic,
            Circuit = [new(ComponentIds.WaterProbe, ComponentState.Drifted, 1.3)],
            Symptoms = [.. Says((LittleHeat, .3), (Boils, .3), (AlarmShown, .25)), new("water-shown", "off", .94), new("code", "sensor", .3)],
            Remedy = new(RemedyKind.Replace, "Seat the probe in its pocket; replace one that is off its table.", 12, 25, [Cautions.MakeSafe, Cautions.Water], 0.4),
            ProvedBy = ["water-probe-ohms"],
        },
    ];
}
