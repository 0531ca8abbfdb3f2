namespace Emberwright.Stove.Faults;

/// <summary>
/// One thing that can be wrong: a change to the virtual stove's parameters or circuit with a severity, plus what no
/// physics gives (noises, smells, what customers say). Defined once; everything else follows from it by computation.
/// </summary>
public sealed record Fault
{
    /// <summary>Stable id, lower case with hyphens.</summary>
    public required string Id { get; init; }

    /// <summary>Name in the trade's words.</summary>
    public required string Name { get; init; }

    /// <summary>Other names for it, lower case; search and old journals know them.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];

    /// <summary>Where it belongs.</summary>
    public required Area Area { get; init; }

    /// <summary>Relative frequency among breakdown calls, %, before anything is known.</summary>
    public required double BaseRatePercent { get; init; }

    /// <summary>Where the base rate, severities and symptoms come from.</summary>
    public required string Origin { get; init; }

    /// <summary>Changes to continuous parameters; each adds to the parameter's mean and sets its spread.</summary>
    public IReadOnlyList<ParameterShift> Shifts { get; init; } = [];

    /// <summary>
    /// Set for fouling that every stove has a little of: it is not a hypothesis of its own, it is present once its
    /// parameter has passed the limit. Its symptoms hold in proportion to the probability that it has.
    /// </summary>
    public FoulingLimit? Fouling { get; init; }

    /// <summary>Changes to components of the circuit.</summary>
    public IReadOnlyList<CircuitChange> Circuit { get; init; } = [];

    /// <summary>Signs whose probability differs from their usual one when this fault is present.</summary>
    public IReadOnlyList<Symptom> Symptoms { get; init; } = [];

    /// <summary>What cures it.</summary>
    public required Remedy Remedy { get; init; }

    /// <summary>Faults that bring this one about, so that finding it makes them likelier.</summary>
    public IReadOnlyList<Cause> CausedBy { get; init; } = [];

    /// <summary>
    /// Ids of checks of which one must have been done before a part is replaced for this fault, or before another remedy where
    /// no sign shows it plainly. Never empty when a part is replaced.
    /// </summary>
    public IReadOnlyList<string> ProvedBy { get; init; } = [];

    /// <summary>Id of the safety stop this fault calls for when found, or null.</summary>
    public string? SafetyStop { get; init; }

    /// <summary>Ids of the patterns it occurs on; empty means every pattern.</summary>
    public IReadOnlyList<string> Patterns { get; init; } = [];
}

/// <summary>A normal change of a parameter under a fault: N(mean, sd²) added to its nominal value.</summary>
/// <param name="Parameter">Which parameter.</param>
/// <param name="Mean">Mean change, in the parameter's own unit (ln or offset).</param>
/// <param name="Sd">Standard deviation of the change.</param>
public sealed record ParameterShift(Parameter Parameter, double Mean, double Sd);

/// <summary>Another fault as a cause of this one.</summary>
/// <param name="Fault">Id of the other fault.</param>
/// <param name="Factor">How many times as often this fault is there when the other one is.</param>
public sealed record Cause(string Fault, double Factor);

/// <summary>The limit past which a degree of fouling counts as a fault.</summary>
/// <param name="Parameter">The fouled passage, wheel or surface; a logarithm, falling as it fouls.</param>
/// <param name="Limit">Value at or below which the fault is present, ln of the share left.</param>
public sealed record FoulingLimit(Parameter Parameter, double Limit)
{
    /// <summary>Mean by which a fouled one has passed its limit, ln; exponential (from memory, no source).</summary>
    public double Beyond { get; init; } = 0.22;

    /// <summary>Loss of ln UA per unit of the exchanger's restriction: a deposit that narrows also insulates (from memory, no source).</summary>
    public const double InsulationPerRestriction = 0.6;
}

/// <summary>How a component of the circuit is under a fault.</summary>
public enum ComponentState
{
    /// <summary>As it should be.</summary>
    Healthy,
    /// <summary>Open circuit; a switch stuck open.</summary>
    Open,
    /// <summary>Short circuit; a switch stuck closed or bridged.</summary>
    Shorted,
    /// <summary>Leaking to earth.</summary>
    LeakingToEarth,
    /// <summary>Value changed by <see cref="CircuitChange.Factor"/>.</summary>
    Drifted,
    /// <summary>Electrically whole but mechanically stuck: stalled motor, locked rotor.</summary>
    Stalled,
}

/// <summary>A component in a faulty state.</summary>
/// <param name="Component">Component id in the pattern's wiring.</param>
/// <param name="State">Its state.</param>
/// <param name="Factor">
/// Ratio of its value to healthy, for <see cref="ComponentState.Drifted"/>: impedance of a passive part, voltage of a
/// source or sensor (−1 is a reversed thermocouple),
/// voltage above its zero of a pressure sensor (−1 is a pair of hoses swapped).
/// </param>
/// <param name="Offset">Added to its value, for <see cref="ComponentState.Drifted"/>: Ω for a resistance probe, V for a source or sensor.</param>
/// <param name="LeakOhm">Resistance of the leak, Ω, for <see cref="ComponentState.LeakingToEarth"/>; required there.</param>
public sealed record CircuitChange(string Component, ComponentState State, double Factor = 1, double Offset = 0, double? LeakOhm = null);

/// <summary>Probability of one outcome of a sign when the fault is present.</summary>
/// <param name="Sign">Sign id.</param>
/// <param name="Outcome">Outcome id.</param>
/// <param name="Probability">0…1.</param>
public sealed record Symptom(string Sign, string Outcome, double Probability);

/// <summary>How a fault is cured.</summary>
/// <param name="Kind">What is done.</param>
/// <param name="Words">In words for the technician.</param>
/// <param name="Minutes">Minutes it takes.</param>
/// <param name="PartCost">Cost of parts, in the firm's currency.</param>
/// <param name="Cautions">Cautions at this work.</param>
/// <param name="OnVan">Probability that the part is on the van, 0…1; otherwise a second trip is needed.</param>
public sealed record Remedy(
    RemedyKind Kind, string Words, double Minutes, double PartCost, IReadOnlyList<string> Cautions, double OnVan = 1);

/// <summary>What a remedy does.</summary>
public enum RemedyKind
{
    /// <summary>Clean.</summary>
    Clean,
    /// <summary>Reset.</summary>
    Reset,
    /// <summary>Adjust, refit or connect.</summary>
    Adjust,
    /// <summary>Replace a part.</summary>
    Replace,
    /// <summary>Advise the customer or hand over to another trade.</summary>
    Advise,
}
