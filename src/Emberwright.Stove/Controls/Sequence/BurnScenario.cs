using System.Collections.Immutable;
using Emberwright.Stove.Faults;

namespace Emberwright.Stove.Controls.Sequence;

/// <summary>What is wrong and what is wanted during a run of the sequence. All defaults are a sound stove asked for heat.</summary>
public sealed record BurnScenario
{
    /// <summary>Components at fault.</summary>
    public ImmutableArray<CircuitChange> Changes { get; init; } = [];

    /// <summary>Contacts held open by what they stand on (lid up, door ajar, lid bent).</summary>
    public ImmutableArray<string> HeldOpen { get; init; } = [];

    /// <summary>Reset buttons pressed before the start; a button holds only when its place has cooled.</summary>
    public ImmutableArray<string> ButtonsPressed { get; init; } = [];

    /// <summary>Contacts that already stand tripped at the start.</summary>
    public ImmutableArray<string> Tripped { get; init; } = [];

    /// <summary>Share of the fuel that arrives when the feed motor turns: 0 for an empty hopper, bridged pellets or a stripped gearbox.</summary>
    public double FuelArrives { get; init; } = 1;

    /// <summary>Share of the pressure at the sensing port that reaches the switch or sensor: 0 with the hose off, plugged or full of water.</summary>
    public double HoseShare { get; init; } = 1;

    /// <summary>Ratio of each named contact's setting to its proper one, for a drifted switch or disc.</summary>
    public ImmutableDictionary<string, double> SettingRatios { get; init; } = ImmutableDictionary<string, double>.Empty;

    /// <summary>Offset of what the disc, probe or thermocouple that proves the fire senses, K; negative senses too cold.</summary>
    public double ProofOffsetK { get; init; }

    /// <summary>Offset of the pressure sensor's zero, Pa; positive reads too high a pressure, so too weak a vacuum.</summary>
    public double SensorZeroPa { get; init; }

    /// <summary>Voltage at the unloaded socket, V; null takes the nominal one, 0 is a power cut.</summary>
    public double? SupplyV { get; init; }

    /// <summary>True when the stove starts by its room thermostat, false when by its button.</summary>
    public bool Automatic { get; init; }

    /// <summary>When heat is no longer wanted, s; infinity keeps it running.</summary>
    public double WantedUntilS { get; init; } = double.PositiveInfinity;

    /// <summary>True when the highest setting is wanted once the fire is proved.</summary>
    public bool High { get; init; } = true;
}
