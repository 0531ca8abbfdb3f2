using Emberwright.Reports.Pictures.Profile;
using Emberwright.Reports.Pictures.Timeline;
using Emberwright.Reports.Pictures.Wiring;

namespace Emberwright.Reports.Tests;

/// <summary>Invented stoves and days that the tests draw.</summary>
internal static class Samples
{
    public static ProfileInput Choked { get; } = new()
    {
        Title = "Pressure profile, as found at high burn",
        Stations =
        [
            new("firebox", "firebox", new(-26, -22, -18)) { ShortName = "fire", ReadingPa = -7, LastPa = -21, PredictedPa = -7 },
            new("blower-inlet", "blower inlet", new(-72, -66, -60)) { ShortName = "blower", ReadingPa = -79, LastPa = -65, PredictedPa = -79 },
            new("collar", "collar", new(-2, 1, 4)) { ShortName = "vent", ReadingPa = -5, LastPa = 1, PredictedPa = -5 },
        ],
        Parts = ["inlet, pot", "ash passages", "blower", "vent"],
        Outdoors = new(-2, 0, 2),
        Thresholds = [new("firebox", -10, "vacuum switch", "opens at")],
        PredictionCaption = "if ash passages are half blocked",
    };

    public static ProfileInput Cleaned { get; } = Choked with
    {
        Title = "Pressure profile, as left at high burn",
        Moment = Moment.Left,
        PredictionCaption = null,
        Stations =
        [
            Choked.Stations[0] with { ReadingPa = -21, PredictedPa = null },
            Choked.Stations[1] with { ReadingPa = -65, PredictedPa = null },
            Choked.Stations[2] with { ReadingPa = 1, PredictedPa = null },
        ],
    };

    public static ProfileInput OnePort { get; } = new()
    {
        Title = "Pressure profile, one port",
        Stations = [new("firebox", "firebox", new(-34, -29, -24)) { ReadingPa = -41 }],
        Parts = ["inlet, pot", "ash passages, blower, vent"],
        Unit = Pictures.PressureUnit.InchOfWater,
        SecondUnit = Pictures.PressureUnit.Pascal,
    };

    public static ProfileInput NestInCap { get; } = new()
    {
        Title = "Pressure profile, vent blocked, five ports, one not read",
        Stations =
        [
            new("inlet", "air inlet", new(-8, -6, -4)) { ReadingPa = -3.2 },
            new("firebox", "firebox", new(-26, -22, -18)) { ReadingPa = -13 },
            new("ash-chamber", "ash chamber", new(-60, -52, -45)),
            new("blower-inlet", "blower inlet", new(-72, -66, -60)) { ReadingPa = -44 },
            new("collar", "vent collar", new(-2, 1, 4)) { ReadingPa = 39 },
        ],
        Parts = ["inlet hose", "burn pot", "exchanger", "ash passages", "combustion blower", "vent"],
        Thresholds = [new("blower-inlet", -30, "vacuum switch", "opens at")],
        PredictionCaption = "if the cap is three quarters blocked",
    };

    public static ProfileInput Calm { get; } = new()
    {
        Title = "Pressure profile, blower off",
        Stations =
        [
            new("firebox", "firebox", new(-3, -1.5, 0)) { ReadingPa = -1.2 },
            new("blower-inlet", "blower inlet", new(-3, -1.6, 0)) { ReadingPa = -2 },
            new("collar", "collar", new(-5, -3, -1)) { ReadingPa = -2.8 },
        ],
        Parts = ["inlet, pot", "ash passages", "blower", "vent"],
    };

    public static WiringInput FeedCircuit { get; } = new()
    {
        Title = "Feed circuit while the board calls for fuel",
        SupplyV = 120,
        Live = true,
        VoltsTo = "volts to neutral, point 5",
        Chain =
        [
            new WiringPoint("tp1", "1") { ExpectV = 120, ReadV = 121 },
            new WiringPart("high-limit", "High-limit disc", PartKind.Switch) { Detail = "reset by hand · closed" },
            new WiringPoint("tp2", "2") { ExpectV = 120, ReadV = 121 },
            new WiringPart("lid", "Lid switch", PartKind.Switch) { Detail = "lid down · closed" },
            new WiringPoint("tp3", "3") { ExpectV = 120, ReadV = 120 },
            new WiringPart("vacuum", "Vacuum switch", PartKind.Switch) { Detail = "needs −10 Pa, has −7", State = PartState.Open },
            new WiringPoint("tp4", "4") { ExpectV = 0, ReadV = 0.4 },
            new WiringPart("feed-motor", "Feed motor", PartKind.Motor) { Detail = "winding 92 Ω, plug out", ExpectOhms = "85–100 Ω", ReadOhms = "92 Ω" },
            new WiringPoint("tp5", "5") { Note = "neutral", ExpectV = 0 },
        ],
        Meter = new("tp4", "tp5", "0.4", "volts AC", "0", "120 would clear the switch and point at the motor."),
    };

    public static WiringInput PlugOut { get; } = FeedCircuit with { Title = "Feed circuit, plug out", Live = false, Meter = null };

    public static WiringInput LongChain230 { get; } = new()
    {
        Title = "Igniter circuit, 230 V, nothing read yet below point 3",
        SupplyV = 230,
        Live = true,
        Chain =
        [
            new WiringPoint("l", "L") { ExpectV = 230, ReadV = 228 },
            new WiringPart("fuse", "Fuse 3.15 A", PartKind.Fuse) { Detail = "behind the rear panel" },
            new WiringPoint("a", "1") { ExpectV = 230, ReadV = 229 },
            new WiringPart("plug", "Board plug X4", PartKind.Connector) { State = PartState.Unknown },
            new WiringPoint("b", "2") { ExpectV = 230, ReadV = 171 },
            new WiringPart("thermostat", "Over-temperature thermostat of the hopper wall", PartKind.Switch) { Detail = "resets by itself when the hopper has cooled below 60 °C", State = PartState.Unknown },
            new WiringPoint("c", "3") { ExpectV = 230 },
            new WiringPart("igniter", "Igniter", PartKind.Heater) { Detail = "130–210 Ω cold" },
            new WiringPoint("n", "N") { Note = "neutral", ExpectV = 0, ReadV = 0 },
        ],
        Meter = new("c", "n", null, "volts AC", "230", "Nothing here with 228 at L means an open between."),
    };

    public static TimelineInput Start { get; } = new("Start, computed and seen",
    [
        new("feed", "first pellets", 0.3, 0.5, 0.8, 0.5),
        new("flame", "first flame", 3, 4.5, 7, 6),
        new("proof", "fire proved by the disc", 9, 13, 19, 23.5),
        new("room-air", "room-air blower starts", 10, 14, 20),
        new("high", "steady on high", 22, 28, 36),
    ]);
}
