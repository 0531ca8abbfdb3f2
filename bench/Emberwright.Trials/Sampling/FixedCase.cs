using Emberwright.Diagnosis;
using Emberwright.Stove;

namespace Emberwright.Trials.Sampling;

/// <summary>A fixed set of readings with the probabilities that importance sampling gives its likeliest explanations.</summary>
/// <param name="Number">Which of the fixed cases.</param>
/// <param name="Pattern">Pattern id.</param>
/// <param name="OutdoorC">Outdoor temperature, °C.</param>
/// <param name="Truth">The fault that made the readings; empty without one.</param>
/// <param name="Readings">The readings.</param>
/// <param name="Explanations">The likeliest explanations that the readings can tell apart, heaviest first.</param>
/// <param name="Draws">Draws for each explanation.</param>
internal sealed record FixedCase(
    int Number, string Pattern, double OutdoorC, string Truth, IReadOnlyList<FixedReading> Readings, IReadOnlyList<SampledExplanation> Explanations, int Draws)
{
    /// <summary>The readings as evidence.</summary>
    public IReadOnlyList<Evidence> Evidence() =>
        [.. Readings.Select((r, k) => new ReadingEvidence($"r{k:00}", 0, new(r.Measure, r.Place, new(r.Fire, r.Blower, r.Opening)), r.Value))];
}

/// <summary>One reading.</summary>
/// <param name="Measure">What was read.</param>
/// <param name="Place">Where.</param>
/// <param name="Fire">State of the fire.</param>
/// <param name="Blower">State of the combustion blower.</param>
/// <param name="Opening">What stood open.</param>
/// <param name="Value">Value in the measure's unit.</param>
internal sealed record FixedReading(Measure Measure, string Place, FireState Fire, BlowerState Blower, OpeningState Opening, double Value);

/// <summary>One explanation: all sets of faults that the readings cannot tell apart.</summary>
/// <param name="Name">One of its sets; <c>nothing</c> and <c>unlisted</c> stand for themselves.</param>
/// <param name="LnEvidence">ln of the readings' probability under it, by importance sampling.</param>
/// <param name="Effective">Effective draws.</param>
internal sealed record SampledExplanation(string Name, double LnEvidence, double Effective);
