using System.Collections.Frozen;
using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Signs;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis;

/// <summary>
/// What is known of one pattern's faults, signs, checks and actions. Immutable; it knows nothing of the stove at hand.
/// </summary>
public sealed class Catalogue
{
    private static readonly FrozenDictionary<string, Lazy<Catalogue>> ByPattern =
        PatternIds.All.ToFrozenDictionary(id => id, id => new Lazy<Catalogue>(() => new Catalogue(id)));

    private readonly FrozenDictionary<string, Fault> _faults;
    private readonly FrozenDictionary<string, Sign> _signs;
    private readonly FrozenDictionary<string, Check> _checks;
    private readonly FrozenDictionary<string, WorkAction> _actions;

    private Catalogue(string patternId)
    {
        PatternId = patternId;
        Faults = [.. PoweredSigns.Added(FaultList.On(patternId), patternId).Select(f => CounterSymptoms.Added(SequenceSymptoms.Of(f, patternId), patternId))];
        Signs = SignList.On(patternId);
        _signs = Signs.ToFrozenDictionary(s => s.Id);
        Checks = [.. CheckList.On(patternId).Select(Within).Where(c => c.Signs.Count + c.Reads.Count > 0)];
        Actions = ActionList.On(patternId);
        _faults = Faults.ToFrozenDictionary(f => f.Id);
        _checks = Checks.ToFrozenDictionary(c => c.Id);
        _actions = Actions.ToFrozenDictionary(a => a.Id);
    }

    private Catalogue(Catalogue other, Func<string, string?, double, double> minutes)
    {
        (PatternId, Faults, Signs, _faults, _signs) = (other.PatternId, other.Faults, other.Signs, other._faults, other._signs);
        Checks = [.. other.Checks.Select(c => c with { Minutes = minutes(c.Id, c.Action, c.Minutes) })];
        Actions = [.. other.Actions.Select(a => a with { Minutes = minutes(a.Id, null, a.Minutes) })];
        _checks = Checks.ToFrozenDictionary(c => c.Id);
        _actions = Actions.ToFrozenDictionary(a => a.Id);
    }

    /// <summary>The pattern.</summary>
    public string PatternId { get; }

    /// <summary>Faults that can occur on it; those with <see cref="Fault.Fouling"/> are degrees, the others hypotheses.</summary>
    public IReadOnlyList<Fault> Faults { get; }

    /// <summary>Signs that can be had on it.</summary>
    public IReadOnlyList<Sign> Signs { get; }

    /// <summary>Checks that can be done on it.</summary>
    public IReadOnlyList<Check> Checks { get; }

    /// <summary>Actions that can be done on it.</summary>
    public IReadOnlyList<WorkAction> Actions { get; }

    /// <summary>The catalogue of a pattern.</summary>
    /// <param name="patternId">Pattern id.</param>
    /// <exception cref="ArgumentException">The id names no pattern.</exception>
    public static Catalogue For(string patternId)
    {
        PatternIds.Require(patternId);
        return ByPattern[patternId].Value;
    }

    /// <summary>The same with the minutes that checks and actions take a firm; a check that is an action takes the action's.</summary>
    /// <param name="minutes">Minutes by id of check or action.</param>
    public Catalogue Timed(IReadOnlyDictionary<string, Rates.Rate> minutes)
    {
        ArgumentNullException.ThrowIfNull(minutes);
        return minutes.Count == 0 ? this
            : new(this, (id, action, usual) => minutes.TryGetValue(id, out var own) || action is not null && minutes.TryGetValue(action, out own) ? own.Value : usual);
    }

    /// <summary>A fault by its id, or null.</summary>
    /// <param name="id">Fault id.</param>
    public Fault? Fault(string id) => _faults.GetValueOrDefault(id);

    /// <summary>A sign by its id, or null.</summary>
    /// <param name="id">Sign id.</param>
    public Sign? Sign(string id) => _signs.GetValueOrDefault(id);

    /// <summary>A check by its id, or null.</summary>
    /// <param name="id">Check id.</param>
    public Check? Check(string id) => _checks.GetValueOrDefault(id);

    /// <summary>An action by its id, or null.</summary>
    /// <param name="id">Action id.</param>
    public WorkAction? Action(string id) => _actions.GetValueOrDefault(id);

    private Check Within(Check check) => check with
    {
        Signs = [.. check.Signs.Where(_signs.ContainsKey)],
        Cures = [.. check.Cures.Where(id => Faults.Any(f => f.Id == id))],
    };
}
