using Emberwright.Diagnosis.Inference;
using Emberwright.Diagnosis.Signs;
using Emberwright.Stove;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis;

/// <summary>
/// The joint posterior over what is wrong and over the stove's unknowns: a mixture of scenarios, from which the planner
/// predicts what each check would show. It is not the summary for a screen; that is <see cref="Beliefs"/>.
/// </summary>
public sealed class Posterior
{
    private const double LeastWeight = 1e-5;
    private const int MostScenarios = 600;

    private readonly CaseFile _file;
    private readonly Predictor _predictor;
    private readonly Dictionary<string, SignTable> _tables = new(StringComparer.Ordinal);

    internal Posterior(CaseFile file, ModeLibrary library, IReadOnlyList<Candidate> candidates)
    {
        _file = file;
        _predictor = new Predictor(file, library);
        Candidates = candidates;
        Scenarios = Split(file, candidates);
    }

    /// <summary>The components, most of them pairs of little weight.</summary>
    internal IReadOnlyList<Candidate> Candidates { get; }

    /// <summary>What may be wrong now, heaviest first, weights summing to 1.</summary>
    public IReadOnlyList<Scenario> Scenarios { get; }

    /// <summary>Ids of the evidence that nothing here could use.</summary>
    public IReadOnlyList<Evidence> Unused => _file.Unused;

    /// <summary>What a number read now would be under a scenario.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="observable">What would be read.</param>
    /// <returns>A mixture of normals whose weights sum to 1 (CO in ln ppm, ohms in ln Ω); empty when it cannot be predicted.</returns>
    public IReadOnlyList<Predicted> Predict(Scenario scenario, Observable observable)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(observable);
        return _predictor.Predict(scenario, observable);
    }

    /// <summary>What several numbers read now would be together under a scenario, as one normal.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="observables">What would be read; none of it electrical.</param>
    /// <param name="mean">Receives the means in SI (CO in ln ppm).</param>
    /// <param name="covariance">Receives the covariance, row by row.</param>
    /// <returns>False when one of them cannot be predicted.</returns>
    public bool Predict(Scenario scenario, IReadOnlyList<Observable> observables, Span<double> mean, Span<double> covariance)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(observables);
        return _predictor.Predict(scenario, observables, mean, covariance);
    }

    /// <summary>Probability of an outcome of a sign had now, under a scenario.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="sign">The sign.</param>
    /// <param name="outcome">Index of the outcome.</param>
    public double Probability(Scenario scenario, Sign sign, int outcome)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(sign);
        if (!_tables.TryGetValue(sign.Id, out var table)) _tables.Add(sign.Id, table = new SignTable(sign, _file.Faults));
        return _predictor.Probability(scenario, table, outcome);
    }

    /// <summary>Probability that a fault is present now.</summary>
    /// <param name="fault">Fault id.</param>
    public double Probability(string fault) => Scenarios.Where(s => s.Faults.Contains(fault)).Sum(s => s.Weight);

    private static Scenario[] Split(CaseFile file, IReadOnlyList<Candidate> candidates)
    {
        var scenarios = new List<Scenario>();
        var now = file.Plan.Now;
        foreach (var candidate in candidates)
        {
            if (candidate.Weight < LeastWeight) continue;
            var discrete = file.Present(candidate.Hypothesis.Faults, now);
            var byNow = new SortedDictionary<ulong, double>();
            for (var m = 0; m < candidate.States.Masks.Length; m++)
            {
                var fouled = candidate.FouledIn(file, candidate.States.Masks[m], now);
                byNow[fouled] = byNow.GetValueOrDefault(fouled) + candidate.Weight * candidate.Stated.Weights[m];
            }
            foreach (var (fouled, weight) in byNow)
            {
                if (weight < LeastWeight) continue;
                string[] ids =
                [
                    .. discrete.Select(f => f.Id),
                    .. file.Fouling.Where((_, f) => (fouled >> f & 1) != 0).Select(f => f.Id),
                ];
                scenarios.Add(new Scenario(ids, weight, candidate.IsUnlisted) { Candidate = candidate, Discrete = discrete, Fouled = fouled });
            }
        }
        var kept = scenarios.Select((s, k) => (s, k)).OrderByDescending(x => x.s.Weight).ThenBy(x => x.k).Take(MostScenarios).Select(x => x.s).ToArray();
        var total = kept.Sum(s => s.Weight);
        return [.. kept.Select(s => s with { Weight = s.Weight / total })];
    }
}

/// <summary>One way things may stand now: a set of faults, discrete ones and fouling past its limit, with its probability.</summary>
/// <param name="Faults">Ids of all faults present now; empty when nothing listed is wrong.</param>
/// <param name="Weight">Probability, 0…1.</param>
/// <param name="IsUnlisted">True when the cause is one that the catalogue does not list.</param>
public sealed record Scenario(IReadOnlyList<string> Faults, double Weight, bool IsUnlisted)
{
    internal Candidate Candidate { get; init; } = null!;

    internal IReadOnlyList<Fault> Discrete { get; init; } = [];

    internal ulong Fouled { get; init; }
}

/// <summary>One normal of a predicted reading's distribution.</summary>
/// <param name="Weight">Its share, 0…1.</param>
/// <param name="Mean">Mean in the measure's SI unit; CO in ln ppm, resistance in ln Ω.</param>
/// <param name="Sd">Standard deviation of what would be read, instrument and model included.</param>
public readonly record struct Predicted(double Weight, double Mean, double Sd);
