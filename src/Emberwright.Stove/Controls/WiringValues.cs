namespace Emberwright.Stove.Controls;

/// <summary>Checks that every part of a wiring has its values and that they can be true.</summary>
internal static class WiringValues
{
    private const double Any = double.PositiveInfinity;

    /// <summary>What each kind of part must state: a number above 0, up to the most.</summary>
    private static readonly Dictionary<Type, Value[]> Values = new()
    {
        [typeof(MainsSupply)] = [Of<MainsSupply>("voltage", "V", s => s.NominalV), Of<MainsSupply>("frequency", "Hz", s => s.FrequencyHz), Of<MainsSupply>("loop resistance", "Ω", s => s.LoopOhm)],
        [typeof(EarthConductor)] = [Of<EarthConductor>("loop resistance", "Ω", e => e.LoopOhm)],
        [typeof(Fuse)] = [Of<Fuse>("rating", "A", f => f.RatedA), Of<Fuse>("resistance", "Ω", f => f.ColdOhm)],
        [typeof(Connector)] = [Of<Connector>("contact resistance", "Ω", c => c.ContactOhm)],
        [typeof(Interlock)] = [Of<Interlock>("closed resistance", "Ω", i => i.ClosedOhm)],
        [typeof(StartBypass)] = [Of<StartBypass>("closed resistance", "Ω", b => b.ClosedOhm), Of<StartBypass>("time", "s", b => b.UntilS)],
        [typeof(BoardOutput)] =
        [
            Of<BoardOutput>("on resistance", "Ω", o => o.OnOhm),
            Of<BoardOutput>("snubber resistor", "Ω", o => o.Kind == OutputKind.Relay ? 1 : o.SnubberOhm),
            Of<BoardOutput>("snubber capacitor", "F", o => o.Kind == OutputKind.Relay ? 1 : o.SnubberF),
        ],
        [typeof(Motor)] =
        [
            Of<Motor>("rated voltage", "V", m => m.RatedV), Of<Motor>("winding resistance", "Ω", m => m.WindingOhm), Of<Motor>("running current", "A", m => m.RunningA),
            Of<Motor>("running power factor", "", m => m.RunningPowerFactor, 1), Of<Motor>("stalled power factor", "", m => m.StalledPowerFactor, 1),
        ],
        [typeof(RunCapacitor)] = [Of<RunCapacitor>("capacitance", "F", c => c.Farad)],
        [typeof(Igniter)] = [Of<Igniter>("rated voltage", "V", g => g.RatedV), Of<Igniter>("rated power", "W", g => g.RatedW), Of<Igniter>("hot-to-cold ratio", "", g => g.HotToCold)],
        [typeof(LowVoltageSupply)] = [Of<LowVoltageSupply>("voltage", "V", l => l.Volts), Of<LowVoltageSupply>("series resistance", "Ω", l => l.SeriesOhm)],
        [typeof(PlainResistance)] = [Of<PlainResistance>("resistance", "Ω", r => r.Ohm)],
        [typeof(Thermocouple)] = [Of<Thermocouple>("lead resistance", "Ω", t => t.LeadOhm)],
        [typeof(ResistanceProbe)] = [Of<ResistanceProbe>("resistance at 20 °C", "Ω", p => p.ColdOhm)],
        [typeof(PressureSensor)] = [Of<PressureSensor>("output resistance", "Ω", p => p.OutputOhm)],
    };

    /// <summary>Throws, naming the component, when a value is missing or impossible.</summary>
    internal static void Require(WiringComponent part)
    {
        if (!Values.TryGetValue(part.GetType(), out var values))
            throw new CircuitException($"Component '{part.Id}' is of a kind without an electrical model ({part.GetType().Name}).");
        foreach (var value in values) value.Require(part);
        if (part is Motor motor) RequireStalled(motor);
    }

    private static void RequireStalled(Motor m)
    {
        if (!(m.StalledA >= m.RunningA))
            throw new CircuitException($"Component '{m.Id}' draws {m.StalledA} A stalled, less than running; give the larger current with the rotor held.");
        if (m.RatedV / m.StalledA < m.WindingOhm)
            throw new CircuitException(
                $"Component '{m.Id}' cannot draw {m.StalledA:G4} A at {m.RatedV:G4} V through a winding of {m.WindingOhm:G4} Ω; check current and winding.");
    }

    private static Value Of<T>(string what, string unit, Func<T, double> get, double most = Any) where T : WiringComponent =>
        new(what, unit, part => get((T)part), most);

    private sealed record Value(string What, string Unit, Func<WiringComponent, double> Get, double Most)
    {
        public void Require(WiringComponent part)
        {
            var value = Get(part);
            if (value > 0 && double.IsFinite(value) && value <= Most) return;
            throw new CircuitException($"Component '{part.Id}' has the {What} {value} {Unit}".TrimEnd()
                + (double.IsInfinity(Most) ? "; give a number above 0." : $"; give a number above 0 and up to {Most}."));
        }
    }
}
