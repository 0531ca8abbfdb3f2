using static Emberwright.Stove.Controls.ComponentIds;

namespace Emberwright.Stove.Controls.Wirings;

/// <summary>
/// Lays out a wiring load by load: the mains and the board, the feed's chain with its numbered test points, one branch per
/// further load, and the low-voltage loops. Parts are given without ends; the plan joins them.
/// </summary>
/// <param name="pattern">Id of the pattern.</param>
/// <param name="volts">Mains voltage, V.</param>
/// <param name="frequencyHz">Mains frequency, Hz.</param>
internal sealed class WiringPlan(string pattern, double volts, double frequencyHz)
{
    private readonly List<TestPoint> _points = [];
    private readonly List<TestPoint> _lowVoltage = [];
    private readonly List<WiringComponent> _parts = [];
    private readonly List<string> _chain = [];
    private int _number;

    /// <summary>Board output, plug, interlocks in the order of the current, feed motor; a bridge lies beside the proof disc.</summary>
    internal WiringPlan Feed(OutputKind kind, Interlock[] interlocks, Motor motor, double? bridgedS = null)
    {
        AddOutput("feed", "feed", BoardCalls.Feed, kind);
        var from = AddNumbered("Feed lead, ahead of the " + Lower(interlocks[0].Name));
        _parts.Add(new Connector(FeedConnector, "Feed plug", "feed-out", from, 0.02));
        for (var i = 0; i < interlocks.Length; i++)
        {
            var last = i == interlocks.Length - 1;
            var to = AddNumbered(last ? "Feed motor, live terminal" : $"Between {Lower(interlocks[i].Name)} and {Lower(interlocks[i + 1].Name)}");
            _parts.Add(interlocks[i] with { From = from, To = to });
            _chain.Add(interlocks[i].Id);
            if (interlocks[i].Kind == ContactKind.ProofDisc && bridgedS is { } until)
                _parts.Add(new StartBypass(ProofBypass, "Board contact round the proof-of-fire disc", from, to, until, 0.1));
            from = to;
        }
        _parts.Add(motor with { From = from, To = Points.Neutral });
        return this;
    }

    /// <summary>Board output, plug, perhaps a disc, and the load.</summary>
    internal WiringPlan Load(string key, string name, BoardCalls call, OutputKind kind, WiringComponent load, Interlock? disc = null)
    {
        AddOutput(key, name, call, kind);
        var live = $"{key}-live";
        var plugTo = disc is null ? live : $"{key}-disc-in";
        _parts.Add(new Connector($"{key}-connector", $"{Upper(name)} plug", $"{key}-out", plugTo, 0.02));
        if (disc is not null)
        {
            AddPoint(plugTo, $"{Upper(name)} disc, board side");
            _parts.Add(disc with { From = plugTo, To = live });
        }
        AddPoint(live, $"{Upper(name)}, live lead");
        _parts.Add(load with { From = live, To = Points.Neutral });
        return this;
    }

    /// <summary>The combustion blower's auxiliary winding behind its run capacitor.</summary>
    internal WiringPlan CombustionAuxiliaryWinding(RunCapacitor capacitor, Motor winding)
    {
        AddPoint("combustion-aux", "Combustion blower, between run capacitor and auxiliary winding");
        _parts.Add(capacitor with { From = "combustion-live", To = "combustion-aux" });
        _parts.Add(winding with { From = "combustion-aux", To = Points.Neutral });
        return this;
    }

    /// <summary>
    /// The room thermostat's sense loop: a low direct voltage of the board, out through the cable and the thermostat's contact, back
    /// to board common. Open, its terminals show the loop's voltage; calling, next to nothing.
    /// </summary>
    internal WiringPlan ThermostatLoop(double loopV, double seriesOhm)
    {
        AddLow("thermostat-terminal", "Thermostat terminal of the board");
        AddLow("thermostat-contact", "Thermostat, end of the cable");
        _parts.Add(new LowVoltageSupply(ThermostatSupply, "Thermostat loop's supply", "thermostat-terminal", Points.BoardCommon, loopV, seriesOhm));
        _parts.Add(new Connector(ThermostatCable, "Thermostat cable", "thermostat-terminal", "thermostat-contact", 2));
        _parts.Add(new Interlock(Thermostat, "Room thermostat", "thermostat-contact", Points.BoardCommon, ContactKind.Thermostat, true, ResetKind.Automatic, 0.1));
        return this;
    }

    /// <summary>A thermocouple into the board's amplifier.</summary>
    internal WiringPlan ThermocoupleInput(Thermocouple thermocouple)
    {
        AddLow("thermocouple-plus", "Thermocouple, positive terminal at the board");
        _parts.Add(thermocouple with { From = "thermocouple-plus", To = Points.BoardCommon });
        _parts.Add(new PlainResistance("thermocouple-input", "Board's thermocouple input", "thermocouple-plus", Points.BoardCommon, 1e6));
        return this;
    }

