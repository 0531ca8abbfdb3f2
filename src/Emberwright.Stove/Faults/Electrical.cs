using Emberwright.Stove.Controls;
using static Emberwright.Stove.Faults.Complaints;

namespace Emberwright.Stove.Faults;

/// <summary>Faults of supply, board, wiring and what calls for heat.</summary>
internal static class Electrical
{
    public static IReadOnlyList<Fault> Faults { get; } =
    [
        new()
        {
            Id = "supply-dead",
            Name = "No supply at the socket",
            Aliases = ["breaker off", "dead socket", "unplugged", "residual-current device tripped"],
            Area = Area.Electrical,
            BaseRatePercent = 2,
            Origin = Origins.Memory,
            Circuit = [new(ComponentIds.Supply, ComponentState.Open)],
            Symptoms = [.. Says((Dead, .97)), new("lamps", "dark", .98), new("socket-lamp", "dead", .95), new("onset", "sudden", .8), new("breaker", "off", .6)],
            Remedy = new(RemedyKind.Adjust, "Find why breaker or residual-current device tripped, then switch it on; a dead socket is the electrician's.", 6, 0, [Cautions.Live, Cautions.Licensed]),
        },
        new()
        {
            Id = "fuse-blown",
            Name = "Fuse blown",
            Aliases = ["board fuse", "fuse"],
            Area = Area.Electrical,
            BaseRatePercent = 2,
            Origin = Origins.Memory,
            Circuit = [new(ComponentIds.Fuse, ComponentState.Open)],
            Symptoms = [.. Says((Dead, .95)), new("lamps", "dark", .95), new("fuse", "blown", .97), new("onset", "sudden", .8), new("power", "surge", .2)],
            CausedBy = [new("igniter-to-earth", 15), new("wiring-scorched", 10), new("combustion-blower-seized", 3)],
            Remedy = new(RemedyKind.Replace, "Find what blew it (igniter and blower to earth first), then a fuse of the same rating and kind.", 6, 2, [Cautions.MakeSafe, Cautions.FindWhy]),
            ProvedBy = ["look-fuse", "fuse-ohms"],
        },
        new()
        {
            Id = "fuse-wrong",
            Name = "Wrong fuse fitted",
            Aliases = ["wrong fuse", "fuse too large", "fuse bridged with foil"],
            Area = Area.Electrical,
            BaseRatePercent = 0.4,
            Origin = Origins.Memory,
            Symptoms = [.. Says((Dead, .15), (SmokeOrSmell, .15), (Due, .4)), new("fuse", "wrong", .96), new("smell", "hot-electrical", .2)],
            Remedy = new(RemedyKind.Replace, "The right fuse by the label; look for scorched wiring.", 6, 2, [Cautions.MakeSafe]),
            ProvedBy = ["look-fuse"],
            SafetyStop = "wrong-fuse",
        },
        new()
        {
            Id = "low-supply",
            Name = "Low supply voltage",
            Aliases = ["supply voltage low", "low voltage", "thin extension lead", "low supply voltage at the stove"],
            Area = Area.Electrical,
            BaseRatePercent = 1.5,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.Supply, -0.15, 0.05)],
            Symptoms =
            [
                .. Says((NoLight, .35), (StopsProving, .25), (NoFeed, .1), (StopsLater, .08), (LazyFlame, .08)), new("supply-idle", "low", .4), new("supply-loaded", "low", .9), new("panel-volts", "low", .3),
                new("happens", "evenings-load", .7), new("own-socket", "shared", .7), new("lead", "thin-or-warm", .65), new("combustion-blower-run", "slow", .5), new("igniter-glow", "dull", .5),
                new("light-dims", "dims", .6),
            ],
            Remedy = new(RemedyKind.Advise, "A socket of its own without an extension lead; low voltage at the panel is the supplier's.", 6, 0, [Cautions.Licensed]),
            ProvedBy = ["supply-voltage-loaded"],
        },
        new()
        {
            Id = "connector-loose",
            Name = "Loose connector in the feed chain",
            Aliases = ["loose connector", "loose spade", "burnt connector"],
            Area = Area.Electrical,
            BaseRatePercent = 2,
            Origin = Origins.Memory,
            Circuit = [new(ComponentIds.FeedConnector, ComponentState.Open)],
            Symptoms =
            [
                .. Says((NoFeed, .6), (StopsLater, .15), (StopsProving, .1), (Dead, .05)),
                new("connectors", "loose", .8), new("connectors", "scorched", .12), new("happens", "at-random", .5), new("onset", "after-work", .3), new("wiggle", "changes", .75),
            ],
            Remedy = new(RemedyKind.Adjust, "Crimp and push home; cut off what is scorched and renew it.", 10, 3, [Cautions.MakeSafe]),
        },
        new()
        {
            Id = "blower-connector-loose",
            Name = "Loose connector at the combustion blower",
            Aliases = ["loose connector", "blower plug loose"],
            Area = Area.Electrical,
            BaseRatePercent = 0.8,
            Origin = Origins.Memory,
            Circuit = [new(ComponentIds.CombustionConnector, ComponentState.Open)],
            Symptoms =
            [
                .. Says((NoFeed, .5), (StopsLater, .15), (SmokeOrSmell, .08), (AlarmShown, .1)),
                new("combustion-blower-run", "still", .85), new("combustion-blower-alone", "turns", .97), new("connectors", "loose", .75), new("happens", "at-random", .4), new("wiggle", "changes", .7),
            ],
            Remedy = new(RemedyKind.Adjust, "Crimp and push home; cut off what is scorched and renew it.", 10, 3, [Cautions.MakeSafe]),
        },
        new()
        {
            Id = "wiring-scorched",
            Name = "Wiring scorched or rubbed through",
            Aliases = ["scorched wiring", "chewed wiring", "insulation burnt"],
            Area = Area.Electrical,
            BaseRatePercent = 0.7,
            Origin = Origins.Memory,
            Circuit = [new(ComponentIds.FeedConnector, ComponentState.LeakingToEarth, LeakOhm: 2000)],
            Symptoms =
            [
                .. Says((Dead, .4), (SmokeOrSmell, .2), (NoFeed, .2)),
                new("connectors", "scorched", .85), new("earth-ohms", "wiring", .8), new("smell", "hot-electrical", .7), new("breaker", "trips", .4), new("fuse", "blown", .35),
            ],
            Remedy = new(RemedyKind.Replace, "Renew the scorched run with heat-proof wire of the same section, away from hot sheet.", 30, 15, [Cautions.MakeSafe]),
            ProvedBy = ["look-connectors"],
            SafetyStop = "scorched-wiring",
        },
        new()
        {
            Id = "wires-reversed",
            Name = "Wires changed over after a repair",
            Aliases = ["reversed wiring after a repair", "wires swapped", "wrong plug"],
            Area = Area.Electrical,
            BaseRatePercent = 0.8,
            Origin = Origins.Memory,
            Symptoms =
            [
                .. Says((NoFeed, .2), (NoLight, .15), (AlarmShown, .25), (Dead, .1), (StopsProving, .15)),
                new("wiring-order", "changed", .94), new("onset", "after-work", .92), new("work-done", "repair", .9),
            ],
            Remedy = new(RemedyKind.Adjust, "Put the wires where the diagram has them.", 12, 0, [Cautions.MakeSafe]),
        },
        new()
        {
            Id = "feed-output-dead",
            Name = "Board output for the feed dead",
            Aliases = ["board output dead", "board dead (feed)", "feed relay", "triac dead"],
            Area = Area.Electrical,
            BaseRatePercent = 1.2,
            Origin = Origins.Memory,
            Circuit = [new(ComponentIds.FeedOutput, ComponentState.Open)],
            Symptoms = [.. Says((NoFeed, .9)), new("feed-pulse", "still", .95), new("feed-motor-alone", "turns", .97), new("board-look", "scorched", .25), new("power", "surge", .25), new("onset", "sudden", .8)],
            Remedy = new(RemedyKind.Replace, "Save the parameters, replace the board once its loaded output stays at 0 V while it calls and the chain behind it is closed.",
                30, 280, [Cautions.MakeSafe], 0.1),
            ProvedBy = ["feed-output-voltage"],
        },
        new()
        {
            Id = "feed-output-stuck-on",
            Name = "Board output for the feed stuck on",
            Aliases = ["output stuck on", "triac shorted", "feeds all the time", "overrun"],
            Area = Area.Electrical,
            BaseRatePercent = 0.6,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.Feed, 0.8, 0.25)],
            Circuit = [new(ComponentIds.FeedOutput, ComponentState.Shorted)],
            Symptoms =
            [
                .. Says((FierceFlame, .5), (WillNotStop, .35), (TripsLimit, .05)),
                new("feed-pulse", "always", .94), new("pot-content", "heap", .6), new("feed-drop", "too-much", .9), new("power", "surge", .2),
            ],
            Remedy = new(RemedyKind.Replace, "Unplug when it is out; save the parameters and replace the board.", 30, 280, [Cautions.MakeSafe], 0.1),
            ProvedBy = ["feed-output-voltage"],
            SafetyStop = "feed-will-not-stop",
        },
        new()
        {
            Id = "combustion-output-dead",
            Name = "Board output for the combustion blower dead",
            Aliases = ["board output dead (blower)", "exhaust fan output"],
            Area = Area.Electrical,
            BaseRatePercent = 0.8,
            Origin = Origins.Memory,
            Circuit = [new(ComponentIds.CombustionOutput, ComponentState.Open)],
            Symptoms =
            [
                .. Says((NoFeed, .55), (AlarmShown, .2), (SmokeOrSmell, .08)),
                new("combustion-blower-run", "still", .95), new("combustion-blower-alone", "turns", .97), new("board-look", "scorched", .25), new("power", "surge", .25), new("code", "low-draught", .3),
            ],
            Remedy = new(RemedyKind.Replace, "Save the parameters, replace the board once its loaded output stays at 0 V while it calls.", 30, 280, [Cautions.MakeSafe], 0.1),
            ProvedBy = ["combustion-output-voltage"],
        },
        new()
        {
            Id = "room-air-output-dead",
            Name = "Board output for the room-air blower dead",
            Aliases = ["board output dead (room-air blower)"],
            Area = Area.Electrical,
            BaseRatePercent = 0.5,
            Origin = Origins.Memory,
            Patterns = PatternIds.RoomAirBlower,
            Shifts = [new(Parameter.RoomAir, -1.6, 0.4)],
            Circuit = [new(ComponentIds.RoomAirOutput, ComponentState.Open)],
            Symptoms =
            [
                .. Says((LittleHeat, .4), (TripsLimit, .4), (StopsLater, .1)),
                new("room-blower-run", "still", .95), new("room-blower-alone", "turns", .97), new("warm-air-change", "none", .85), new("board-look", "scorched", .2),
            ],
            Remedy = new(RemedyKind.Replace, "Save the parameters, replace the board once its loaded output stays at 0 V while it calls.", 30, 280, [Cautions.MakeSafe], 0.1),
            ProvedBy = ["room-air-output-voltage"],
        },
        new()
        {
            Id = "board-dead",
            Name = "Control board dead",
            Aliases = ["board dead", "control board", "display dead"],
            Area = Area.Electrical,
            BaseRatePercent = 1.2,
            Origin = Origins.Memory,
            Circuit = [new(ComponentIds.Board, ComponentState.Open)],
            Symptoms = [.. Says((Dead, .92)), new("lamps", "dark", .9), new("board-look", "scorched", .3), new("power", "surge", .35), new("onset", "sudden", .85), new("fuse", "whole", .9)],
            Remedy = new(RemedyKind.Replace, "Save the parameters if they can still be read; replace the board once supply and fuse are proved.", 30, 280, [Cautions.MakeSafe], 0.1),
            ProvedBy = ["board-supply-voltage"],
        },
        new()
        {
            Id = "thermostat-open",
            Name = "Thermostat circuit open",
            Aliases = ["thermostat open", "thermostat cable", "thermostat battery", "thermostat circuit open"],
            Area = Area.Electrical,
            BaseRatePercent = 1.5,
            Origin = Origins.Memory,
            Circuit = [new(ComponentIds.Thermostat, ComponentState.Open)],
            Symptoms =
            [
                .. Says((AutomaticOnly, .6), (Dead, .25)),
                new("manual-works", "manual-only", .9), new("thermostat-joined", "starts", .94), new("thermostat-cable", "damaged", .45), new("thermostat-battery", "flat", .4), new("happens", "automatic-only", .8),
            ],
            Remedy = new(RemedyKind.Adjust, "New batteries, mend the cable or the thermostat; remove the joining wire.", 20, 20, [Cautions.LowVoltagePair, Cautions.StartsItself]),
        },
        new()
        {
            Id = "no-demand",
            Name = "No demand: the stove is not asked to run",
            Aliases = ["no demand", "timer", "room already warm", "customer setting", "standby"],
            Area = Area.Site,
            BaseRatePercent = 2,
            Origin = Origins.Memory,
            Symptoms = [.. Says((AutomaticOnly, .4), (Dead, .4), (NoFeed, .05)), new("calling", "no", .93), new("lamps", "normal", .9), new("manual-works", "manual-only", .6)],
            Remedy = new(RemedyKind.Advise, "Set thermostat, timer or mode with the customer and write it down for them.", 5, 0, [Cautions.StartsItself]),
        },
        new()
        {
            Id = "settings-wrong",
            Name = "Wrong parameter set or setting",
            Aliases = ["wrong parameter set", "customer setting", "dip switch", "wrong fuel setting"],
            Area = Area.Electrical,
            BaseRatePercent = 1.2,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.Feed, 0.2, 0.2), new(Parameter.BlowerSpeed, -0.12, 0.1)],
            Symptoms =
            [
                .. Says((LazyFlame, .3), (FierceFlame, .2), (StopsProving, .15), (LittleHeat, .1), (EatsFuel, .1)),
                new("settings", "changed", .93), new("onset", "after-work", .55), new("work-done", "repair", .35),
            ],
            Remedy = new(RemedyKind.Adjust, "Set the parameters to the card's values and note what they were; watch the first fire with the instrument on.", 10, 0, [Cautions.Monoxide, Cautions.Hot]),
        },
        new()
        {
            Id = "wrong-part",
            Name = "Wrong part fitted",
            Aliases = ["wrong part", "wrong motor speed", "wrong disc temperature"],
            Area = Area.Electrical,
            BaseRatePercent = 0.6,
            Origin = Origins.Memory,
            Shifts = [new(Parameter.Feed, 0.5, 0.3)],
            Symptoms =
            [
                .. Says((FierceFlame, .3), (StopsProving, .2), (NoLight, .1), (TripsLimit, .1), (LazyFlame, .1)),
                new("fitted-part", "wrong", .93), new("onset", "after-work", .85), new("work-done", "repair", .8),
            ],
            Remedy = new(RemedyKind.Replace, "Fit the part whose rotation, speed, temperature or pressure the card names.", 25, 90, [Cautions.MakeSafe], 0.3),
            ProvedBy = ["compare-parts"],
        },
        new()
        {
            Id = "backup-supply-fault",
            Name = "Backup supply faulty or its waveform unsuitable",
            Aliases = ["battery/backup fault", "battery dead", "unsuitable backup waveform", "inverter"],
            Area = Area.Electrical,
            BaseRatePercent = 0.5,
            Origin = Origins.Memory,
            Symptoms =
            [
                .. Says((PowerCutSmoke, .45), (Noise, .15), (NoLight, .1), (StopsLater, .15)),
                new("backup", "unsuitable", .6), new("backup", "dead", .37), new("power", "cut", .8), new("noise", "hum", .4),
            ],
            Remedy = new(RemedyKind.Advise, "A backup supply with a sine waveform and a sound battery, tested with the stove burning low.", 15, 0, [Cautions.Live]),
        },
    ];
}
