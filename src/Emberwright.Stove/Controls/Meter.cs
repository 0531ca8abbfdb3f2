// What does a hand-held multimeter show between two test points?
// Equation: V_shown = V·Z_m/(Z_m + Z_th), Z_th the circuit's own impedance between the leads (Thévenin); R_shown = Z_th with the plug out.
// Symbols: V open voltage (V rms), Z_m meter input impedance (Ω), Z_th (Ω).
// Validity: sine and phase-controlled waves on a true-rms meter; resistances up to the meter's range, above which it shows overload.
// Assumptions: leads short against the wavelength; lead resistance taken off (relative zero).
// Source: Thévenin's theorem; input impedance 10 MΩ beside 100 pF is usual for hand-held meters (common practice, no source).
// Worked value: 120 V behind 26.5 MΩ (100 pF at 60 Hz) into 10 MΩ shows 120·10/√(10² + 26.5²) = 42.4 V (a ghost).

using System.Numerics;
using Emberwright.Stove.Faults;

namespace Emberwright.Stove.Controls;

/// <summary>A multimeter: its input impedance, range and accuracy.</summary>
/// <param name="InputOhm">Input resistance on volts, Ω.</param>
/// <param name="InputF">Input capacitance on volts, F.</param>
/// <param name="LowInputOhm">Input resistance on the low-impedance function, Ω.</param>
/// <param name="OverloadOhm">Highest resistance shown, Ω; above it the meter shows overload.</param>
public sealed record Meter(double InputOhm, double InputF, double LowInputOhm, double OverloadOhm)
{
    /// <summary>Share by which a sound run capacitor and an ordinary meter together may be off: ±5 % and 2 % (common practice, no source).</summary>
    private const double CapacitorTolerance = 0.07;

    private const string PlugOut =
        "Pull the plug, prove the circuit dead and isolate the part first: ohms on a live circuit damage the meter and can injure.";

    private const string Discharge =
        "Plug out, then discharge: a charged capacitor bites long after. Bridge its terminals through a 20 kΩ, 5 W resistor for 5 s, read 0 V DC, take a lead off.";

    private const string Dead = "Plug out and proved dead before the leads touch; a lead of the part off, or another path beside it is read too.";

    private const string BesideMains = "A low-voltage loop, but mains is live beside it: insulated probes, one hand.";

    private const string LiveCaution =
        "Live mains: one hand, rings off, leads rated for the place. Only while the board calls does 0 V or supply mean anything.";

    /// <summary>An ordinary true-rms hand-held meter: 10 MΩ beside 100 pF, 3 kΩ on low impedance, 40 MΩ (common practice, no source).</summary>
    public static Meter Ordinary { get; } = new(10e6, 100e-12, 3e3, 40e6);

    /// <summary>What the meter shows between two test points.</summary>
    /// <param name="wiring">The circuit.</param>
    /// <param name="state">What board and switches do.</param>
    /// <param name="changes">Components at fault.</param>
    /// <param name="function">How the knob stands; amps need a component, see <see cref="Across"/>.</param>
    /// <param name="first">Id of the test point of the first lead.</param>
    /// <param name="second">Id of the test point of the second; ignored for ohms to earth.</param>
    /// <exception cref="CircuitException">An id is unknown, or amps were asked for between two points.</exception>
    public MeterReading Between(
        Wiring wiring, ControlState state, ReadOnlySpan<CircuitChange> changes, MeterFunction function, string first, string second)
    {
        int a = wiring.PointIndex(first), b = wiring.PointIndex(second);
        switch (function)
        {
            case MeterFunction.AcVolts:
            case MeterFunction.AcVoltsLowImpedance:
                var solved = SolvedWiring.Alternating(wiring, state, changes);
                return AcVolts(solved, a, b, function, state.PluggedIn);
            case MeterFunction.DcVolts:
            case MeterFunction.DcMillivolts:
                var direct = SolvedWiring.Direct(wiring, state, changes);
                var volts = direct.VoltageV(a, b, InputOhm).Real;
                return new(function, Measure.Voltage, volts, function == MeterFunction.DcVolts ? 0.01 + 0.005 * Math.Abs(volts) : 2e-4 + 0.005 * Math.Abs(volts),
                    Caution: state.PluggedIn ? BesideMains : null);
            case MeterFunction.Ohms:
            case MeterFunction.Continuity:
                return state.PluggedIn ? Refuse(function) : Ohms(wiring, state, changes, function, a, b);
            case MeterFunction.OhmsToEarth:
                return state.PluggedIn ? Refuse(function) : Ohms(wiring, state, changes, function, a, wiring.PointIndex(Points.Earth));
            case MeterFunction.Capacitance:
            case MeterFunction.AcAmps:
            default:
                throw new CircuitException($"{function} is read on a component, not between test points; name the component.");
        }
    }

