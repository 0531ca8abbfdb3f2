using Emberwright.Stove;

namespace Emberwright.Diagnosis.Planning;

/// <summary>A posterior as the planner sees it: its heaviest scenarios, enough of them to hold nearly all of its weight.</summary>
public sealed class PosteriorView : IPredictive
{
    private const double Enough = 0.97;
    private const int Most = 48;

    private readonly Posterior _posterior;
    private readonly Catalogue _catalogue;
    private readonly Scenario[] _scenarios;

    /// <summary>Sets up the view.</summary>
    /// <param name="posterior">The posterior.</param>
    /// <param name="catalogue">The catalogue it was inferred with.</param>
    public PosteriorView(Posterior posterior, Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(posterior);
        (_posterior, _catalogue) = (posterior, catalogue);
        var sum = 0.0;
        _scenarios = [.. posterior.Scenarios.Take(Most).TakeWhile(s => (sum += s.Weight) - s.Weight < Enough)];
        var total = _scenarios.Sum(s => s.Weight);
        Explanations = [.. _scenarios.Select(s => new Explanation(s.Weight / total, s.Faults, s.IsUnlisted))];
    }

    /// <inheritdoc />
    public IReadOnlyList<Explanation> Explanations { get; }

    /// <inheritdoc />
    public IReadOnlyList<Predicted> Predict(int explanation, Observable observable) => _posterior.Predict(_scenarios[explanation], observable);

    /// <inheritdoc />
    public bool Predict(int explanation, IReadOnlyList<Observable> observables, Span<double> mean, Span<double> covariance) =>
        _posterior.Predict(_scenarios[explanation], observables, mean, covariance);

    /// <inheritdoc />
    public void Predict(int explanation, string sign, Span<double> outcomes)
    {
        var definition = _catalogue.Sign(sign) ?? throw new ArgumentException($"The catalogue of {_catalogue.PatternId} has no sign '{sign}'.", nameof(sign));
        for (var o = 0; o < outcomes.Length; o++) outcomes[o] = _posterior.Probability(_scenarios[explanation], definition, o);
    }
}
