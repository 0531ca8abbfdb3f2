using Emberwright.Stove;

namespace Emberwright.Diagnosis.Signs;

/// <summary>
/// Something that can be asked, seen, heard or smelled, with a small set of outcomes. Its usual probabilities hold
/// when no fault says otherwise; a <see cref="PhysicalMargin"/> replaces them where the model reaches.
/// </summary>
/// <param name="Id">Stable id.</param>
/// <param name="Question">The question, to the customer or to oneself.</param>
/// <param name="Outcomes">Possible outcomes in order.</param>
/// <param name="Margin">How the outcome follows from the model, or null when only stated probabilities serve.</param>
/// <param name="Origin">Where the probabilities come from.</param>
public sealed record Sign(string Id, string Question, IReadOnlyList<Outcome> Outcomes, PhysicalMargin? Margin, string Origin);

/// <summary>One outcome of a sign.</summary>
/// <param name="Id">Stable id within the sign.</param>
/// <param name="Words">In words.</param>
/// <param name="Usual">Probability when neither a fault nor the model says otherwise.</param>
/// <param name="Synonyms">Lower-case phrases by which people say it.</param>
public sealed record Outcome(string Id, string Words, double Usual, IReadOnlyList<string> Synonyms);

/// <summary>
/// An ordered probit: the outcomes are the ranges between cut points of a quantity of the model, blurred by
/// <paramref name="Blur"/>. P(outcome k) = Φ((cut_k − q)/blur) − Φ((cut_{k−1} − q)/blur).
/// </summary>
/// <param name="Quantity">The observable compared with the cut points, when it is one.</param>
/// <param name="Parameter">The parameter compared, when it is one (as its value, ln for passages).</param>
/// <param name="Cuts">Rising cut points, one fewer than the outcomes.</param>
/// <param name="Blur">Standard deviation of the judgement, in the quantity's unit.</param>
/// <param name="Lapse">Probability that the outcome has nothing to do with the quantity.</param>
public sealed record PhysicalMargin(
    Observable? Quantity, Parameter? Parameter, IReadOnlyList<double> Cuts, double Blur, double Lapse = 0.03);
