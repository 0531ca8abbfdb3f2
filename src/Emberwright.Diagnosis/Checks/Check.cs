using Emberwright.Stove;

namespace Emberwright.Diagnosis.Checks;

/// <summary>Something one can do to learn: ask, look, measure, try, clean. It is not a remedy, though cleaning is both.</summary>
/// <param name="Id">Stable id.</param>
/// <param name="Name">What to do, in words.</param>
/// <param name="Kind">How it is done.</param>
/// <param name="Minutes">Minutes it takes.</param>
/// <param name="Cost">Cost beside the time, in the firm's currency.</param>
/// <param name="Cautions">Cautions at this step.</param>
/// <param name="Needs">State the stove must be in first.</param>
/// <param name="Reads">Readings it yields, if any.</param>
/// <param name="Signs">Signs it shows, if any.</param>
/// <param name="Cures">Faults it cures in passing (cleaning, resetting), if any.</param>
/// <param name="Patterns">Pattern ids it applies to; empty means all.</param>
/// <param name="Action">Id of the action that doing it amounts to, or null when nothing is changed.</param>
public sealed record Check(
    string Id,
    string Name,
    CheckKind Kind,
    double Minutes,
    double Cost,
    IReadOnlyList<string> Cautions,
    CheckNeeds Needs,
    IReadOnlyList<Observable> Reads,
    IReadOnlyList<string> Signs,
    IReadOnlyList<string> Cures,
    IReadOnlyList<string> Patterns,
    string? Action = null)
{
    /// <summary>What must be in the hand, beyond screwdrivers and spanners.</summary>
    public IReadOnlyList<Tool> Tools => CheckFacts.ToolsOf(this);

    /// <summary>Who may do it.</summary>
    public Skill Skill => CheckFacts.SkillOf(this);

    /// <summary>What can hurt.</summary>
    public Risk Risk => CheckFacts.RiskOf(this);

    /// <summary>True when the check can be done on a pattern.</summary>
    /// <param name="patternId">Pattern id.</param>
    public bool IsOn(string patternId) => Patterns.Count == 0 || Patterns.Contains(patternId);
}

/// <summary>How a check is done.</summary>
public enum CheckKind
{
    /// <summary>Ask the customer; can be done by phone.</summary>
    Ask,
    /// <summary>Read the stove's own codes or counters.</summary>
    ReadStove,
    /// <summary>Look, listen, feel.</summary>
    Look,
    /// <summary>Measure with an instrument.</summary>
    Measure,
    /// <summary>Try a part on its own supply, or by hand.</summary>
    Try,
    /// <summary>Clean.</summary>
    Clean,
    /// <summary>Reset or refit.</summary>
    Reset,
    /// <summary>Swap a known good part.</summary>
    Swap,
}

/// <summary>What must be so before a check may be done.</summary>
[Flags]
public enum CheckNeeds
{
    /// <summary>Nothing.</summary>
    None = 0,
    /// <summary>Fire out and appliance cold.</summary>
    Cold = 1,
    /// <summary>Plug out and proved dead.</summary>
    Unplugged = 2,
    /// <summary>Panels off.</summary>
    PanelsOff = 4,
    /// <summary>Plugged in with the board calling.</summary>
    Powered = 8,
    /// <summary>Fire burning.</summary>
    Burning = 16,
    /// <summary>On site.</summary>
    OnSite = 32,
}
