using Emberwright.Stove;

namespace Emberwright.Diagnosis.Signs;

/// <summary>
/// Something that can be asked, seen, heard or smelled, with a small set of outcomes. Its usual probabilities hold
/// when no fault says otherwise; a <see cref="PhysicalMargin"/> replaces them where the model reaches.
/// </summary>
/// <param name="Id">Stable id.</param>
/// <param name="Question">The question, to the customer or to oneself.</param>
/// <param name="Outcomes">Possible outcomes in order; by rising quantity where there is a margin.</param>
/// <param name="Margin">How the outcome follows from the model, or null when only stated probabilities serve.</param>
/// <param name="Origin">Where the probabilities come from.</param>
/// <param name="Topics">Lower-case phrases that name what is looked at or asked about.</param>
/// <param name="Patterns">Pattern ids it applies to; null or empty means all.</param>
public sealed record Sign(
    string Id,
    string Question,
    IReadOnlyList<Outcome> Outcomes,
    PhysicalMargin? Margin,
    string Origin,
    IReadOnlyList<string>? Topics = null,
    IReadOnlyList<string>? Patterns = null)
{
    /// <summary>
    /// True when it tells of what was before anybody touched the stove, whenever it is told; false for what is so now.
    /// </summary>
    public bool TellsOfThePast { get; init; }

    /// <summary>True when the sign can be had on a pattern.</summary>
    /// <param name="patternId">Pattern id.</param>
    public bool IsOn(string patternId) => Patterns is null or [] || Patterns.Contains(patternId);

    /// <summary>Index of an outcome.</summary>
    /// <param name="outcomeId">Outcome id.</param>
    /// <exception cref="ArgumentException">The sign has no such outcome.</exception>
    public int IndexOf(string outcomeId)
    {
        for (var i = 0; i < Outcomes.Count; i++)
        {
            if (Outcomes[i].Id == outcomeId) return i;
        }

        throw new ArgumentException(
            $"Outcome of '{Id}' is '{outcomeId}'; it must be one of {string.Join(", ", Outcomes.Select(o => o.Id))}.", nameof(outcomeId));
    }
}

/// <summary>One outcome of a sign.</summary>
/// <param name="Id">Stable id within the sign.</param>
/// <param name="Words">In words.</param>
/// <param name="Usual">Probability when neither a fault nor the model says otherwise.</param>
/// <param name="Synonyms">Lower-case phrases by which people say it when the topic is plain.</param>
/// <param name="Alone">Lower-case phrases that mean it even when nobody has named the topic.</param>
public sealed record Outcome(string Id, string Words, double Usual, IReadOnlyList<string> Synonyms, IReadOnlyList<string>? Alone = null);

/// <summary>
/// An ordered probit: the outcomes are the ranges between cut points of a quantity of the model, blurred by
/// <paramref name="Blur"/>. P(outcome k) = Φ((cut_k − q)/blur) − Φ((cut_{k−1} − q)/blur).
/// </summary>
/// <param name="Quantity">The observable compared with the cut points, when it is one.</param>
/// <param name="Parameter">
/// The parameter compared, when it is one. For a passage, wheel or surface it is the fouling alone (ln of the share
/// left open by dirt): neither the clean stove's own tolerance nor a nest elsewhere can be seen there. Otherwise its value.
/// </param>
/// <param name="Cuts">Rising cut points, one fewer than the outcomes.</param>
/// <param name="Blur">Standard deviation of the judgement, in the quantity's unit.</param>
/// <param name="Lapse">Probability that the outcome has nothing to do with the quantity.</param>
public sealed record PhysicalMargin(
    Observable? Quantity, Parameter? Parameter, IReadOnlyList<double> Cuts, double Blur, double Lapse = 0.03);
