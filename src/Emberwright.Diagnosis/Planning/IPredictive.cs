using Emberwright.Stove;

namespace Emberwright.Diagnosis.Planning;

/// <summary>
/// What the planner needs of a posterior: the explanations that are left, and what each of them predicts of anything
/// that could be read or seen next.
/// </summary>
public interface IPredictive
{
    /// <summary>Explanations by falling weight; weights sum to one.</summary>
    IReadOnlyList<Explanation> Explanations { get; }

    /// <summary>Joint normal prediction of readings now, instrument errors included, under one explanation.</summary>
    /// <param name="explanation">Index of the explanation.</param>
    /// <param name="observables">What would be read.</param>
    /// <param name="mean">Receives the means in SI; ±∞ for an open circuit, NaN where it cannot be predicted.</param>
    /// <param name="covariance">Receives the covariance, row by row.</param>
    void Predict(int explanation, IReadOnlyList<Observable> observables, Span<double> mean, Span<double> covariance);

    /// <summary>Probabilities of a sign's outcomes now, under one explanation.</summary>
    /// <param name="explanation">Index of the explanation.</param>
    /// <param name="sign">Id of the sign.</param>
    /// <param name="outcomes">Receives one probability per outcome of the sign.</param>
    void Predict(int explanation, string sign, Span<double> outcomes);

    /// <summary>Probability, 0…1, that a service cures a complaint for which an explanation's faults do not account: dirt short of every limit.</summary>
    /// <param name="explanation">Index of the explanation.</param>
    /// <param name="complaint">Outcome of the complaint's sign.</param>
    double ServiceCures(int explanation, string complaint);
}

/// <summary>One way in which everything known could have come about: the faults that are still there.</summary>
/// <param name="Weight">Its probability, 0…1.</param>
/// <param name="Faults">Ids of the faults now present, fouling past its limit among them; empty when nothing is wrong.</param>
/// <param name="Unlisted">True when a cause that the catalogue does not list is among them.</param>
public sealed record Explanation(double Weight, IReadOnlyList<string> Faults, bool Unlisted = false);
