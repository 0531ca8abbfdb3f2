namespace Emberwright.Stove.Controls;

/// <summary>What makes a contact open or close.</summary>
public enum ContactKind
{
    /// <summary>Opens when its place gets too hot.</summary>
    LimitDisc,
    /// <summary>Closes once the exhaust proves a fire.</summary>
    ProofDisc,
    /// <summary>Closes when the shell is warm, to start a blower.</summary>
    FanDisc,
    /// <summary>Closed by vacuum.</summary>
    VacuumSwitch,
    /// <summary>Closed by the hopper lid.</summary>
    LidSwitch,
    /// <summary>Closed by a door.</summary>
    DoorSwitch,
    /// <summary>Opens when the water jacket gets too hot.</summary>
    SafetyThermostat,
    /// <summary>Closed by a call for heat.</summary>
    Thermostat,
}

/// <summary>What closes a tripped contact again.</summary>
public enum ResetKind
{
    /// <summary>Closes by itself when its cause is gone.</summary>
    Automatic,
    /// <summary>Stays open until its button is pressed.</summary>
    Manual,
}

/// <summary>
/// A switch with one contact: a safety interlock in the feed's chain, or a sensing contact in a low-voltage loop.
/// Its position now is not part of it; that belongs to <see cref="ControlState"/>.
/// </summary>
/// <param name="Id">Id.</param>
/// <param name="Name">Name.</param>
/// <param name="From">Supply side.</param>
/// <param name="To">Load side.</param>
/// <param name="Kind">What moves it.</param>
/// <param name="NormallyOpen">True when the contact stands open on the bench (vacuum switch, proof disc, lid switch).</param>
/// <param name="Reset">What closes it after a trip.</param>
/// <param name="ClosedOhm">Resistance of the closed contact, Ω.</param>
public sealed record Interlock(
    string Id, string Name, string From, string To, ContactKind Kind, bool NormallyOpen, ResetKind Reset, double ClosedOhm)
    : WiringComponent(Id, Name, From, To);

/// <summary>
/// A contact on the board that bridges a proof of fire while a fire is being lit. It is closed from the start
/// until its time is up, while the board is running a start.
/// </summary>
/// <param name="Id">Id.</param>
/// <param name="Name">Name.</param>
/// <param name="From">Supply side.</param>
/// <param name="To">Load side.</param>
/// <param name="UntilS">Time after the start at which it opens, s.</param>
/// <param name="ClosedOhm">Resistance when closed, Ω.</param>
public sealed record StartBypass(string Id, string Name, string From, string To, double UntilS, double ClosedOhm)
    : WiringComponent(Id, Name, From, To);

/// <summary>How a board switches a load.</summary>
public enum OutputKind
{
    /// <summary>Relay contact: fully open or closed.</summary>
    Relay,
    /// <summary>Triac: leaks a little through its snubber when off, so measure it with its load joined.</summary>
    Triac,
    /// <summary>Triac that passes part of each half wave to set a speed.</summary>
    PhaseControlled,
}

/// <summary>A switched output of the board.</summary>
/// <param name="Id">Id.</param>
/// <param name="Name">Name.</param>
/// <param name="From">Fused live.</param>
/// <param name="To">Output terminal.</param>
/// <param name="Call">The load it feeds.</param>
/// <param name="Kind">Relay, triac or phase-controlled.</param>
/// <param name="OnOhm">Resistance when on, Ω.</param>
/// <param name="SnubberOhm">Resistor in series with the snubber's capacitor, Ω; unused for a relay.</param>
/// <param name="SnubberF">Snubber's capacitor across a triac, F; 0 for a relay.</param>
public sealed record BoardOutput(
    string Id, string Name, string From, string To, BoardCalls Call, OutputKind Kind, double OnOhm, double SnubberOhm, double SnubberF)
    : WiringComponent(Id, Name, From, To);
