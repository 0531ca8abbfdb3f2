// What impedance and source does each part of the wiring present, healthy or at fault?
// Equation: resistance R; motor Z = V/I·(cos φ + j sin φ); snubber Z = R + 1/(jωC); phase control holds back a share of the voltage.
// Symbols: Z (Ω), V rated volts, I running or stalled amps, cos φ power factor, ω = 2πf (rad/s), C (F).
// Validity: sine supply, steady running; inrush is outside. An open part is 1 GΩ, a shorted one 10 mΩ.
// Assumptions: impedance of a motor does not depend on its voltage; direct current sees its winding alone.
// Source: elementary circuit theory; open and short values are conventions, far from any meter's resolution.
// Worked value: igniter 300 W at 120 V is 48 Ω hot (Ohm's law).

using System.Numerics;
using Emberwright.Stove.Faults;

namespace Emberwright.Stove.Controls;

/// <summary>A series impedance with its source.</summary>
/// <param name="Ohm">Impedance, Ω; infinity when nothing is joined.</param>
/// <param name="EmfV">Source, V.</param>
/// <param name="Drop">Share of the voltage to neutral held back.</param>
internal readonly record struct SeriesValue(Complex Ohm, double EmfV = 0, double Drop = 0);

/// <summary>Electrical behaviour of each kind of part.</summary>
internal static class ComponentModel
{
    /// <summary>Resistance of anything open, Ω.</summary>
    internal const double OpenOhm = 1e9;

    /// <summary>Resistance of anything shorted, Ω.</summary>
    internal const double ShortOhm = 0.01;

    /// <summary>The part when healthy. <paramref name="angular"/> is 2πf, or 0 for direct current.</summary>
    internal static SeriesValue Healthy(WiringComponent component, ControlState state, bool open, double angular)
    {
        var alternating = angular > 0;
        return component switch
        {
            MainsSupply s => !state.PluggedIn ? new(double.PositiveInfinity)
                : new(s.LoopOhm, alternating ? state.SupplyV ?? s.NominalV : 0),
            EarthConductor e => new(state.PluggedIn ? e.LoopOhm : double.PositiveInfinity),
            Fuse f => new(f.ColdOhm),
            Connector c => new(c.ContactOhm),
            Interlock i => new(open ? OpenOhm : i.ClosedOhm),
            StartBypass b => new(state.PluggedIn && state.ElapsedS < b.UntilS ? b.ClosedOhm : OpenOhm),
            BoardOutput o => Output(o, state, angular),
            Motor m => new(alternating ? Running(m) : m.WindingOhm),
            Igniter g => new(alternating && state.PluggedIn && state.Calls.HasFlag(BoardCalls.Igniter) ? g.HotOhm : g.ColdOhm),
            RunCapacitor c => new(alternating ? new Complex(0, -1 / (angular * c.Farad)) : OpenOhm),
            LowVoltageSupply l => new(l.SeriesOhm, alternating || !state.PluggedIn ? 0 : l.Volts),
            PlainResistance r => new(r.Ohm),
            Thermocouple t => new(t.LeadOhm, alternating ? 0 : state.Signals.ThermocoupleV),
            ResistanceProbe p => new(state.Signals.ProbeOhm ?? p.ColdOhm),
            PressureSensor p => new(p.OutputOhm, alternating || !state.PluggedIn ? 0 : p.ZeroV + p.VoltPerPa * state.Signals.SensedPa),
            _ => throw new CircuitException($"Component '{component.Id}' is of a kind without an electrical model ({component.GetType().Name})."),
        };
    }

    /// <summary>The part's branch changed by a fault.</summary>
    internal static Branch Changed(in Branch healthy, WiringComponent component, CircuitChange change, double angular) => change.State switch
    {
        ComponentState.Healthy or ComponentState.LeakingToEarth => healthy,
        ComponentState.Open => healthy with { ImpedanceOhm = OpenOhm, EmfV = 0, Drop = 0 },
        ComponentState.Shorted => healthy with { ImpedanceOhm = ShortOhm, EmfV = 0, Drop = 0 },
        ComponentState.Drifted => Drifted(healthy, component, change),
        ComponentState.Stalled => component is not Motor m
            ? throw new CircuitException($"Component '{component.Id}' cannot stall; only a motor can.")
            : angular > 0 ? healthy with { ImpedanceOhm = Stalled(m) } : healthy,
    };

    private static Branch Drifted(in Branch healthy, WiringComponent component, CircuitChange change) => component switch
    {
        PressureSensor p when healthy.EmfV != 0 =>
            healthy with { EmfV = p.ZeroV + (healthy.EmfV - p.ZeroV) * change.Factor + change.Offset },
        PressureSensor => healthy,
        Thermocouple or LowVoltageSupply => healthy with { EmfV = healthy.EmfV * change.Factor + change.Offset },
        RunCapacitor => healthy with { ImpedanceOhm = healthy.ImpedanceOhm / change.Factor },
        _ => healthy with { ImpedanceOhm = healthy.ImpedanceOhm * change.Factor + change.Offset },
    };

    private static SeriesValue Output(BoardOutput output, ControlState state, double angular)
    {
        if (state.PluggedIn && state.Calls.HasFlag(output.Call))
            return new(output.OnOhm, 0, output.Kind == OutputKind.PhaseControlled ? 1 - state.Share(output.Call) : 0);
        if (output.Kind == OutputKind.Relay || angular == 0) return new(OpenOhm);
        return new(new Complex(output.SnubberOhm, -1 / (angular * output.SnubberF)));
    }

    private static Complex Running(Motor m) => Impedance(m.RatedV / m.RunningA, m.RunningPowerFactor);

    private static Complex Stalled(Motor m) => Impedance(m.RatedV / m.StalledA, m.StalledPowerFactor);

    private static Complex Impedance(double size, double powerFactor) =>
        new(size * powerFactor, size * Math.Sqrt(1 - powerFactor * powerFactor));
}