    /// <summary>
    /// What the meter shows across a component: volts and amps in circuit; ohms and continuity on the part alone, its leads off;
    /// ohms to earth from its live terminal, its leads off; capacitance of a discharged capacitor, a lead off.
    /// </summary>
    /// <param name="wiring">The circuit.</param>
    /// <param name="state">What board and switches do.</param>
    /// <param name="changes">Components at fault.</param>
    /// <param name="function">How the knob stands.</param>
    /// <param name="component">Id of the component.</param>
    /// <exception cref="CircuitException">The component is unknown.</exception>
    public MeterReading Across(
        Wiring wiring, ControlState state, ReadOnlySpan<CircuitChange> changes, MeterFunction function, string component)
    {
        var part = wiring[component];
        switch (function)
        {
            case MeterFunction.AcAmps:
                var amps = SolvedWiring.Alternating(wiring, state, changes).CurrentA(component);
                return new(function, Measure.Current, amps, 0.02 + 0.15 * amps, Caution: state.PluggedIn ? LiveCaution : null,
                    Note: wiring.FeedChain.Contains(component) || component.StartsWith("feed", StringComparison.Ordinal)
                        ? "Clamp round one lead only, through a whole feed pulse." : "Clamp round one lead only.");
            case MeterFunction.Ohms:
            case MeterFunction.Continuity:
                if (state.PluggedIn) return Refuse(function);
                return Shown(function, IsolatedPart.ResistanceOhm(wiring, state, changes, component), part);
            case MeterFunction.OhmsToEarth:
                if (state.PluggedIn) return Refuse(function);
                return Shown(function, IsolatedPart.ToEarthOhm(wiring, changes, component), part);
            case MeterFunction.Capacitance:
                if (state.PluggedIn) return new(function, Measure.Capacitance, double.NaN, 0, Refused: true, Caution: Discharge);
                var farad = IsolatedPart.CapacitanceF(wiring, changes, component);
                return new(function, Measure.Capacitance, farad, CapacitorTolerance * (double.IsInfinity(farad) ? 0 : farad), Caution: Discharge,
                    Note: double.IsInfinity(farad) ? "A shorted capacitor never charges: the meter shows overload." : "Run capacitors are made to ±5 %; one a tenth below its label is worn.");
            case MeterFunction.AcVolts:
            case MeterFunction.AcVoltsLowImpedance:
            case MeterFunction.DcVolts:
            case MeterFunction.DcMillivolts:
            default:
                return Between(wiring, state, changes, function, part.From, part.To);
        }
    }

    /// <summary>Input impedance on alternating volts, Ω.</summary>
    /// <param name="angular">2πf, rad/s.</param>
    /// <param name="lowImpedance">True for the low-impedance function.</param>
    public Complex InputImpedanceOhm(double angular, bool lowImpedance) =>
        lowImpedance ? LowInputOhm : Complex.One / new Complex(1 / InputOhm, angular * InputF);

    private MeterReading AcVolts(SolvedWiring solved, int a, int b, MeterFunction function, bool pluggedIn)
    {
        var input = InputImpedanceOhm(solved.Wiring.Netlist.AngularFrequency, function == MeterFunction.AcVoltsLowImpedance);
        var shown = solved.VoltageV(a, b, input).Magnitude;
        var open = solved.OpenVoltageV(a, b).Magnitude;
        var loaded = solved.VoltageV(a, b, LowInputOhm).Magnitude;
        var ghost = open > 1 && (shown < 0.9 * open || (shown > 1 && loaded < 0.5 * shown));
        string? note = ghost ? "Ghost voltage on an open lead: it fades on the low-impedance function and drives no current." : null;
        if (solved.FuseBlown) note = "The fault blows the fuse; this is what is left after it.";
        return new(function, Measure.Voltage, shown, Math.Max(0.5, 0.02 * shown), Caution: pluggedIn ? LiveCaution : null, Note: note);
    }

    private MeterReading Ohms(Wiring wiring, ControlState state, ReadOnlySpan<CircuitChange> changes, MeterFunction function, int a, int b) =>
        Shown(function, a == b ? 0 : SolvedWiring.Direct(wiring, state, changes).ImpedanceOhm(a, b).Real, null);

    private MeterReading Shown(MeterFunction function, double ohm, WiringComponent? part)
    {
        var spread = part switch { Motor => 0.15, Igniter { Kind: IgniterKind.Wire } => 0.08, Igniter => 0.5, _ => 0.02 };
        var value = ohm > OverloadOhm ? double.PositiveInfinity : ohm;
        var tolerance = double.IsInfinity(value) ? 0 : 0.2 + spread * value;
        return new(function, Measure.Resistance, value, tolerance, Caution: Dead, Note: part is Motor ? "Winding resistance; running current does not follow from it." : null);
    }

    private static MeterReading Refuse(MeterFunction function) =>
        new(function, Measure.Resistance, double.NaN, 0, Refused: true, Caution: PlugOut);
}
