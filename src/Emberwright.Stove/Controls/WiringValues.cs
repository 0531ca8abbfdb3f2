namespace Emberwright.Stove.Controls;

/// <summary>Checks that every part of a wiring has its values and that they can be true.</summary>
internal static class WiringValues
{
    /// <summary>Throws, naming the component, when a value is missing or impossible.</summary>
    internal static void Require(WiringComponent part)
    {
        switch (part)
        {
            case MainsSupply s:
                Positive(s.NominalV, part, "voltage", "V");
                Positive(s.FrequencyHz, part, "frequency", "Hz");
                Positive(s.LoopOhm, part, "loop resistance", "Ω");
                break;
            case EarthConductor e:
                Positive(e.LoopOhm, part, "loop resistance", "Ω");
                break;
            case Fuse f:
                Positive(f.RatedA, part, "rating", "A");
                Positive(f.ColdOhm, part, "resistance", "Ω");
                break;
            case Connector c:
                Positive(c.ContactOhm, part, "contact resistance", "Ω");
                break;
            case Interlock i:
                Positive(i.ClosedOhm, part, "closed resistance", "Ω");
                break;
            case StartBypass b:
                Positive(b.ClosedOhm, part, "closed resistance", "Ω");
                Positive(b.UntilS, part, "time", "s");
                break;
            case BoardOutput o:
                Positive(o.OnOhm, part, "on resistance", "Ω");
                if (o.Kind == OutputKind.Relay) break;
                Positive(o.SnubberOhm, part, "snubber resistor", "Ω");
                Positive(o.SnubberF, part, "snubber capacitor", "F");
                break;
            case Motor m:
                Motor(m);
                break;
            case RunCapacitor c:
                Positive(c.Farad, part, "capacitance", "F");
                break;
            case Igniter g:
                Positive(g.RatedV, part, "rated voltage", "V");
                Positive(g.RatedW, part, "rated power", "W");
                Positive(g.HotToCold, part, "hot-to-cold ratio", "");
                break;
            case LowVoltageSupply l:
                Positive(l.Volts, part, "voltage", "V");
                Positive(l.SeriesOhm, part, "series resistance", "Ω");
                break;
            case PlainResistance r:
                Positive(r.Ohm, part, "resistance", "Ω");
                break;
            case Thermocouple t:
                Positive(t.LeadOhm, part, "lead resistance", "Ω");
                break;
            case ResistanceProbe p:
                Positive(p.ColdOhm, part, "resistance at 20 °C", "Ω");
                break;
            case PressureSensor p:
                Positive(p.OutputOhm, part, "output resistance", "Ω");
                break;
            default:
                throw new CircuitException($"Component '{part.Id}' is of a kind without an electrical model ({part.GetType().Name}).");
        }
    }

    private static void Motor(Motor m)
    {
        Positive(m.RatedV, m, "rated voltage", "V");
        Positive(m.WindingOhm, m, "winding resistance", "Ω");
        Positive(m.RunningA, m, "running current", "A");
        Positive(m.RunningPowerFactor, m, "running power factor", "");
        Positive(m.StalledPowerFactor, m, "stalled power factor", "");
        if (m.RunningPowerFactor > 1 || m.StalledPowerFactor > 1)
            throw new CircuitException($"Component '{m.Id}' has a power factor above 1; allowed is more than 0 up to 1.");
        if (!(m.StalledA >= m.RunningA))
            throw new CircuitException($"Component '{m.Id}' draws {m.StalledA} A stalled, less than running; give the larger current with the rotor held.");
        if (m.RatedV / m.StalledA < m.WindingOhm)
            throw new CircuitException(
                $"Component '{m.Id}' cannot draw {m.StalledA} A at {m.RatedV} V through a winding of {m.WindingOhm} Ω; check current and winding.");
    }

    private static void Positive(double value, WiringComponent part, string what, string unit)
    {
        if (!(value > 0 && double.IsFinite(value)))
            throw new CircuitException($"Component '{part.Id}' has the {what} {value} {unit}".TrimEnd() + "; give a number above 0.");
    }
}
