using static Emberwright.Stove.Controls.ComponentIds;

namespace Emberwright.Stove.Controls.Wirings;

/// <summary>
/// The thermocouple-proved top-feed freestanding stove, 120 V 60 Hz: vacuum switch, high-limit disc and lid switch in series
/// with the feed; a type K thermocouple proves the fire at the board. All values are common practice, no source.
/// </summary>
public static class ThermocoupleFreestandingWiring
{
    /// <summary>Builds the wiring.</summary>
    public static Wiring Create() => new WiringPlan("thermocouple-freestanding", 120, 60)
        .Feed(OutputKind.Triac, [Parts.Vacuum, Parts.HighLimit(ResetKind.Automatic), Parts.Lid],
            Parts.Motor(FeedMotor, "Feed motor", 120, 52, 0.40, 0.62))
        .Load("igniter", "igniter", BoardCalls.Igniter, OutputKind.Relay, Parts.Wire(120, 400))
        .Load("combustion", "combustion blower", BoardCalls.CombustionBlower, OutputKind.PhaseControlled,
            Parts.Motor(CombustionBlower, "Combustion blower", 120, 14, 1.0, 1.9))
        .Load("room-air", "room-air blower", BoardCalls.RoomAirBlower, OutputKind.PhaseControlled,
            Parts.Motor(RoomAirBlower, "Room-air blower", 120, 16, 0.9, 1.7), Parts.FanDisc)
        .ThermostatLoop(24, 2200)
        .ThermocoupleInput(new Thermocouple(ComponentIds.Thermocouple, "Thermocouple", "", "", 3, 0.013, 0.0165))
        .Build(6, 0.4);
}
