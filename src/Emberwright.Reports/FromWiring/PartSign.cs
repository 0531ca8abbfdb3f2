using System.Collections.Immutable;
using Emberwright.Reports.Pictures.Wiring;
using Emberwright.Reports.Wording;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Quantities;
using MeterReading = Emberwright.Stove.Controls.MeterReading;

namespace Emberwright.Reports.FromWiring;

/// <summary>One part of the circuit as the wiring picture shows it: sign, state, one line of detail, ohms with the plug out.</summary>
/// <param name="wiring">The circuit.</param>
/// <param name="operation">What the controls are doing.</param>
/// <param name="supposed">Components supposed at fault.</param>
/// <param name="readings">What was read.</param>
/// <param name="expecting">False leaves the engine's own expectation out.</param>
internal sealed class PartSign(
    Wiring wiring, Operation operation, ImmutableArray<CircuitChange> supposed,
    IReadOnlyDictionary<(Measure Measure, string Place), double> readings, bool expecting)
{
    /// <summary>The part's sign.</summary>
    /// <param name="part">The part.</param>
    /// <param name="opens">Which parts are open.</param>
    public WiringPart Of(WiringComponent part, OpenParts opens)
    {
        var sign = new WiringPart(part.Id, Say.Term(part.Name), Kind(part))
        {
            State = opens[part.Id],
            AsItShould = opens.Resting(part.Id),
            Detail = Detail(part, opens[part.Id]),
        };
        if (operation != Operation.Unplugged || !new ElectricalReadings(wiring, Stove.Controls.Meter.Ordinary).Knows(Measure.Resistance, part.Id) || part is BoardOutput or PressureSensor)
            return sign;
        var sound = Stove.Controls.Meter.Ordinary.Across(wiring, wiring.In(operation), supposed.AsSpan(), MeterFunction.Ohms, part.Id);
        double? read = readings.TryGetValue((Measure.Resistance, part.Id), out var ohm) ? ohm : null;
        return sign with
        {
            ExpectOhms = expecting ? Range(sound) : null,
            ReadOhms = read is { } r ? Ohms(r) : null,
            OhmsOut = expecting && read is { } value && IsOut(value, sound),
        };
    }

    private static PartKind Kind(WiringComponent part) => part switch
    {
        Interlock or BoardOutput => PartKind.Switch,
        Motor => PartKind.Motor,
        Igniter => PartKind.Heater,
        Fuse => PartKind.Fuse,
        Connector => PartKind.Connector,
        _ => PartKind.Other,
    };

    private string? Detail(WiringComponent part, PartState state)
    {
        var said = new List<string>();
        if (part is Interlock { Reset: ResetKind.Manual }) said.Add(Say.Of("circuit.reset-by-hand"));
        if (part is Fuse fuse) said.Add($"{QuantityFormat.Number(fuse.RatedA, 0.1)} A");
        if (part is BoardOutput output)
        {
            if (output.Kind != OutputKind.Relay) said.Add(Say.Of("circuit.triac-read-with-the-load-joined"));
            if (operation != Operation.Unplugged && !wiring.In(operation).Calls.HasFlag(output.Call)) said.Add(Say.Of("circuit.not-called-now"));
        }
        if (wiring.Components.OfType<StartBypass>().Any(b => b.From == part.From && b.To == part.To) && operation == Operation.Igniting)
            said.Add(Say.Of("circuit.the-board-goes-round-it-while-it"));
        if (operation != Operation.Unplugged && readings.TryGetValue((Measure.Voltage, part.Id), out var across))
            said.Add(Say.Of("circuit.read-v-across", Volts(across)));
        if (readings.TryGetValue((Measure.Current, part.Id), out var amps)) said.Add(Say.Of("circuit.read-a", QuantityFormat.Number(amps, 0.01)));
        if (state == PartState.Unknown) said.Add(Say.Of("circuit.read-below-it-to-tell"));
        return said.Count == 0 ? null : string.Join(" · ", said);
    }

    private static string Range(MeterReading sound)
    {
        if (double.IsPositiveInfinity(sound.Value)) return Say.Of("common.open");
        if (sound.Value < 2) return Say.Of("circuit.below-2");
        var step = Step(sound.Value);
        return $"{QuantityFormat.Number(sound.Value - sound.Tolerance, step)}–{QuantityFormat.Number(sound.Value + sound.Tolerance, step)} Ω";
    }

    private static bool IsOut(double read, MeterReading sound) =>
        double.IsPositiveInfinity(sound.Value) ? double.IsFinite(read) && read < 1e6
            : double.IsInfinity(read) || Math.Abs(read - sound.Value) > Math.Max(sound.Tolerance, 2);

    private static string Ohms(double ohm) => QuantityFormat.In(ohm, MeasureUnits.Of(Measure.Resistance), Step(ohm));

    private static double Step(double ohm) => ohm < 10 ? 0.1 : 1;

    private static string Volts(double volts) => QuantityFormat.Number(volts, Math.Abs(volts) >= 20 ? 1 : 0.1);
}
