namespace Emberwright.Stove.Patterns;

/// <summary>What a technician knows of one make and model: overrides of its pattern. A portable file.</summary>
public sealed record StoveCard
{
    /// <summary>Pattern the card refines.</summary>
    public required string Pattern { get; init; }

    /// <summary>Values a healthy stove of this model reads, at <see cref="HealthySite"/>.</summary>
    public IReadOnlyList<HealthyValue> Healthy { get; init; } = [];

    /// <summary>Where and when those values hold; null is the pattern's own vent on the reference day at sea level.</summary>
    public Site? HealthySite { get; init; }

    /// <summary>Port the vacuum switch's hose joins; null takes the pattern's.</summary>
    public string? SensePort { get; init; }

    /// <summary>Vacuum at which the switch closes, Pa below room; null takes the pattern's.</summary>
    public double? SwitchClosesPa { get; init; }

    /// <summary>Vacuum at which the switch opens, Pa below room; null takes the pattern's.</summary>
    public double? SwitchOpensPa { get; init; }
}

/// <summary>A reading of the healthy stove as the card states it.</summary>
/// <param name="Observable">What is read, where, in which condition.</param>
/// <param name="Value">Value in the measure's unit.</param>
public sealed record HealthyValue(Observable Observable, double Value);
