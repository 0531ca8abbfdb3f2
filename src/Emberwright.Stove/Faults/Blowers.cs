using Emberwright.Stove.Controls;
using static Emberwright.Stove.Faults.Complaints;

namespace Emberwright.Stove.Faults;

/// <summary>Faults of the combustion blower and the room-air blower, apart from dirt.</summary>
internal static class Blowers
{
    public static IReadOnlyList<Fault> Faults { get; } =
    [
        new()
        {
            Id = "combustion-blower-slow",
            Name = "Combustion blower slow",
            Aliases = ["exhaust fan slow", "draft fan slow", "worn bearings", "blower tired"],
            Area = Area.CombustionBlower,
            BaseRatePercent = 3,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.BlowerSpeed, -0.3, 0.13)],
            Symptoms =
            [
                .. Says((StopsProving, .4), (NoFeed, .2), (LazyFlame, .2), (Noise, .12)),
                new("combustion-blower-run", "slow", .6), new("combustion-blower-run", "rough", .25), new("noise", "squeal", .35), new("blower-spin", "drags", .7),
                new("combustion-blower-alone", "slow", .85), new("onset", "gradual", .55),
            ],
            Remedy = new(RemedyKind.Replace, "Replace the combustion blower with its gasket after its speed on the test lead is low and the supply is right.",
                30, 220, [Cautions.MakeSafe, Cautions.Sealant], 0.5),
            ProvedBy = ["combustion-blower-alone", "combustion-blower-speed"],
        },
        new()
        {
            Id = "combustion-blower-seized",
            Name = "Combustion blower seized",
            Aliases = ["exhaust fan seized", "draft fan stuck", "combustion blower stuck"],
            Area = Area.CombustionBlower,
            BaseRatePercent = 2,
            Origin = Origins.Memory,
            Circuit = [new(ComponentIds.CombustionBlower, ComponentState.Stalled)],
            Symptoms =
            [
                .. Says((NoFeed, .5), (StopsProving, .1), (NoLight, .1), (SmokeOrSmell, .08), (AlarmShown, .12), (Noise, .05)),
                new("combustion-blower-run", "still", .9), new("noise", "hum", .6), new("combustion-blower-alone", "stalls", .93), new("blower-spin", "stuck", .9),
                new("onset", "sudden", .6), new("onset", "season-start", .25), new("code", "low-draught", .4), new("code", "blower-speed", .3),
            ],
            Remedy = new(RemedyKind.Replace, "Free the wheel and look for what binds it; a motor with a seized bearing is replaced with its gasket.",
                30, 220, [Cautions.MakeSafe, Cautions.Sealant], 0.5),
            ProvedBy = ["combustion-blower-alone", "look-blower-spin"],
        },
        new()
        {
            Id = "combustion-blower-dead",
            Name = "Combustion blower winding open",
            Aliases = ["exhaust fan dead", "draft fan dead", "combustion blower dead"],
            Area = Area.CombustionBlower,
            BaseRatePercent = 1.2,
            Origin = Origins.Memory,
            Circuit = [new(ComponentIds.CombustionBlower, ComponentState.Open)],
            Symptoms =
            [
                .. Says((NoFeed, .5), (StopsProving, .08), (NoLight, .08), (SmokeOrSmell, .08), (AlarmShown, .15)),
                new("combustion-blower-run", "still", .95), new("combustion-blower-alone", "dead", .95), new("onset", "sudden", .8),
                new("code", "low-draught", .4), new("code", "blower-speed", .3),
            ],
            Remedy = new(RemedyKind.Replace, "Replace the combustion blower with its gasket once its winding reads open, unplugged.",
                30, 220, [Cautions.MakeSafe, Cautions.Sealant], 0.5),
            ProvedBy = ["combustion-blower-ohms", "combustion-blower-alone"],
        },
        new()
        {
            Id = "combustion-blower-intermittent",
            Name = "Combustion blower binds when hot",
            Aliases = ["blower binding hot", "combustion blower intermittent", "stops when warm"],
            Area = Area.CombustionBlower,
            BaseRatePercent = 1,
            Origin = Origins.Memory,
            Symptoms =
            [
                .. Says((StopsLater, .65), (SmokeOrSmell, .1), (AlarmShown, .1), (StopsProving, .08)),
                new("combustion-blower-run", "stops-warm", .8), new("happens", "warm-only", .8), new("combustion-blower-alone", "binds-warm", .7),
                new("noise", "squeal", .3), new("blower-spin", "drags", .3),
            ],
            Remedy = new(RemedyKind.Replace, "Run it hot until it fails, then replace the combustion blower with its gasket.",
                30, 220, [Cautions.MakeSafe, Cautions.Hot], 0.5),
            ProvedBy = ["hot-run-to-failure", "combustion-blower-alone"],
        },
        new()
        {
            Id = "blower-wheel-rubbing",
            Name = "Combustion blower wheel loose or rubbing",
            Aliases = ["wheel loose on its shaft", "wheel rubs", "too much sealant in the housing"],
            Area = Area.CombustionBlower,
            BaseRatePercent = 0.8,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.Wheel, -0.3, 0.15)],
            Symptoms =
            [
                .. Says((Noise, .55), (LazyFlame, .15), (StopsProving, .1)),
                new("noise", "rattle", .5), new("noise", "grind", .3), new("blower-spin", "rubs", .9), new("onset", "after-work", .3),
            ],
            Remedy = new(RemedyKind.Adjust, "Set the wheel on its shaft, clear the housing of sealant and clinker, refit with a new gasket.",
                20, 8, [Cautions.MakeSafe, Cautions.Sealant, Cautions.Fibre]),
        },
        new()
        {
            Id = "speed-sensor-bad",
            Name = "Blower speed sensor bad",
            Aliases = ["speed sensor", "hall sensor", "tachometer of the blower"],
            Area = Area.CombustionBlower,
            BaseRatePercent = 1.2,
            Origin = Origins.Memory,
            Patterns = PatternIds.SpeedSensor,
            Circuit = [new(ComponentIds.SpeedSensor, ComponentState.Open)],
            Symptoms =
            [
                .. Says((AlarmShown, .7), (StopsProving, .1)),
                new("code", "blower-speed", .85), new("combustion-blower-run", "full", .8), new("speed-pulses", "none", .95),
            ],
            Remedy = new(RemedyKind.Replace, "Clean and seat the speed sensor, mend its lead; replace it if no pulses come.", 15, 35, [Cautions.MakeSafe], 0.4),
            ProvedBy = ["speed-sensor-pulses"],
        },
        new()
        {
            Id = "run-capacitor-weak",
            Name = "Run capacitor weak",
            Aliases = ["capacitor", "run capacitor"],
            Area = Area.CombustionBlower,
            BaseRatePercent = 0.8,
            Origin = Origins.Memory,
            Patterns = [PatternIds.Sealed, PatternIds.Hydronic],
            Shifts = [new(Parameter.BlowerSpeed, -0.2, 0.12)],
            Circuit = [new(ComponentIds.RunCapacitor, ComponentState.Drifted, 0.5)],
            Symptoms =
            [
                .. Says((AlarmShown, .3), (StopsProving, .2), (NoFeed, .15), (LazyFlame, .15)),
                new("combustion-blower-run", "slow", .5), new("capacitance", "low", .95), new("noise", "hum", .5), new("combustion-blower-alone", "slow", .6), new("blower-spin", "free", .95),
            ],
            Remedy = new(RemedyKind.Replace, "Replace the run capacitor by one of the same capacitance, at least the same voltage, and the same class.", 12, 12,
                [Cautions.MakeSafe, Cautions.Discharge], 0.7),
            ProvedBy = ["run-capacitor-capacitance"],
        },
        new()
        {
            Id = "room-blower-dead",
            Name = "Room-air blower dead",
            Aliases = ["room-air blower dead/dirty", "convection fan dead", "distribution fan dead", "room-air blower dead"],
            Area = Area.RoomAirBlower,
            BaseRatePercent = 2,
            Origin = Origins.Memory,
            Patterns = PatternIds.RoomAirBlower,
            Shifts = [new(Parameter.RoomAir, -1.6, 0.4)],
            Circuit = [new(ComponentIds.RoomAirBlower, ComponentState.Open)],
            Symptoms =
            [
                .. Says((LittleHeat, .35), (TripsLimit, .4), (StopsLater, .15)),
                new("room-blower-run", "still", .95), new("room-blower-alone", "dead", .95), new("warm-air-change", "none", .85), new("code", "over-temperature", .4),
                new("disc-click", "clicks", .4), new("onset", "sudden", .6),
            ],
            Remedy = new(RemedyKind.Replace, "Replace the room-air blower once its winding reads open, unplugged.", 25, 180, [Cautions.MakeSafe], 0.4),
            ProvedBy = ["room-blower-ohms", "room-blower-alone"],
        },
        new()
        {
            Id = "room-blower-slow",
            Name = "Room-air blower slow or bearings worn",
            Aliases = ["convection fan slow", "room-air blower bearings", "squealing fan"],
            Area = Area.RoomAirBlower,
            BaseRatePercent = 1.5,
            Origin = Origins.Memory,
            Patterns = PatternIds.RoomAirBlower,
            Shifts = [new(Parameter.RoomAir, -0.6, 0.25)],
            Symptoms =
            [
                .. Says((Noise, .35), (LittleHeat, .25), (TripsLimit, .2), (StopsLater, .08)),
                new("room-blower-run", "slow", .55), new("room-blower-run", "rough", .35), new("room-blower-alone", "slow", .85), new("noise", "squeal", .6),
                new("warm-air-change", "weaker", .6),
            ],
            Remedy = new(RemedyKind.Replace, "Oil what may be oiled; a blower that still drags is replaced.", 25, 180, [Cautions.MakeSafe], 0.4),
            ProvedBy = ["room-blower-alone", "look-room-blower"],
        },
        new()
        {
            Id = "room-blower-disc-open",
            Name = "Room-air blower's disc never closes",
            Aliases = ["room-air disc", "fan disc", "blower disc"],
            Area = Area.RoomAirBlower,
            BaseRatePercent = 1,
            Origin = Origins.Memory,
            Patterns = PatternIds.AirDamper,
            Shifts = [new(Parameter.RoomAir, -1.6, 0.4)],
            Circuit = [new(ComponentIds.RoomAirDisc, ComponentState.Open)],
            Symptoms =
            [
                .. Says((LittleHeat, .4), (TripsLimit, .35), (StopsLater, .15)),
                new("room-blower-run", "still", .9), new("room-blower-alone", "turns", .95), new("warm-air-change", "none", .8),
            ],
            Remedy = new(RemedyKind.Replace, "Replace the room-air disc by one of the same temperature.", 12, 20, [Cautions.MakeSafe]),
            ProvedBy = ["room-air-disc-voltage"],
        },
    ];
}
