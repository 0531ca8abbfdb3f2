namespace Emberwright.Stove.Controls;

/// <summary>Loads that a board can call for; several at once are joined with |.</summary>
[Flags]
public enum BoardCalls
{
    /// <summary>Nothing is called.</summary>
    None = 0,
    /// <summary>Feed motor, during a pulse.</summary>
    Feed = 1,
    /// <summary>Igniter.</summary>
    Igniter = 2,
    /// <summary>Combustion blower.</summary>
    CombustionBlower = 4,
    /// <summary>Room-air blower.</summary>
    RoomAirBlower = 8,
    /// <summary>Agitator motor.</summary>
    Agitator = 16,
    /// <summary>Circulating pump.</summary>
    Pump = 32,
}

/// <summary>What the controls are doing, in the words of the work.</summary>
public enum Operation
{
    /// <summary>Plug out, proved dead.</summary>
    Unplugged,
    /// <summary>Plugged in, nothing called.</summary>
    Off,
    /// <summary>Combustion blower alone, as for a cold test.</summary>
    FanOnly,
    /// <summary>Start: feed pulse, igniter and combustion blower called.</summary>
    Igniting,
    /// <summary>Lowest setting, in a feed pulse.</summary>
    Low,
    /// <summary>Highest setting, in a feed pulse.</summary>
    High,
    /// <summary>Burning out: feed stopped, blowers running on.</summary>
    Shutdown,
}

/// <summary>Which contacts stand open now; all others are closed.</summary>
/// <param name="Open">One bit per component of the wiring, in its order; see <see cref="Wiring.Bit"/>.</param>
public readonly record struct SwitchPositions(ulong Open)
{
    /// <summary>True when the contact stands open.</summary>
    /// <param name="component">Index of the component in its wiring.</param>
    public bool IsOpen(int component) => (Open >> component & 1) != 0;

    /// <summary>The same with these contacts open.</summary>
    /// <param name="bits">Bits of the contacts, joined with |.</param>
    public SwitchPositions Opened(ulong bits) => new(Open | bits);

    /// <summary>The same with these contacts closed.</summary>
    /// <param name="bits">Bits of the contacts, joined with |.</param>
    public SwitchPositions Closed(ulong bits) => new(Open & ~bits);
}

/// <summary>What the sensors on the low-voltage side sense. All zero is a cold stove with its blower still.</summary>
/// <param name="ThermocoupleV">Thermocouple's voltage above its cold junction, V.</param>
/// <param name="ProbeOhm">Resistance of the healthy probe at its temperature, Ω; null is the probe at 20 °C.</param>
/// <param name="SensedPa">Pressure difference at the pressure sensor, Pa.</param>
public readonly record struct SensorSignals(double ThermocoupleV = 0, double? ProbeOhm = null, double SensedPa = 0);

/// <summary>
/// The state the controls are in while a meter reads: what the board calls for, where each switch stands, how long since
/// the start. It is not a <see cref="Condition"/>, which says what fire, blower and openings do, nor a fault.
/// </summary>
/// <param name="PluggedIn">True with the plug in.</param>
/// <param name="Calls">Loads the board calls for at this moment.</param>
/// <param name="Positions">Switches that stand open.</param>
/// <param name="ElapsedS">Time since the board began its start, s; infinity when no start is running.</param>
/// <param name="CombustionShare">Share of the supply voltage passed to a phase-controlled combustion blower, 0 … 1.</param>
/// <param name="RoomAirShare">Share of the supply voltage passed to a phase-controlled room-air blower, 0 … 1.</param>
/// <param name="SupplyV">Voltage at the unloaded socket, V; null takes the nominal one.</param>
/// <param name="Signals">What the sensors sense.</param>
public sealed record ControlState(
    bool PluggedIn,
    BoardCalls Calls,
    SwitchPositions Positions,
    double ElapsedS = double.PositiveInfinity,
    double CombustionShare = 1,
    double RoomAirShare = 1,
    double? SupplyV = null,
    SensorSignals Signals = default)
{
    /// <summary>Share of the supply voltage that a phase-controlled output passes.</summary>
    internal double Share(BoardCalls call) => call switch
    {
        BoardCalls.CombustionBlower => CombustionShare,
        BoardCalls.RoomAirBlower => RoomAirShare,
        _ => 1,
    };
}
