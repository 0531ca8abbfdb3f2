using static Emberwright.Stove.Controls.ComponentIds;

namespace Emberwright.Stove.Controls.Wirings;

/// <summary>
/// The room thermostat's sense loop: a low direct voltage of the board, out through the cable and the thermostat's contact,
/// back to board common. Open, its terminals show the loop's voltage; calling, next to nothing.
/// </summary>
internal static class ThermostatLoop
{
    internal static TestPoint[] TestPoints { get; } =
    [
        new("thermostat-terminal", null, "Thermostat terminal of the board", SupplyCircuit.LowVoltage),
        new("thermostat-contact", null, "Thermostat, end of the cable", SupplyCircuit.LowVoltage),
        new(Points.BoardCommon, null, "Board common, low voltage", SupplyCircuit.LowVoltage),
    ];

    internal static WiringComponent[] Components(double volts, double seriesOhm) =>
    [
        new LowVoltageSupply(ThermostatSupply, "Thermostat loop's supply", "thermostat-terminal", Points.BoardCommon, volts, seriesOhm),
        new Connector(ThermostatCable, "Thermostat cable", "thermostat-terminal", "thermostat-contact", 2),
        new Interlock(Thermostat, "Room thermostat", "thermostat-contact", Points.BoardCommon, ContactKind.Thermostat, true, ResetKind.Automatic, 0.1),
    ];
}
