// Which loads stand still because a fault takes their power away?
// P(still) = 0.93 for a load whose voltage under the fault, while it is called, is below 0.35 of the sound one.
// Symbols: voltages in V across the load.
// Validity: faults of the circuit; a fault that states the sign itself keeps what it states.
// Assumptions: seven in a hundred people take a standing motor for a running one, or look between two pulses.
// Source: circuit by nodal analysis; the probability is common practice, no source.
// Worked: lid switch open: 0 V at the feed motor, which then stands still.
using System.Collections.Immutable;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Signs;

/// <summary>What the circuit makes of the signs that show whether a load runs.</summary>
internal static class PoweredSigns
{
    private const double Runs = 0.35;
    private const double Seen = 0.93;

    private static readonly ImmutableArray<(string Part, Condition When, string Sign, string Outcome)> Loads =
    [
        (ComponentIds.FeedMotor, Condition.FanOnly, "feed-pulse", "still"),
        (ComponentIds.Igniter, Condition.FanOnly, "igniter-glow", "dark"),
        (ComponentIds.CombustionBlower, Condition.FanOnly, "combustion-blower-run", "still"),
        (ComponentIds.RoomAirBlower, Condition.HighBurn, "room-blower-run", "still"),
        (ComponentIds.AgitatorMotor, Condition.FanOnly, "agitator", "still"),
        (ComponentIds.CirculatingPump, Condition.HighBurn, "pump-feel", "still"),
    ];

    /// <summary>The faults of a pattern with the symptoms that follow from its circuit.</summary>
    public static IReadOnlyList<Fault> Added(IReadOnlyList<Fault> faults, string pattern)
    {
        if (WiringLibrary.All.FirstOrDefault(w => w.Pattern == pattern) is not { } wiring) return faults;
        var circuit = new ElectricalReadings(wiring, Meter.Ordinary);
        return [.. faults.Select(f => f with { Symptoms = [.. f.Symptoms, .. Follow(f, circuit)] })];
    }

    private static IEnumerable<Symptom> Follow(Fault fault, ElectricalReadings circuit)
    {
        CircuitChange[] changes = [.. fault.Circuit.Where(c => circuit.Wiring.HasComponent(c.Component))];
        if (changes.Length == 0) yield break;
        foreach (var (part, when, sign, outcome) in Loads)
        {
            if (!circuit.Wiring.HasComponent(part) || fault.Symptoms.Any(s => s.Sign == sign)) continue;
            var read = new Observable(Measure.Voltage, part, when);
            if (circuit.Predict(read, [], changes) < Runs * circuit.Predict(read, [], [])) yield return new Symptom(sign, outcome, Seen);
        }
    }
}
