using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>
/// Evidence that is not a plain number of the virtual stove and whose probability depends on which faults are present,
/// and perhaps on the model too.
/// </summary>
internal interface IConditional
{
    /// <summary>The evidence.</summary>
    Evidence Evidence { get; }

    /// <summary>ln of its probability when it has nothing to do with the stove.</summary>
    double LnIfLapse { get; }

    /// <summary>Probability that it has nothing to do with the stove.</summary>
    double Lapse { get; }

    /// <summary>True when a fault may change what it says.</summary>
    bool Concerns(Fault fault);

    /// <summary>What it says when these faults are present in its epoch.</summary>
    Bound Under(IReadOnlyList<Fault> present);
}

/// <summary>Evidence bound to a set of faults: either a margin that joins the fit, or a plain probability.</summary>
/// <param name="Key">Equal for equal margins of one piece of evidence, so that hypotheses share fits; empty only where no fault concerns it.</param>
/// <param name="Margin">The margin, or null.</param>
/// <param name="LnProbability">ln of the probability when there is no margin.</param>
internal sealed record Bound(string Key, IMargin? Margin, double LnProbability);
