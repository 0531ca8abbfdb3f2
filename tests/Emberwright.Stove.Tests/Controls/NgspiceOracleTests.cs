using System.Numerics;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Faults;
using Xunit;

namespace Emberwright.Stove.Tests.Controls;

/// <summary>
/// Every wiring, in every operation, with every single fault of every component, against ngspice (an independent
/// simulator, given a netlist written apart from our own translation). Agreement within 0.1 % or 1 mV, whichever is
/// greater: far inside any meter's accuracy, far above what 1 GΩ beside 10 mΩ costs double precision.
/// </summary>
public class NgspiceOracleTests
{
    private static readonly Meter Meter = Meter.Ordinary;

    public static TheoryData<string, Operation> Cases()
    {
        var data = new TheoryData<string, Operation>();
        foreach (var wiring in WiringLibrary.All)
            foreach (var operation in Enum.GetValues<Operation>())
                data.Add(wiring.Pattern, operation);
        return data;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Mains_voltages_and_currents_agree(string pattern, Operation operation)
    {
        var wiring = WiringLibrary.For(pattern);
        var state = wiring.In(operation);
        var netlist = new SpiceNetlist(wiring, alternating: true);
        var cases = SingleFaults(wiring).ToList();
        var solved = cases.Select(c => SolvedWiring.Alternating(wiring, state, [c])).ToList();
        for (var i = 0; i < cases.Count; i++)
        {
            netlist.Add(3 * i, state, cases[i], solved[i].FuseBlown, null);
            if (IsMetered(cases[i])) netlist.Add(3 * i + 1, state, cases[i], solved[i].FuseBlown, Meter);
            if (solved[i].FuseBlown) netlist.Add(3 * i + 2, state, cases[i], false, null);
        }
        var frequency = wiring.Mains.FrequencyHz;
        var oracle = Ngspice.Run(netlist.Circuits, $"ac lin 1 {frequency} {frequency}");
        var input = Meter.InputImpedanceOhm(2 * Math.PI * frequency, lowImpedance: false);
        var fuse = wiring.Components.OfType<Fuse>().Single();

        for (var i = 0; i < cases.Count; i++)
        {
            foreach (var point in wiring.TestPoints.Where(p => p.Id != Points.Neutral))
                Agree(oracle[$"v({SpiceNetlist.Node(3 * i, point.Id)})"], solved[i].OpenVoltageV(wiring.PointIndex(point.Id), 0), 1e-3, $"{cases[i]} at {point.Id}");
            foreach (var load in wiring.Components.Where(c => c is Motor or Igniter or Fuse))
                Agree(oracle[SpiceNetlist.CurrentOf(3 * i, load.Id)].Magnitude, solved[i].CurrentA(load.Id), 1e-5, $"{cases[i]} current of {load.Id}");
            if (IsMetered(cases[i]))
            {
                var (a, b) = solved[i].Ends(wiring.ComponentIndex(cases[i].Component));
                Agree(Difference(oracle, 3 * i + 1, wiring[cases[i].Component]), solved[i].VoltageV(a, b, input), 1e-3, $"{cases[i]} metered");
            }
            var intact = oracle[SpiceNetlist.CurrentOf(solved[i].FuseBlown ? 3 * i + 2 : 3 * i, fuse.Id)].Magnitude;
            Assert.Equal(intact > 2.1 * fuse.RatedA, solved[i].FuseBlown);
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Low_voltages_agree(string pattern, Operation operation)
    {
        var wiring = WiringLibrary.For(pattern);
        var state = wiring.In(operation) with { Signals = new SensorSignals(0.0154, 1573.25, -20) };
        var netlist = new SpiceNetlist(wiring, alternating: false);
        var cases = SingleFaults(wiring).Where(c => IsLowVoltage(wiring, c.Component)).ToList();
        for (var i = 0; i < cases.Count; i++) netlist.Add(i, state, cases[i], fuseBlown: false, null);
        var oracle = Ngspice.Run(netlist.Circuits, "op");
        for (var i = 0; i < cases.Count; i++)
        {
            var solved = SolvedWiring.Direct(wiring, state, [cases[i]]);
            var common = wiring.PointIndex(Points.BoardCommon);
            var commonV = oracle[$"v({SpiceNetlist.Node(i, Points.BoardCommon)})"];
            foreach (var point in wiring.TestPoints.Where(p => p.Circuit == SupplyCircuit.LowVoltage && p.Id != Points.BoardCommon))
                Agree(oracle[$"v({SpiceNetlist.Node(i, point.Id)})"] - commonV, solved.OpenVoltageV(wiring.PointIndex(point.Id), common), 1e-5, $"{cases[i]} at {point.Id}");
        }
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void Ohms_between_points_and_to_earth_agree_with_the_plug_out(string pattern)
    {
        var wiring = WiringLibrary.For(pattern);
        var state = wiring.In(Operation.Unplugged);
        var netlist = new SpiceNetlist(wiring, alternating: false);
        var cases = SingleFaults(wiring)
            .SelectMany(fault => Pairs(wiring, fault).Select(pair => (Fault: fault, pair.A, pair.B))).Where(c => c.A != c.B).ToList();
        for (var i = 0; i < cases.Count; i++) netlist.Add(i, state, cases[i].Fault, fuseBlown: false, null, (cases[i].A, cases[i].B));
        var oracle = Ngspice.Run(netlist.Circuits, "op");
        for (var i = 0; i < cases.Count; i++)
        {
            var (fault, a, b) = cases[i];
            var ours = SolvedWiring.Direct(wiring, state, [fault]).ImpedanceOhm(wiring.PointIndex(a), wiring.PointIndex(b));
            var theirs = (Voltage(oracle, i, a) - Voltage(oracle, i, b)) / SpiceNetlist.ProbeA;
            // 0.1 % or 1 mΩ; above the meter's 40 MΩ both only have to be beyond it.
            if (theirs.Real > Meter.OverloadOhm) Assert.True(ours.Real > 0.999 * Meter.OverloadOhm, $"{fault}, {a} to {b}: ngspice {theirs}, ours {ours}");
            else Agree(theirs, ours, 1e-3, $"{fault}, {a} to {b}");
        }
    }

    [Theory]
    [InlineData(-0.002)]
    [InlineData(0)]
    [InlineData(0.0082)]
    [InlineData(0.024)]
    public void Millivolts_of_the_thermocouple_as_the_meter_shows_them_agree(double signalV)
    {
        var wiring = WiringLibrary.For(PatternIds.Thermocouple);
        var state = wiring.In(Operation.High) with { Signals = new SensorSignals(signalV) };
        var netlist = new SpiceNetlist(wiring, alternating: false);
        CircuitChange[] cases =
        [
            new(ComponentIds.Thermocouple, ComponentState.Healthy), new(ComponentIds.Thermocouple, ComponentState.Open),
            new(ComponentIds.Thermocouple, ComponentState.Shorted), new(ComponentIds.Thermocouple, ComponentState.Drifted, -1),
            new(ComponentIds.Thermocouple, ComponentState.LeakingToEarth, LeakOhm: 20e3),
        ];
        for (var i = 0; i < cases.Length; i++) netlist.Add(i, state, cases[i], fuseBlown: false, Meter);
        var oracle = Ngspice.Run(netlist.Circuits, "op");
        for (var i = 0; i < cases.Length; i++)
        {
            var ours = Meter.Across(wiring, state, [cases[i]], MeterFunction.DcMillivolts, ComponentIds.Thermocouple).Value;
            Agree(Difference(oracle, i, wiring[ComponentIds.Thermocouple]), ours, 1e-6, $"{cases[i]}"); // a microvolt: a tenth of what any meter shows
        }
    }

    public static TheoryData<string> Patterns => [.. WiringLibrary.All.Select(w => w.Pattern)];

    // Across the part at fault, from its supply side to earth, and from the feed's lead to neutral.
    private static IEnumerable<(string A, string B)> Pairs(Wiring wiring, CircuitChange fault)
    {
        var part = wiring[fault.Component];
        yield return (part.From, part.To);
        yield return (part.From, Points.Earth);
        yield return ("tp1", Points.Neutral);
    }

    // Only where the circuit is open does the meter's own impedance matter.
    private static bool IsMetered(CircuitChange change) => change.State == ComponentState.Open;

    private static IEnumerable<CircuitChange> SingleFaults(Wiring wiring)
    {
        foreach (var part in wiring.Components)
        {
            yield return new CircuitChange(part.Id, ComponentState.Healthy);
            yield return new CircuitChange(part.Id, ComponentState.Open);
            if (part is not MainsSupply) yield return new CircuitChange(part.Id, ComponentState.Shorted);
            yield return new CircuitChange(part.Id, ComponentState.LeakingToEarth, LeakOhm: 20e3);
            yield return new CircuitChange(part.Id, ComponentState.Drifted, 3);
            if (part is Motor) yield return new CircuitChange(part.Id, ComponentState.Stalled);
        }
    }

    private static bool IsLowVoltage(Wiring wiring, string component) =>
        wiring.TestPoints[wiring.PointIndex(wiring[component].From)].Circuit == SupplyCircuit.LowVoltage;

    private static Complex Difference(Dictionary<string, Complex> oracle, int copy, WiringComponent part) =>
        Voltage(oracle, copy, part.From) - Voltage(oracle, copy, part.To);

    private static Complex Voltage(Dictionary<string, Complex> oracle, int copy, string point) =>
        point == Points.Neutral ? Complex.Zero : oracle[$"v({SpiceNetlist.Node(copy, point)})"];

    private static void Agree(Complex expected, Complex actual, double floor, string what) =>
        Assert.True((expected - actual).Magnitude <= Math.Max(1e-3 * expected.Magnitude, floor), $"{what}: ngspice {expected}, ours {actual}");
}
