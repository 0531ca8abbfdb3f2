using Emberwright.Stove;
using Emberwright.Stove.Controls;

namespace Emberwright.Diagnosis.Planning;

/// <summary>
/// The posterior as the planner sees it. A scenario that leaves open whether the vacuum switch stands open counts as two
/// explanations, so that each predicts one voltage and not a blur of two.
/// </summary>
public sealed class PosteriorPredictive : IPredictive
{
    private const int MostExplanations = 64;
    private const double LeastWeight = 3e-4;
    private const double LeastBranch = 0.02;

    private static readonly Observable SwitchVolts = new(Measure.Voltage, ComponentIds.VacuumSwitch, Condition.FanOnly);

    private readonly Posterior _posterior;
    private readonly Catalogue _catalogue;
    private readonly (Scenario Scenario, int Branch)[] _of;

    /// <summary>Lays the posterior's heaviest scenarios out as explanations.</summary>
    /// <param name="posterior">What is believed.</param>
    /// <param name="catalogue">The catalogue it was made with.</param>
    public PosteriorPredictive(Posterior posterior, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(posterior);
        ArgumentNullException.ThrowIfNull(catalogue);
        (_posterior, _catalogue) = (posterior, catalogue);
        var kept = posterior.Scenarios.TakeWhile((s, k) => k == 0 || s.Weight >= LeastWeight)
            .SelectMany(Branches).OrderByDescending(b => b.Weight).Take(MostExplanations).ToArray();
        var total = kept.Sum(b => b.Weight);
        _of = [.. kept.Select(b => (b.Scenario, b.Branch))];
        Explanations = [.. kept.Select(b => new Explanation(b.Weight / total, b.Scenario.Faults, b.Scenario.IsUnlisted))];
    }

    /// <inheritdoc/>
    public IReadOnlyList<Explanation> Explanations { get; }

    /// <inheritdoc/>
    public void Predict(int explanation, IReadOnlyList<Observable> observables, Span<double> mean, Span<double> covariance)
    {
        ArgumentNullException.ThrowIfNull(observables);
        covariance.Clear();
        for (var i = 0; i < observables.Count; i++)
            (mean[i], covariance[i * observables.Count + i]) = Predict(explanation, observables[i]);
    }

    /// <inheritdoc/>
    public void Predict(int explanation, string sign, Span<double> outcomes)
    {
        var known = _catalogue.Sign(sign) ?? throw new ArgumentException($"'{sign}' is no sign of pattern {_catalogue.PatternId}.", nameof(sign));
        for (var o = 0; o < outcomes.Length; o++) outcomes[o] = _posterior.Probability(_of[explanation].Scenario, known, o);
    }

    private IEnumerable<(Scenario Scenario, int Branch, double Weight)> Branches(Scenario scenario)
    {
        var volts = _posterior.Predict(scenario, SwitchVolts);
        if (volts.Count < 2 || volts.Min(v => v.Weight) < LeastBranch) return [(scenario, -1, scenario.Weight)];
        return volts.Select((v, branch) => (scenario, branch, scenario.Weight * v.Weight));
    }

    private (double Mean, double Variance) Predict(int explanation, Observable observable)
    {
        var (scenario, branch) = _of[explanation];
        var mixture = _posterior.Predict(scenario, observable);
        if (mixture.Count == 0) return (double.NaN, 0);
        if (mixture.Count > 1 && branch >= 0) return Plain(observable, mixture[branch]);
        var parts = mixture.Select(p => (p.Weight, Of: Plain(observable, p))).ToArray();
        var mean = parts.Sum(p => p.Weight * p.Of.Mean);
        return (mean, parts.Sum(p => p.Weight * (p.Of.Variance + (p.Of.Mean - mean) * (p.Of.Mean - mean))));
    }

    // CO and resistance come as logarithms; spreads are carried over to first order.
    private static (double Mean, double Variance) Plain(Observable observable, Predicted p)
    {
        if (observable.Measure is not (Measure.CarbonMonoxide or Measure.Resistance)) return (p.Mean, p.Sd * p.Sd);
        var value = Math.Exp(p.Mean);
        if (observable.Measure == Measure.Resistance && value >= ReadingRanges.Open) return (double.PositiveInfinity, 1);
        return (value, value * value * p.Sd * p.Sd);
    }
}
