using System.Collections.Immutable;

namespace Emberwright.Stove.Controls;

/// <summary>
/// The way of the current to one load or sensor: the parts in series with it, from the supply downwards. It follows the
/// wiring as it is, so a card that changes the order of the interlocks changes the path too.
/// </summary>
/// <param name="Wiring">The circuit.</param>
/// <param name="Parts">Parts in the order of the current; the last is the load.</param>
public sealed record LoadPath(Wiring Wiring, ImmutableArray<WiringComponent> Parts)
{
    private const double HotThermocoupleV = 0.025;

    /// <summary>The load at the end of the path.</summary>
    public WiringComponent Load => Parts[^1];

    /// <summary>Which supply the load belongs to.</summary>
    public SupplyCircuit Circuit => Wiring.TestPoints[Wiring.PointIndex(Load.From)].Circuit;

    /// <summary>Ids of the test points along the path; the last is neutral or board common.</summary>
    public IEnumerable<string> Points => Parts.Select(p => p.From).Append(Load.To);

    /// <summary>The voltage that the path divides up, V: the mains', its loop's, or what a thermocouple gives when hot.</summary>
    public double SupplyV => Load is Thermocouple ? HotThermocoupleV
        : Circuit == SupplyCircuit.Mains ? Wiring.Mains.NominalV
        : Wiring.Components.OfType<LowVoltageSupply>().FirstOrDefault(s => s.From == Parts[0].From)?.Volts
            ?? Wiring.Components.OfType<LowVoltageSupply>().Max(s => s.Volts);

    /// <summary>Every path of a wiring: mains loads in its order, then the room thermostat's loop, probes, the thermocouple and the pressure sensor.</summary>
    /// <param name="wiring">The circuit.</param>
    public static IEnumerable<LoadPath> All(Wiring wiring) => wiring.Components
        .Where(c => c is Motor or Igniter && c.Id != ComponentIds.CombustionAuxiliary
            || c is Interlock { Kind: ContactKind.Thermostat } or ResistanceProbe or PressureSensor or Thermocouple)
        .OrderBy(c => c is Motor or Igniter ? 0 : 1)
        .Select(c => To(wiring, c.Id));

    /// <summary>The path to one load.</summary>
    /// <param name="wiring">The circuit.</param>
    /// <param name="load">Id of the component at its end.</param>
    /// <exception cref="CircuitException">The id names no component.</exception>
    public static LoadPath To(Wiring wiring, string load)
    {
        var parts = new Stack<WiringComponent>([wiring[load]]);
        while (Above(wiring, parts.Peek()) is { } above) parts.Push(above);
        return new LoadPath(wiring, [.. parts]);
    }

    // A board's bridge lies beside a contact and is not in series; a source is where a path begins.
    private static WiringComponent? Above(Wiring wiring, WiringComponent part) => wiring.Components.FirstOrDefault(c =>
        c.To == part.From && c is not (MainsSupply or EarthConductor or StartBypass or LowVoltageSupply));
}
