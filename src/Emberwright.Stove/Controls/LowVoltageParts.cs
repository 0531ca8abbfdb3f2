namespace Emberwright.Stove.Controls;

/// <summary>A direct low-voltage supply of the board behind its own resistance: of a sense loop, or of a sensor.</summary>
/// <param name="Id">Id.</param>
/// <param name="Name">Name.</param>
/// <param name="From">Positive terminal.</param>
/// <param name="To">Board common.</param>
/// <param name="Volts">Open-circuit voltage, V; sense loops use 5 to 24 V.</param>
/// <param name="SeriesOhm">Resistance in series, Ω.</param>
public sealed record LowVoltageSupply(string Id, string Name, string From, string To, double Volts, double SeriesOhm)
    : WiringComponent(Id, Name, From, To);

/// <summary>A plain resistance on the low-voltage side: a sensor's own consumption, a board input.</summary>
/// <param name="Id">Id.</param>
/// <param name="Name">Name.</param>
/// <param name="From">First terminal.</param>
/// <param name="To">Second terminal.</param>
/// <param name="Ohm">Resistance, Ω.</param>
public sealed record PlainResistance(string Id, string Name, string From, string To, double Ohm)
    : WiringComponent(Id, Name, From, To);

/// <summary>A thermocouple in the exhaust or above the fire; its voltage at the board is its signal.</summary>
/// <param name="Id">Id.</param>
/// <param name="Name">Name.</param>
/// <param name="From">Positive terminal at the board.</param>
/// <param name="To">Negative terminal.</param>
/// <param name="LeadOhm">Resistance of wire and lead, Ω.</param>
/// <param name="LowFireV">Usual voltage at the lowest setting, V.</param>
/// <param name="HighFireV">Usual voltage at the highest setting, V.</param>
public sealed record Thermocouple(string Id, string Name, string From, string To, double LeadOhm, double LowFireV, double HighFireV)
    : WiringComponent(Id, Name, From, To);

/// <summary>A resistance probe; what it reads follows from its temperature.</summary>
/// <param name="Id">Id.</param>
/// <param name="Name">Name.</param>
/// <param name="From">Terminal at the board's input.</param>
/// <param name="To">Board common.</param>
/// <param name="ColdOhm">Resistance at 20 °C, Ω, used where no temperature is given.</param>
public sealed record ResistanceProbe(string Id, string Name, string From, string To, double ColdOhm)
    : WiringComponent(Id, Name, From, To);

/// <summary>A pressure sensor's output stage: volts in proportion to pressure.</summary>
/// <param name="Id">Id.</param>
/// <param name="Name">Name.</param>
/// <param name="From">Output terminal.</param>
/// <param name="To">Board common.</param>
/// <param name="ZeroV">Output with both ports at the same pressure, V.</param>
/// <param name="VoltPerPa">Change of the output per Pa of the sensed vacuum or pressure, V/Pa.</param>
/// <param name="OutputOhm">Output resistance, Ω.</param>
public sealed record PressureSensor(string Id, string Name, string From, string To, double ZeroV, double VoltPerPa, double OutputOhm)
    : WiringComponent(Id, Name, From, To);
