using Emberwright.Diagnosis.Inference;
using Emberwright.Diagnosis.Planning;
using Emberwright.Stove;

namespace Emberwright.Diagnosis;

/// <summary>
/// The joint posterior over what is wrong and over the stove's unknowns: a mixture of explanations, each of which
/// predicts what could be read or seen next. It is not the summary for a screen; that is <see cref="Beliefs"/>.
/// </summary>
public sealed class Posterior : IPredictive
{
    private const double LeastComponent = 1e-5;
    private const double LeastScenario = 3e-4;
    private const int Most = 64;
    private const double LeastBranch = 0.02;

    private readonly CaseFile _file;
    private readonly ModeLibrary _library;
    private readonly Predictor _predictor;
    private readonly Catalogue _catalogue;
    private readonly Dictionary<string, SignTable> _tables = new(StringComparer.Ordinal);
    private readonly Dictionary<(Candidate, string), double> _serviceCures = [];
    private IReadOnlyList<Scenario>? _branches;
    private IReadOnlyList<Explanation>? _explanations;

    internal Posterior(CaseFile file, ModeLibrary library, Catalogue catalogue, IReadOnlyList<Candidate> candidates)
    {
        _file = file;
        (_library, _catalogue) = (library, catalogue);
        _predictor = new Predictor(file, library);
        Candidates = candidates;
        Scenarios = Scenario.Split(file, candidates, LeastComponent, Most);
    }

    /// <summary>
    /// What may be wrong now, heaviest first, at most sixty-four. Where a set of faults leaves open whether the vacuum switch
    /// stands open, it counts as two, so that each predicts one voltage and not a blur of two.
    /// </summary>
    public IReadOnlyList<Explanation> Explanations =>
        _explanations ??= [.. Branches.Select(s => new Explanation(s.Weight, s.Faults, s.IsUnlisted))];

    /// <summary>Evidence that nothing here could use.</summary>
    public IReadOnlyList<Evidence> Unused => _file.Unused;

    /// <summary>The components, most of them pairs of little weight.</summary>
    internal IReadOnlyList<Candidate> Candidates { get; }

    /// <summary>The explanations with the components they come from.</summary>
    internal IReadOnlyList<Scenario> Scenarios { get; }

    private IReadOnlyList<Scenario> Branches => _branches ??= Branched();

    /// <inheritdoc />
    public void Predict(int explanation, IReadOnlyList<Observable> observables, Span<double> mean, Span<double> covariance)
    {
        ArgumentNullException.ThrowIfNull(observables);
        _predictor.Predict(Branches[explanation], observables, mean, covariance);
    }

    /// <inheritdoc />
    /// <exception cref="ArgumentException">The catalogue has no such sign.</exception>
    public void Predict(int explanation, string sign, Span<double> outcomes)
    {
        var table = TableOf(sign);
        for (var o = 0; o < outcomes.Length; o++) outcomes[o] = _predictor.Probability(Branches[explanation], table, o);
    }

    /// <inheritdoc />
    public double ServiceCures(int explanation, string complaint)
    {
        if (_serviceCures.TryGetValue((Branches[explanation].Candidate, complaint), out var known)) return known;
        known = MildFouling.Cures(_file.Stove, complaint, _catalogue, _library.Full(Branches[explanation].Candidate), _file.Plan.Now);
        _serviceCures.Add((Branches[explanation].Candidate, complaint), known);
        return known;
    }

    /// <summary>Mean and variance of one reading now, instrument included; NaN when it cannot be predicted.</summary>
    internal (double Mean, double Variance) Predict(Scenario scenario, Observable observable)
    {
        Span<double> mean = stackalloc double[1];
        Span<double> variance = stackalloc double[1];
        _predictor.Predict(scenario, [observable], mean, variance);
        return (mean[0], variance[0]);
    }

    /// <summary>Probability of an outcome of a sign had now.</summary>
    internal double Probability(Scenario scenario, string sign, int outcome) => _predictor.Probability(scenario, TableOf(sign), outcome);

    private Scenario[] Branched()
    {
        var branches = Scenarios.TakeWhile((s, k) => k == 0 || s.Weight >= LeastScenario).SelectMany(scenario =>
        {
            var closed = _predictor.SwitchClosed(scenario, Condition.FanOnly);
            return closed is <= LeastBranch or >= 1 - LeastBranch
                ? [scenario]
                : new[]
                {
                    scenario with { Weight = scenario.Weight * closed, SwitchClosed = true },
                    scenario with { Weight = scenario.Weight * (1 - closed), SwitchClosed = false },
                };
        }).OrderByDescending(s => s.Weight).Take(Most).ToArray();
        var total = branches.Sum(s => s.Weight);
        return [.. branches.Select(s => s with { Weight = s.Weight / total })];
    }

    private SignTable TableOf(string sign)
    {
        if (_tables.TryGetValue(sign, out var table)) return table;
        table = new SignTable(
            _catalogue.Sign(sign) ?? throw new ArgumentException($"Sign is '{sign}'; the catalogue of '{_catalogue.PatternId}' has no such sign.", nameof(sign)),
            _file.Faults);
        _tables.Add(sign, table);
        return table;
    }
}
