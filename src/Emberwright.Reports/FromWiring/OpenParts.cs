// Where along a path does the current stop?
// Equation: a part that is no load drops next to nothing when it conducts; the part between two test points whose volts differ by
//   more than a fifth of the supply is open. Where several parts lie between two points read, any of them may be it.
// Symbols: volts at test points, V.
// Validity: while the board calls for the load; with nothing called the output itself is open, as it should be.
// Assumptions: readings of one state belong together; where nothing was read, what is expected holds.
// Source: Kirchhoff's voltage law.
// Worked value: 120 V at point 3 and 0.4 V at point 4 of a 120 V chain: what lies between 3 and 4 is open.

using System.Collections.Immutable;
using Emberwright.Reports.Pictures.Wiring;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;

namespace Emberwright.Reports.FromWiring;

/// <summary>Which parts of a path are open, by readings first and by expectation where nothing was read.</summary>
internal sealed class OpenParts
{
    private const double ShareOfSupply = 0.2;

    private readonly Dictionary<string, PartState> _states = [];
    private readonly HashSet<string> _resting = [];
    private readonly HashSet<string> _bridged;

    /// <summary>Judges every part of the path.</summary>
    /// <param name="path">The path.</param>
    /// <param name="expected">Volts at a test point or across a part; true asks with what is supposed wrong.</param>
    /// <param name="operation">What the controls are doing.</param>
    /// <param name="supposed">Components supposed at fault.</param>
    /// <param name="readings">What was read.</param>
    public OpenParts(
        LoadPath path, Func<string, bool, double> expected, Operation operation, ImmutableArray<CircuitChange> supposed,
        IReadOnlyDictionary<(Measure Measure, string Place), double> readings)
    {
        var limit = ShareOfSupply * path.SupplyV;
        var rest = path.Wiring.In(operation);
        _bridged = [.. path.Parts.Where(p => rest.PluggedIn && path.Wiring.Components.OfType<StartBypass>().Any(b => b.From == p.From && b.To == p.To && rest.ElapsedS < b.UntilS)).Select(p => p.Id)];
        foreach (var part in path.Parts)
        {
            var broken = supposed.Any(c => c.Component == part.Id && c.State == ComponentState.Open);
            var (sound, now) = (false, broken);
            if (operation == Operation.Unplugged) sound = part is BoardOutput || rest.Positions.IsOpen(path.Wiring.ComponentIndex(part.Id));
            else if (!IsLoad(part)) (sound, now) = (Math.Abs(expected(part.Id, false)) > limit, Math.Abs(expected(part.Id, true)) > limit);
            if (sound && !broken) _resting.Add(part.Id);
            _states[part.Id] = now || sound && operation == Operation.Unplugged ? PartState.Open : PartState.Closed;
        }
        ReadBetweenPoints(path, limit, readings);
        foreach (var part in path.Parts)
            if (!IsLoad(part) && readings.TryGetValue((Measure.Voltage, part.Id), out var across))
                _states[part.Id] = Math.Abs(across) > limit ? PartState.Open : PartState.Closed;
    }

    /// <summary>Whether current can pass a part.</summary>
    public PartState this[string part] => _states[part];

    /// <summary>True when the part stands open in a sound stove too, in this state.</summary>
    public bool Resting(string part) => _resting.Contains(part);

    /// <summary>True for what is meant to take the voltage.</summary>
    public static bool IsLoad(WiringComponent part) => part is Motor or Igniter or ResistanceProbe or PressureSensor or Thermocouple;

    private void ReadBetweenPoints(LoadPath path, double limit, IReadOnlyDictionary<(Measure Measure, string Place), double> readings)
    {
        var from = -1;
        for (var i = 0; i <= path.Parts.Length; i++)
        {
            var point = i < path.Parts.Length ? path.Parts[i].From : path.Load.To;
            // The return is 0 V by definition: it need not be read.
            double? read = readings.TryGetValue((Measure.Voltage, point), out var volts) ? volts : i == path.Parts.Length ? 0 : null;
            if (read is null) continue;
            ReadOnlySpan<WiringComponent> between = from < 0 ? [] : path.Parts.AsSpan()[from..i];
            if (between.Length > 0 && !IsLoad(between[^1])) Judge(between, Math.Abs(Volts(path, from, readings) - read.Value) > limit);
            from = i;
        }
    }

    private static double Volts(LoadPath path, int index, IReadOnlyDictionary<(Measure Measure, string Place), double> readings) =>
        readings[(Measure.Voltage, path.Parts[index].From)];

    // What the board goes round now carries no blame for an open.
    private void Judge(ReadOnlySpan<WiringComponent> between, bool drops)
    {
        var suspected = 0;
        foreach (var part in between)
            if (!_bridged.Contains(part.Id)) suspected++;
        var open = !drops ? PartState.Closed : suspected == 1 ? PartState.Open : PartState.Unknown;
        foreach (var part in between) _states[part.Id] = _bridged.Contains(part.Id) ? PartState.Closed : open;
    }
}
