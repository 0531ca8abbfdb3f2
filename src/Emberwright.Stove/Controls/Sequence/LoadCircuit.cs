using Emberwright.Stove.Faults;

namespace Emberwright.Stove.Controls.Sequence;

/// <summary>What the circuit makes of the board's calls: which loads turn, whether the board lives, what it senses.</summary>
internal sealed class LoadCircuit
{
    private const double TurnsFrom = 0.35;
    private const double ConductsBelowOhm = 1000;

    private readonly Wiring _wiring;
    private readonly CircuitChange[] _changes;
    private readonly Dictionary<ControlState, (RunningLoads Running, bool FuseBlown)> _known = [];

    private (ControlState? State, (RunningLoads Running, bool FuseBlown) Answer) _last;

    internal LoadCircuit(Wiring wiring, BurnProgram program, BurnScenario scenario)
    {
        _wiring = wiring;
        _changes = [.. scenario.Changes];
        Idle = Solve(new ControlState(true, BoardCalls.None, default, SupplyV: scenario.SupplyV));
        Powered = Idle.OpenVoltageV(wiring.PointIndex(Points.BoardLive), 0).Magnitude >= program.DropOutShare * wiring.Mains.NominalV;
    }

    /// <summary>The circuit's low-voltage side with the board powered and these sensor signals.</summary>
    internal SolvedWiring Sensors(SensorSignals signals) =>
        SolvedWiring.Direct(_wiring, new ControlState(true, BoardCalls.None, default, Signals: signals), _changes);

    /// <summary>Resistance of a part as the board's input sees it, Ω.</summary>
    internal double Ohm(string part, SensorSignals signals) =>
        IsolatedPart.ResistanceOhm(_wiring, new ControlState(false, BoardCalls.None, default, Signals: signals), _changes, part);

    /// <summary>True when the named part is neither open nor shorted nor stalled.</summary>
    internal bool Works(string part) => !Ruined(part);

    private SolvedWiring Idle { get; }

    /// <summary>True when the board has enough supply before anything is called.</summary>
    internal bool Powered { get; }

    /// <summary>What turns and glows in a state. A feed motor that turns without being called never pauses.</summary>
    internal (RunningLoads Running, bool FuseBlown) Loads(ControlState state, double feedShare)
    {
        var (running, fuseBlown) = Known(state);
        if (running.FeedShare == 0) return (running, fuseBlown);
        var uncalled = Known(state with { Calls = state.Calls & ~BoardCalls.Feed }).Running.FeedShare > 0;
        return (running with { FeedShare = uncalled ? 1 : feedShare }, fuseBlown);
    }

    /// <summary>True when a contact, sound or not, lets current pass in this position.</summary>
    internal bool Conducts(string contact, SwitchPositions positions) =>
        IsolatedPart.ResistanceOhm(_wiring, new ControlState(false, BoardCalls.None, positions), _changes, contact) < ConductsBelowOhm;

    /// <summary>True when the board sees its thermostat loop closed.</summary>
    internal bool ThermostatCalls(SwitchPositions positions)
    {
        if (!_wiring.HasComponent(ComponentIds.Thermostat)) return true;
        var solved = SolvedWiring.Direct(_wiring, new ControlState(true, BoardCalls.None, positions), _changes);
        var (plus, common) = solved.Ends(_wiring.ComponentIndex(ComponentIds.ThermostatSupply));
        return solved.OpenVoltageV(plus, common).Real < 0.3 * ((LowVoltageSupply)_wiring[ComponentIds.ThermostatSupply]).Volts;
    }

    private (RunningLoads Running, bool FuseBlown) Known(ControlState state)
    {
        if (state == _last.State) return _last.Answer;
        var answer = Solved(state);
        _last = (state, answer);
        return answer;
    }

    private (RunningLoads Running, bool FuseBlown) Solved(ControlState state)
    {
        if (_known.TryGetValue(state, out var known)) return known;
        var solved = Solve(state);
        known = (new RunningLoads(
            Turns(solved, ComponentIds.FeedMotor) >= TurnsFrom ? 1 : 0,
            IgniterPower(solved),
            Speed(solved, ComponentIds.CombustionBlower),
            Speed(solved, ComponentIds.RoomAirBlower),
            Turns(solved, ComponentIds.AgitatorMotor) >= TurnsFrom,
            Turns(solved, ComponentIds.CirculatingPump) >= TurnsFrom), solved.FuseBlown);
        return _known[state] = known;
    }

    private SolvedWiring Solve(ControlState state) => SolvedWiring.Alternating(_wiring, state, _changes);

    private double Speed(SolvedWiring solved, string motor)
    {
        var share = Turns(solved, motor) * (motor == ComponentIds.CombustionBlower ? AuxiliaryShare() : 1);
        return share >= TurnsFrom ? share : 0;
    }

    private double Turns(SolvedWiring solved, string id)
    {
        if (!_wiring.HasComponent(id) || Ruined(id)) return 0;
        return solved.CurrentA(id) / ((Motor)_wiring[id]).RunningA;
    }

    // A blower with a run capacitor does not start without it; a weak one costs speed (square root of the share: our estimate, no source).
    private double AuxiliaryShare()
    {
        if (!_wiring.HasComponent(ComponentIds.RunCapacitor)) return 1;
        if (Ruined(ComponentIds.RunCapacitor) || Ruined(ComponentIds.CombustionAuxiliary)) return 0;
        foreach (var change in _changes)
            if (change is { Component: ComponentIds.RunCapacitor, State: ComponentState.Drifted }) return Math.Sqrt(Math.Min(1, change.Factor));
        return 1;
    }

    private double IgniterPower(SolvedWiring solved)
    {
        if (!_wiring.HasComponent(ComponentIds.Igniter) || Ruined(ComponentIds.Igniter)) return 0;
        var igniter = (Igniter)_wiring[ComponentIds.Igniter];
        var (a, b) = solved.Ends(_wiring.ComponentIndex(igniter.Id));
        return solved.OpenVoltageV(a, b).Magnitude * solved.CurrentA(igniter.Id) / igniter.RatedW;
    }

    private bool Ruined(string id)
    {
        foreach (var change in _changes)
            if (change.Component == id && change.State is (ComponentState.Open or ComponentState.Shorted or ComponentState.Stalled)) return true;
        return false;
    }
}
