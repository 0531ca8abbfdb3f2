using Emberwright.Stove.Patterns;

namespace Emberwright.Stove;

/// <summary>
/// One stove of a pattern, narrowed by a card, at a site: predicts what can be read on it for any
/// values of its <see cref="Parameter"/>s. Pure and without memory; the same input gives the same output.
/// </summary>
public sealed class VirtualStove
{
    /// <summary>Sets up the stove.</summary>
    public VirtualStove(Pattern pattern, StoveCard? card, Site site)
    {
        Pattern = pattern;
        Card = card;
        Site = site;
    }

    /// <summary>The family of construction.</summary>
    public Pattern Pattern { get; }

    /// <summary>What is known of make and model; null when nothing is.</summary>
    public StoveCard? Card { get; }

    /// <summary>Where it stands.</summary>
    public Site Site { get; }

    /// <summary>
    /// Solves air, fire and heat together for one condition.
    /// </summary>
    /// <param name="parameters">Values indexed by <see cref="Parameter"/>; all zero is the clean stove.</param>
    /// <param name="condition">The state to solve for.</param>
    /// <param name="warmStart">A state of the same stove and condition to start from; it never changes the answer.</param>
    public StoveState Solve(ReadOnlySpan<double> parameters, Condition condition, StoveState? warmStart = null) =>
        throw new NotImplementedException();
}

/// <summary>How a solve ended.</summary>
public enum SolveStatus
{
    /// <summary>Mass and pressure residuals are below tolerance.</summary>
    Converged,
    /// <summary>Converged, but the burn pot gets less air than its fuel needs: the fire starves.</summary>
    FireStarved,
    /// <summary>No steady state with a fire exists (for example, no blower and no draught).</summary>
    NoSteadyFire,
    /// <summary>No solution was found.</summary>
    NotConverged,
}

/// <summary>The solved stove in one condition.</summary>
public abstract class StoveState
{
    /// <summary>The condition solved for.</summary>
    public abstract Condition Condition { get; }

    /// <summary>How the solve ended.</summary>
    public abstract SolveStatus Status { get; }

    /// <summary>True when this place and measure can be predicted here.</summary>
    public abstract bool Knows(Measure measure, string place);

    /// <summary>The predicted value in the measure's SI unit; NaN when not known.</summary>
    public abstract double Value(Measure measure, string place);

    /// <summary>
    /// ∂value/∂parameter for every <see cref="Parameter"/>, from the implicit-function theorem on the coupled Jacobian.
    /// </summary>
    /// <param name="measure">The kind of quantity.</param>
    /// <param name="place">Port or test point.</param>
    /// <param name="gradient">Receives one derivative per <see cref="Parameter"/>.</param>
    public abstract void Sensitivity(Measure measure, string place, Span<double> gradient);
}
