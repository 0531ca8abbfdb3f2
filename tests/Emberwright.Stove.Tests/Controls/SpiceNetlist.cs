using System.Globalization;
using System.Text;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;

namespace Emberwright.Stove.Tests.Controls;

/// <summary>
/// A wiring written as a netlist for ngspice, straight from its records and independent of our own translation.
/// Many copies, one per case, share only the reference node.
/// </summary>
internal sealed class SpiceNetlist(Wiring wiring, bool alternating)
{
    private const double Open = 1e9;
    private const double Short = 0.01;
    private const int CopiesTogether = 10;

    /// <summary>Current of the ohmmeter, A.</summary>
    public const double ProbeA = 1e-6;

    private readonly List<string> _circuits = [];
    private readonly StringBuilder _text = new();
    private int _copies;

    /// <summary>The copies in small circuits.</summary>
    public IReadOnlyList<string> Circuits => _text.Length == 0 ? _circuits : [.. _circuits, _text.ToString()];

    public static string Node(int copy, string point) => point == Points.Neutral ? "0" : $"c{copy}_{point.Replace('-', '_')}";

    public static string CurrentOf(int copy, string component) => $"i(v_{copy}_{component.Replace('-', '_')})";

    public void Add(int copy, ControlState state, CircuitChange change, bool fuseBlown, Meter? meter, (string A, string B)? probe = null)
    {
        for (var i = 0; i < wiring.Components.Length; i++)
        {
            var part = wiring.Components[i];
            Part(copy, part, state, state.Positions.IsOpen(i), part.Id == change.Component ? change : null, fuseBlown);
        }
        Wires(copy);
        if (meter is not null) Metered(copy, change, meter);
        // An ohmmeter: a known current sent in at one point and taken out at the other.
        if (probe is { } p) _text.Append(CultureInfo.InvariantCulture, $"I_probe_{copy} {Node(copy, p.B)} {Node(copy, p.A)} dc {ProbeA:R}\n");
        if (++_copies % CopiesTogether > 0) return;
        _circuits.Add(_text.ToString());
        _text.Clear();
    }

    private void Metered(int copy, CircuitChange change, Meter meter)
    {
        var target = wiring[change.Component];
        string a = Node(copy, target.From), b = Node(copy, target.To);
        Line($"Rmeter_{copy} {a} {b}", meter.InputOhm);
        Line($"Cmeter_{copy} {a} {b}", meter.InputF);
    }

