namespace Emberwright.Stove.Controls;

/// <summary>
/// A part of the circuit between two test points, as it is when healthy. Every electrical value is required:
/// a part without one is an error, never a guess.
/// </summary>
/// <param name="Id">Id, unique in its wiring; see <see cref="ComponentIds"/>.</param>
/// <param name="Name">Name in the trade's words.</param>
/// <param name="From">Test point on the supply's side.</param>
/// <param name="To">Test point on the return's side.</param>
public abstract record WiringComponent(string Id, string Name, string From, string To);

/// <summary>The mains at the socket.</summary>
/// <param name="Id">Id.</param>
/// <param name="Name">Name.</param>
/// <param name="From">Live.</param>
/// <param name="To">Neutral.</param>
/// <param name="NominalV">Nominal voltage, V rms.</param>
/// <param name="FrequencyHz">Frequency, Hz.</param>
/// <param name="LoopOhm">Resistance of the house wiring, out and back, Ω; a thin shared extension lead raises it.</param>
public sealed record MainsSupply(string Id, string Name, string From, string To, double NominalV, double FrequencyHz, double LoopOhm)
    : WiringComponent(Id, Name, From, To);

/// <summary>The protective conductor.</summary>
/// <param name="Id">Id.</param>
/// <param name="Name">Name.</param>
/// <param name="From">The appliance's metal.</param>
/// <param name="To">Neutral, to which it is bonded in the building.</param>
/// <param name="LoopOhm">Resistance back to the bond, Ω.</param>
public sealed record EarthConductor(string Id, string Name, string From, string To, double LoopOhm)
    : WiringComponent(Id, Name, From, To);

/// <summary>A fuse.</summary>
/// <param name="Id">Id.</param>
/// <param name="Name">Name.</param>
/// <param name="From">Supply side.</param>
/// <param name="To">Load side.</param>
/// <param name="RatedA">Rated current, A.</param>
/// <param name="ColdOhm">Resistance, Ω.</param>
public sealed record Fuse(string Id, string Name, string From, string To, double RatedA, double ColdOhm)
    : WiringComponent(Id, Name, From, To);

/// <summary>A plug or terminal that can come loose or burn.</summary>
/// <param name="Id">Id.</param>
/// <param name="Name">Name.</param>
/// <param name="From">Supply side.</param>
/// <param name="To">Load side.</param>
/// <param name="ContactOhm">Resistance of a clean contact, Ω.</param>
public sealed record Connector(string Id, string Name, string From, string To, double ContactOhm)
    : WiringComponent(Id, Name, From, To);

/// <summary>Copper winding turning something: feed motor, blower, pump, agitator.</summary>
/// <remarks>
/// The running impedance is not the winding resistance, and neither is V²/P: most of a shaded-pole motor's running
/// impedance is reactance and the power it takes up at the shaft.
/// </remarks>
/// <param name="Id">Id.</param>
/// <param name="Name">Name.</param>
/// <param name="From">Live terminal.</param>
/// <param name="To">Neutral terminal.</param>
/// <param name="RatedV">Voltage of the currents below, V rms.</param>
/// <param name="WindingOhm">Resistance of the winding at 20 °C, read with the plug out, Ω.</param>
/// <param name="RunningA">Current while running freely, A rms.</param>
/// <param name="RunningPowerFactor">Power factor while running, 0 … 1.</param>
/// <param name="StalledA">Current with the rotor held, A rms.</param>
/// <param name="StalledPowerFactor">Power factor with the rotor held, 0 … 1.</param>
public sealed record Motor(
    string Id, string Name, string From, string To, double RatedV, double WindingOhm,
    double RunningA, double RunningPowerFactor, double StalledA, double StalledPowerFactor)
    : WiringComponent(Id, Name, From, To);

/// <summary>The capacitor in series with a blower's auxiliary winding. Its drift is a ratio of capacitance.</summary>
/// <param name="Id">Id.</param>
/// <param name="Name">Name.</param>
/// <param name="From">Live side.</param>
/// <param name="To">Auxiliary winding's side.</param>
/// <param name="Farad">Capacitance, F.</param>
public sealed record RunCapacitor(string Id, string Name, string From, string To, double Farad)
    : WiringComponent(Id, Name, From, To);

/// <summary>Kinds of igniter.</summary>
public enum IgniterKind
{
    /// <summary>Resistance wire in a metal tube.</summary>
    Wire,
    /// <summary>Ceramic element; its cold resistance may be two to three times off its hot one.</summary>
    Ceramic,
}

/// <summary>An igniter.</summary>
/// <param name="Id">Id.</param>
/// <param name="Name">Name.</param>
/// <param name="From">Live terminal.</param>
/// <param name="To">Neutral terminal.</param>
/// <param name="Kind">Wire or ceramic.</param>
/// <param name="RatedV">Rated voltage, V.</param>
/// <param name="RatedW">Power at the rated voltage when hot, W.</param>
/// <param name="HotToCold">Ratio of the hot resistance to the cold one; 1.071 for nickel-chromium 80/20 wire at 1100 °C.</param>
public sealed record Igniter(
    string Id, string Name, string From, string To, IgniterKind Kind, double RatedV, double RatedW, double HotToCold)
    : WiringComponent(Id, Name, From, To)
{
    /// <summary>Resistance when glowing, Ω: V²/P (an igniter is a plain resistance, unlike a motor).</summary>
    public double HotOhm => RatedV * RatedV / RatedW;

    /// <summary>Resistance at room temperature, Ω: what a meter reads with the plug out.</summary>
    public double ColdOhm => HotOhm / HotToCold;
}
