using Emberwright.Stove.Controls.Sensors;

namespace Emberwright.Stove.Controls.Sequence;

/// <summary>Turns the stove's true state into what the board believes, through contacts, sensors and their faults.</summary>
internal sealed class BoardSensing(Wiring wiring, BurnProgram program, BurnScenario scenario, LoadCircuit circuit)
{
    private const double BoardC = 30;
    private const double LeastProbeC = -30, MostProbeC = 600;
    private readonly string? _proofDisc = wiring.Components.OfType<Interlock>().FirstOrDefault(c => c.Kind == ContactKind.ProofDisc)?.Id;
    private readonly PressureSensor? _pressure = wiring.Components.OfType<PressureSensor>().FirstOrDefault();
    private readonly bool _hasProbe = wiring.HasComponent(ComponentIds.ExhaustProbe);
    private readonly bool _hasSpeed = wiring.HasComponent(ComponentIds.SpeedSensor);

    internal BoardSenses Of(SequenceReadings stove, SwitchPositions positions, bool wanted, bool turning)
    {
        var called = wanted && (!scenario.Automatic || circuit.ThermostatCalls(positions));
        var watched = new bool[program.Watched.Length];
        for (var i = 0; i < watched.Length; i++) watched[i] = !circuit.Conducts(program.Watched[i].Contact, positions);
        var probeC = _hasProbe ? ProbeC(stove.ExhaustC + scenario.ProofOffsetK) : stove.ExhaustC;
        var vacuum = _pressure is null ? double.NaN : VacuumPa(_pressure, stove);
        return new BoardSenses(
            called, scenario.High,
            _proofDisc is not null && circuit.Conducts(_proofDisc, positions),
            program.Proof.Kind == ProofKind.Thermocouple ? ThermocoupleMillivolt(stove) : probeC,
            probeC, stove.WaterC, vacuum,
            !_hasSpeed || turning && circuit.Works(ComponentIds.SpeedSensor),
            double.IsNaN(probeC) || _pressure is not null && double.IsNaN(vacuum),
            watched);
    }

    private double ThermocoupleMillivolt(SequenceReadings stove)
    {
        var signal = TypeK.Millivolts(Math.Clamp(stove.FlameC + scenario.ProofOffsetK, 0, TypeK.MostC), BoardC);
        var solved = circuit.Sensors(new SensorSignals(signal / 1000));
        var (plus, minus) = solved.Ends(wiring.ComponentIndex(ComponentIds.Thermocouple));
        return solved.OpenVoltageV(plus, minus).Real * 1000;
    }

    // NaN when no platinum probe could have that resistance.
    private double ProbeC(double trueC)
    {
        var ohm = circuit.Ohm(ComponentIds.ExhaustProbe, new SensorSignals(ProbeOhm: PlatinumSensor.Pt1000.Ohms(Math.Clamp(trueC, LeastProbeC, MostProbeC))));
        var pt = PlatinumSensor.Pt1000;
        return ohm < pt.Ohms(LeastProbeC) || ohm > pt.Ohms(MostProbeC) ? double.NaN : pt.Celsius(ohm);
    }

    // NaN when the output sticks at an end, as with a broken wire.
    private double VacuumPa(PressureSensor sensor, SequenceReadings stove)
    {
        var sensed = -stove.SensePa * scenario.HoseShare - scenario.SensorZeroPa;
        var solved = circuit.Sensors(new SensorSignals(SensedPa: sensed));
        var (plus, minus) = solved.Ends(wiring.ComponentIndex(sensor.Id));
        var volts = solved.OpenVoltageV(plus, minus).Real;
        return volts is < 0.3 or > 4.7 ? double.NaN : (volts - sensor.ZeroV) / sensor.VoltPerPa;
    }
}
