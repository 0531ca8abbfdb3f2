using Emberwright.Stove.Patterns.Anatomies;

namespace Emberwright.Stove.Patterns;

/// <summary>What a technician knows of one make and model: overrides of its pattern. A portable file.</summary>
public sealed record StoveCard
{
    /// <summary>Pattern the card refines.</summary>
    public required string Pattern { get; init; }

    /// <summary>Make and model as on the label; empty when not said.</summary>
    public string Name { get; init; } = "";

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

    /// <summary>Nameplate figures of electrical parts.</summary>
    public IReadOnlyList<PartRating> Parts { get; init; } = [];

    /// <summary>How its controls differ from the pattern's; null when the card says nothing of them.</summary>
    public CardWiring? Wiring { get; init; }

    /// <summary>Settings of the board as they should be.</summary>
    public IReadOnlyList<CardParameter> Parameters { get; init; } = [];

    /// <summary>What the listing allows of the vent; null when not known.</summary>
    public VentLimits? VentLimits { get; init; }

    /// <summary>Alarm codes and what they mean.</summary>
    public IReadOnlyList<CardCode> Codes { get; init; } = [];

    /// <summary>Access panels: where, with what fasteners and gasket.</summary>
    public IReadOnlyList<CardAccess> Access { get; init; } = [];

    /// <summary>Gaskets that differ from the pattern's.</summary>
    public IReadOnlyList<CardGasket> Gaskets { get; init; } = [];

    /// <summary>The technician's own files: manual, diagram, bulletin, recall.</summary>
    public IReadOnlyList<CardDocument> Documents { get; init; } = [];
}

/// <summary>A reading of the healthy stove as the card states it.</summary>
/// <param name="Observable">What is read, where, in which condition.</param>
/// <param name="Value">Value in the measure's unit.</param>
public sealed record HealthyValue(Observable Observable, double Value);

/// <summary>Nameplate figures of one electrical part; null where not stated.</summary>
/// <param name="Component">Component id of the wiring, e.g. <c>igniter</c>.</param>
/// <param name="PowerW">Power, W.</param>
/// <param name="ResistanceOhm">Winding or element resistance, Ω.</param>
/// <param name="CurrentA">Running current, A.</param>
/// <param name="SpeedPerMin">Speed, 1/min.</param>
public sealed record PartRating(string Component, double? PowerW, double? ResistanceOhm, double? CurrentA, double? SpeedPerMin)
{
    /// <summary>Capacitance of a run capacitor, F; null when not stated.</summary>
    public double? CapacitanceF { get; init; }
}

/// <summary>What the appliance's listing allows of the vent; null where not stated.</summary>
/// <param name="LongestEquivalentM">Longest equivalent length, m.</param>
/// <param name="LongestHorizontalM">Longest horizontal part, m.</param>
/// <param name="LeastRiseM">Least rise, m.</param>
public sealed record VentLimits(double? LongestEquivalentM, double? LongestHorizontalM, double? LeastRiseM);

/// <summary>An alarm code.</summary>
/// <param name="Code">As the stove shows it, blinks included.</param>
/// <param name="Meaning">What it means.</param>
public sealed record CardCode(string Code, string Meaning)
{
    /// <summary>Id of the alarm it stands for, see <see cref="Controls.Sequence.Alarms"/>; null when its meaning in words must do.</summary>
    public string? Alarm { get; init; }
}

/// <summary>An access panel.</summary>
/// <param name="Area">What it opens.</param>
/// <param name="Where">Where it is.</param>
/// <param name="Fasteners">What holds it, in free words; empty when not said.</param>
/// <param name="Gasket">Its gasket, in free words; empty when not said.</param>
public sealed record CardAccess(Area Area, string Where, string Fasteners, string Gasket)
{
    /// <summary>Id of the pattern's panel it is; empty when the pattern has none like it.</summary>
    public string Panel { get; init; } = "";

    /// <summary>What holds it, as kind, tool, size and count; empty when not said.</summary>
    public IReadOnlyList<Fastener> Fastening { get; init; } = [];
}

/// <summary>A gasket that differs from the pattern's; empty text where the pattern's holds.</summary>
/// <param name="Seat">Id of the pattern's gasket, or an id of its own.</param>
/// <param name="Where">Where it seals.</param>
/// <param name="Material">Material, with a part number if there is one.</param>
/// <param name="Size">Size.</param>
/// <param name="Side">What leaks when it fails; null takes the pattern's, or suction.</param>
public sealed record CardGasket(string Seat, string Where, string Material, string Size, SealingSide? Side);

/// <summary>A document kept with the card.</summary>
/// <param name="Kind">manual, diagram, bulletin, recall or other.</param>
/// <param name="Title">Title.</param>
/// <param name="File">File name or blob reference.</param>
public sealed record CardDocument(string Kind, string Title, string File);
