namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>
/// What hands meet on a stove of a family: what comes off, where ash hides, what seals, where sensors sit, and how to learn
/// what is not known. It is not the air path, which computes; ids of the air path's links tie the two together.
/// </summary>
public sealed record Anatomy
{
    /// <summary>What opens, in the order of the work.</summary>
    public required IReadOnlyList<AccessPanel> Panels { get; init; }

    /// <summary>Where ash hides, in the order gas passes.</summary>
    public required IReadOnlyList<AshTrap> AshTraps { get; init; }

    /// <summary>What seals.</summary>
    public required IReadOnlyList<Gasket> Gaskets { get; init; }

    /// <summary>Switches, probes and sensors.</summary>
    public required IReadOnlyList<SensorPlace> Sensors { get; init; }

    /// <summary>How to learn each datum a card can hold.</summary>
    public required IReadOnlyList<CardDatum> HowToFind { get; init; }

    /// <summary>The panel with this id; null when there is none.</summary>
    public AccessPanel? Panel(string id) => Panels.FirstOrDefault(p => p.Id == id);

    /// <summary>Panels that serve an area.</summary>
    public IEnumerable<AccessPanel> PanelsFor(Area area) => Panels.Where(p => p.Serves.Contains(area));

    /// <summary>Ash traps that are worked on with an area.</summary>
    public IEnumerable<AshTrap> AshTrapsOf(Area area) => AshTraps.Where(t => t.Area == area);
}
