using Emberwright.Stove;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Checks;

/// <summary>
/// Something done to the stove that changes it: cleaning, resetting, refitting, replacing. It is not a check; doing it
/// begins a new epoch in which only what it names is drawn anew.
/// </summary>
/// <param name="Id">Stable id; a journal's action entry carries it.</param>
/// <param name="Name">What is done, in words.</param>
/// <param name="Kind">Clean, reset, adjust, replace or advise.</param>
/// <param name="Minutes">Minutes it takes.</param>
/// <param name="PartCost">Cost of parts, in the firm's currency.</param>
/// <param name="Redraws">Parameters that are drawn anew, and around what.</param>
/// <param name="Cures">Faults that are gone afterwards.</param>
/// <param name="Cautions">Cautions at this work.</param>
/// <param name="Patterns">Pattern ids it applies to; empty means all.</param>
public sealed record WorkAction(
    string Id,
    string Name,
    RemedyKind Kind,
    double Minutes,
    double PartCost,
    IReadOnlyList<Redraw> Redraws,
    IReadOnlyList<string> Cures,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Patterns)
{
    /// <summary>True when it can be done on a pattern.</summary>
    /// <param name="patternId">Pattern id.</param>
    public bool IsOn(string patternId) => Patterns.Count == 0 || Patterns.Contains(patternId);
}

/// <summary>A parameter that an action draws anew.</summary>
/// <param name="Parameter">Which.</param>
/// <param name="Tau">
/// For fouling: mean of the exponential restriction left afterwards (−ln of the share open). Null where the parameter
/// does not foul: it then returns to its ordinary spread about nominal.
/// </param>
public sealed record Redraw(Parameter Parameter, double? Tau);