    private void Part(int copy, WiringComponent part, ControlState state, bool open, CircuitChange? change, bool fuseBlown)
    {
        var (from, to, name) = (Node(copy, part.From), Node(copy, part.To), $"{copy}_{part.Id.Replace('-', '_')}");
        if (change?.State == ComponentState.LeakingToEarth)
            Line($"Rleak_{name} {from} {Node(copy, Points.Earth)}", change.LeakOhm!.Value);
        if (change?.State is ComponentState.Open or ComponentState.Shorted)
        {
            Sensed(name, from, to, $"{(change.State == ComponentState.Open ? Open : Short):R}");
            return;
        }
        if (part is Fuse && fuseBlown)
        {
            Sensed(name, from, to, $"{Open:R}");
            return;
        }
        var drifted = change?.State == ComponentState.Drifted;
        var k = drifted ? change!.Factor : 1;
        switch (part)
        {
            case MainsSupply m when state.PluggedIn:
                Source(name, from, to, alternating ? $"dc 0 ac {(state.SupplyV ?? m.NominalV):R}" : "dc 0", k * m.LoopOhm);
                break;
            case MainsSupply:
                break;
            case EarthConductor e when state.PluggedIn:
                Sensed(name, from, to, $"{k * e.LoopOhm:R}");
                break;
            case EarthConductor:
                break;
            case Fuse f:
                Sensed(name, from, to, $"{k * f.ColdOhm:R}");
                break;
            case Connector c:
                Sensed(name, from, to, $"{k * c.ContactOhm:R}");
                break;
            case Interlock c:
                Sensed(name, from, to, $"{k * (open ? Open : c.ClosedOhm):R}");
                break;
            case StartBypass b:
                Sensed(name, from, to, $"{k * (state.PluggedIn && state.ElapsedS < b.UntilS ? b.ClosedOhm : Open):R}");
                break;
            case BoardOutput o when state.PluggedIn && state.Calls.HasFlag(o.Call):
                var share = o.Kind != OutputKind.PhaseControlled ? 1
                    : o.Call == BoardCalls.CombustionBlower ? state.CombustionShare
                    : o.Call == BoardCalls.RoomAirBlower ? state.RoomAirShare : 1;
                _text.Append(CultureInfo.InvariantCulture, $"E_{name} {from} m_{name} {from} 0 {1 - share:R}\n");
                Sensed(name, $"m_{name}", to, $"{k * o.OnOhm:R}");
                break;
            case BoardOutput o when o.Kind == OutputKind.Relay || !alternating:
                Sensed(name, from, to, $"{k * Open:R}");
                break;
            case BoardOutput o:
                Line($"Rs_{name} {from} m_{name}", k * o.SnubberOhm);
                Line($"Cs_{name} m_{name} {to}", o.SnubberF / k);
                break;
            case Motor m when alternating:
                var (amps, factor) = change?.State == ComponentState.Stalled
                    ? (m.StalledA, m.StalledPowerFactor) : (m.RunningA, m.RunningPowerFactor);
                var ohm = m.RatedV / amps;
                Line($"L_{name} {from} m_{name}", k * ohm * Math.Sin(Math.Acos(factor)) / (2 * Math.PI * wiring.Mains.FrequencyHz));
                Sensed(name, $"m_{name}", to, $"{k * ohm * factor:R}");
                break;
            case Motor m:
                Sensed(name, from, to, $"{k * m.WindingOhm:R}");
                break;
            case RunCapacitor c when alternating:
                Line($"C_{name} {from} {to}", k * c.Farad);
                break;
            case RunCapacitor:
                Sensed(name, from, to, $"{Open / k:R}");
                break;
            case Igniter g:
                var hot = alternating && state.PluggedIn && state.Calls.HasFlag(BoardCalls.Igniter);
                Sensed(name, from, to, $"{k * g.RatedV * g.RatedV / g.RatedW / (hot ? 1 : g.HotToCold):R}");
                break;
            case LowVoltageSupply l:
                Source(name, from, to, $"dc {(state.PluggedIn && !alternating ? l.Volts * k : 0):R} ac 0", l.SeriesOhm);
                break;
            case PlainResistance r:
                Sensed(name, from, to, $"{k * r.Ohm:R}");
                break;
            case Thermocouple t:
                Source(name, from, to, $"dc {(alternating ? 0 : state.Signals.ThermocoupleV * k):R} ac 0", t.LeadOhm);
                break;
            case ResistanceProbe p:
                Sensed(name, from, to, $"{k * (state.Signals.ProbeOhm ?? p.ColdOhm):R}");
                break;
            case PressureSensor p:
                Source(name, from, to, $"dc {(state.PluggedIn && !alternating ? p.ZeroV + k * p.VoltPerPa * state.Signals.SensedPa : 0):R} ac 0", p.OutputOhm);
                break;
            default:
                throw new NotSupportedException($"No netlist for {part.GetType().Name}.");
        }
    }

    private void Wires(int copy)
    {
        var earth = Node(copy, Points.Earth);
        var live = Node(copy, Points.Live);
        foreach (var point in wiring.TestPoints)
        {
            if (point.Id == Points.Earth) continue;
            var node = Node(copy, point.Id);
            var name = $"{copy}_{point.Id.Replace('-', '_')}";
            Line($"Rins_{name} {node} {earth}", wiring.Harness.InsulationOhm);
            if (!alternating || point.Id is Points.Neutral or Points.Live || point.Circuit != SupplyCircuit.Mains) continue;
            Line($"Cl_{name} {node} {live}", wiring.Harness.ToLiveF);
            Line($"Ce_{name} {node} {earth}", wiring.Harness.ToEarthF);
        }
    }

    /// <summary>A resistance with an ammeter (a source of 0 V) in series.</summary>
    private void Sensed(string name, string from, string to, string ohm)
    {
        _text.Append(CultureInfo.InvariantCulture, $"V_{name} {from} a_{name} dc 0 ac 0\nR_{name} a_{name} {to} {ohm}\n");
    }

    private void Source(string name, string from, string to, string volts, double ohm)
    {
        _text.Append(CultureInfo.InvariantCulture, $"V_{name} {from} a_{name} {volts}\nR_{name} a_{name} {to} {ohm:R}\n");
    }

    private void Line(string head, double value) => _text.Append(CultureInfo.InvariantCulture, $"{head} {value:R}\n");
}