    /// <summary>A resistance probe fed from 5 V through the board's resistor.</summary>
    internal WiringPlan Probe(ResistanceProbe probe, double seriesOhm)
    {
        var terminal = $"{probe.Id}-terminal";
        AddLow(terminal, $"{probe.Name}, terminal at the board");
        _parts.Add(new LowVoltageSupply($"{probe.Id}-supply", $"Supply of the {Lower(probe.Name)}", terminal, Points.BoardCommon, 5, seriesOhm));
        _parts.Add(probe with { From = terminal, To = Points.BoardCommon });
        return this;
    }

    /// <summary>
    /// A speed sensor pulling its line down in pulses: while the blower turns a meter shows the mean of the pulses, half the supply.
    /// </summary>
    internal WiringPlan SpeedPulses()
    {
        AddLow("speed-signal", "Speed sensor's signal at the board");
        _parts.Add(new LowVoltageSupply("speed-pull-up", "Board's pull-up of the speed sensor", "speed-signal", Points.BoardCommon, 5, 10e3));
        _parts.Add(new PlainResistance(SpeedSensor, "Speed sensor, mean of its pulses", "speed-signal", Points.BoardCommon, 10e3));
        return this;
    }

    /// <summary>A pressure sensor with its 5 V supply and the board's input.</summary>
    internal WiringPlan Pressure(PressureSensor sensor)
    {
        AddLow("sensor-plus", "Pressure sensor, supply");
        AddLow("sensor-out", "Pressure sensor, output");
        _parts.Add(new LowVoltageSupply(SensorSupply, "Pressure sensor's supply", "sensor-plus", Points.BoardCommon, 5, 1));
        _parts.Add(new PlainResistance("sensor-consumption", "Pressure sensor's own consumption", "sensor-plus", Points.BoardCommon, 500));
        _parts.Add(sensor with { From = "sensor-out", To = Points.BoardCommon });
        _parts.Add(new PlainResistance("sensor-input", "Board's pressure input", "sensor-out", Points.BoardCommon, 100e3));
        return this;
    }

    /// <summary>Adds mains, fuse and board, and closes the plan.</summary>
    internal Wiring Build(double fuseA, double loopOhm)
    {
        WiringComponent[] mains =
        [
            new MainsSupply(Supply, "Mains at the socket", Points.Live, Points.Neutral, volts, frequencyHz, loopOhm),
            new EarthConductor(ComponentIds.EarthConductor, "Earth conductor", Points.Earth, Points.Neutral, 0.3),
            new Fuse(ComponentIds.Fuse, "Fuse", Points.Live, Points.FusedLive, fuseA, 0.03),
            new Connector(Board, "Board", Points.FusedLive, Points.BoardLive, 0.02),
        ];
        return new Wiring(
            pattern,
            [
                new TestPoint(Points.Neutral, _number + 2, "Neutral", SupplyCircuit.Mains),
                .. _points,
                .. _lowVoltage,
                new TestPoint(Points.BoardCommon, null, "Board common, low voltage", SupplyCircuit.LowVoltage),
                new TestPoint(Points.BoardLive, null, "Board's supply rail", SupplyCircuit.Mains),
                new TestPoint(Points.FusedLive, _number + 1, "Board's inlet, behind the fuse", SupplyCircuit.Mains),
                new TestPoint(Points.Live, null, "Live at the inlet", SupplyCircuit.Mains),
                new TestPoint(Points.Earth, null, "Earth: the appliance's metal", SupplyCircuit.Mains),
            ],
            [.. mains, .. _parts], _chain, Harness.Ordinary);
    }

    private void AddOutput(string key, string name, BoardCalls call, OutputKind kind)
    {
        AddPoint($"{key}-out", $"Board, {name} terminal");
        var (onOhm, snubberOhm, snubberF) = kind == OutputKind.Relay ? (0.05, 0.0, 0.0) : (0.5, 100, 10e-9);
        _parts.Add(new BoardOutput($"{key}-output", $"Board output, {name}", Points.BoardLive, $"{key}-out", call, kind, onOhm, snubberOhm, snubberF));
    }

    private string AddNumbered(string name)
    {
        _number++;
        _points.Add(new TestPoint($"tp{_number}", _number, name, SupplyCircuit.Mains));
        return $"tp{_number}";
    }

    private void AddPoint(string id, string name) => _points.Add(new TestPoint(id, null, name, SupplyCircuit.Mains));

    private void AddLow(string id, string name) => _lowVoltage.Add(new TestPoint(id, null, name, SupplyCircuit.LowVoltage));

    private static string Upper(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static string Lower(string words) => char.ToLowerInvariant(words[0]) + words[1..];
}
