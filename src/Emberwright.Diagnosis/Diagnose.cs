using Emberwright.Diagnosis.Inference;
using Emberwright.Diagnosis.Signs;
using Emberwright.Stove;

namespace Emberwright.Diagnosis;

/// <summary>Finds out what is wrong with a stove from everything known of it.</summary>
public static class Diagnose
{
    /// <summary>Concludes from all evidence. The order of the evidence does not matter.</summary>
    /// <param name="stove">The stove, its site and history.</param>
    /// <param name="evidence">Readings, signs and actions.</param>
    /// <param name="catalogue">Faults, signs, checks and actions of its pattern.</param>
    /// <param name="workings">What earlier conclusions of the visit worked out; it shortens this one and never changes it.</param>
    public static Beliefs Run(StoveCase stove, IReadOnlyList<Evidence> evidence, Catalogue catalogue, Workings? workings = null) =>
        Infer(stove, evidence, catalogue, workings).Beliefs!;

    /// <summary>
    /// The same, with the posterior from which the planner predicts. Areas, bands, explanations and alike sets are worked out when
    /// they are first looked at.
    /// </summary>
    /// <param name="stove">The stove, its site and history.</param>
    /// <param name="evidence">Readings, signs and actions.</param>
    /// <param name="catalogue">Faults, signs, checks and actions of its pattern.</param>
    /// <param name="workings">What earlier conclusions of the visit worked out; it shortens this one and never changes it.</param>
    public static Progress Infer(StoveCase stove, IReadOnlyList<Evidence> evidence, Catalogue catalogue, Workings? workings = null) =>
        Prepare(stove, evidence, catalogue, workings).Whole();

    /// <summary>
    /// The same in slices of at most a few solves of the virtual stove, so that a screen can be drawn between them. The
    /// last slice of the single faults carries a first conclusion, the very last one the whole.
    /// </summary>
    /// <param name="stove">The stove, its site and history.</param>
    /// <param name="evidence">Readings, signs and actions.</param>
    /// <param name="catalogue">Faults, signs, checks and actions of its pattern.</param>
    /// <param name="workings">What earlier conclusions of the visit worked out; it shortens this one and never changes it.</param>
    /// <exception cref="Stove.InputException">A number of site or card makes no sense.</exception>
    /// <exception cref="ArgumentException">The catalogue is of another pattern, or an action does not begin an epoch.</exception>
    public static IEnumerable<Progress> Steps(StoveCase stove, IReadOnlyList<Evidence> evidence, Catalogue catalogue, Workings? workings = null) =>
        Prepare(stove, evidence, catalogue, workings).Steps();

    private static Run Prepare(StoveCase stove, IReadOnlyList<Evidence> evidence, Catalogue catalogue, Workings? workings)
    {
        ArgumentNullException.ThrowIfNull(stove);
        ArgumentNullException.ThrowIfNull(evidence);
        ArgumentNullException.ThrowIfNull(catalogue);
        if (catalogue.PatternId != stove.Pattern.Id)
            throw new ArgumentException($"The catalogue is of pattern '{catalogue.PatternId}', the stove of '{stove.Pattern.Id}'; take Catalogue.For(stove.Pattern.Id).", nameof(catalogue));
        return new Run((workings ?? new Workings()).For(stove, catalogue), SensorReadings.Judged(evidence, stove), catalogue);
    }
}

/// <summary>How far a diagnosis has come.</summary>
public enum DiagnosisStage
{
    /// <summary>No fault, single faults, and the unlisted cause.</summary>
    Singles,
    /// <summary>Two faults at once, and three where the evidence calls for them.</summary>
    Pairs,
    /// <summary>Readings that may be wrong.</summary>
    Doubts,
    /// <summary>Complete.</summary>
    Done,
}

/// <summary>One slice of a diagnosis.</summary>
/// <param name="Stage">Stage it belongs to.</param>
/// <param name="Done">Hypotheses worked through.</param>
/// <param name="Total">Hypotheses in all.</param>
/// <param name="Beliefs">Conclusion, at the end of the single faults and at the very end; else null.</param>
/// <param name="Posterior">The posterior behind it; else null.</param>
public sealed record Progress(DiagnosisStage Stage, int Done, int Total, Beliefs? Beliefs, Posterior? Posterior);
