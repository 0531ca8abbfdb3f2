using Emberwright.Stove.Air;
using Emberwright.Stove.Patterns;

namespace Emberwright.Stove;

/// <summary>
/// One stove of a pattern, narrowed by a card, at a site: predicts what can be read on it for any
/// values of its <see cref="Parameter"/>s. Pure and without memory; the same input gives the same output.
/// </summary>
public sealed class VirtualStove
{
    private readonly StoveModel model;

    /// <summary>Sets up the stove.</summary>
    /// <param name="pattern">The family of construction.</param>
    /// <param name="card">What is known of make and model; its pattern must be this one.</param>
    /// <param name="site">Where it stands and what the day is like.</param>
    /// <exception cref="InputException">A number of site or card makes no sense; the message names field, value, range and remedy.</exception>
    public VirtualStove(Pattern pattern, StoveCard? card, Site site)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        ArgumentNullException.ThrowIfNull(site);
        Pattern = pattern;
        Card = card;
        Site = site;
        var offsets = new double[ParameterSlopes.Parameters];
        if (card is not null)
        {
            CardFit = CardFit.Of(pattern, card);
            offsets = [.. CardFit.Offsets];
        }

        model = new StoveModel(pattern, card, site, offsets);
    }

    /// <summary>A stove whose parameters' zeros are given, for fitting a card.</summary>
    internal VirtualStove(Pattern pattern, StoveCard? card, Site site, double[] offsets)
    {
        Pattern = pattern;
        Card = card;
        Site = site;
        model = new StoveModel(pattern, card, site, offsets);
    }

    /// <summary>The family of construction.</summary>
    public Pattern Pattern { get; }

    /// <summary>What is known of make and model; null when nothing is.</summary>
    public StoveCard? Card { get; }

    /// <summary>How the card's healthy values changed the nominal stove; null without a card.</summary>
    public CardFit? CardFit { get; }

    /// <summary>Where it stands.</summary>
    public Site Site { get; }

    /// <summary>Every number the stove is computed from, with its origin.</summary>
    public IReadOnlyList<Input> Inputs => StoveInputs.Of(this);

    /// <summary>
    /// Solves air, fire and heat together for one condition.
    /// </summary>
    /// <param name="parameters">Values indexed by <see cref="Parameter"/>; all zero is the clean stove.</param>
    /// <param name="condition">The state to solve for.</param>
    /// <param name="warmStart">A state of the same stove and condition to start from; it never changes the answer.</param>
    /// <returns>The state; look at its <see cref="StoveState.Status"/>: every physically possible input gives one.</returns>
    /// <exception cref="InputException">A parameter is not a number or far outside what a stove can have.</exception>
    public StoveSolution Solve(ReadOnlySpan<double> parameters, Condition condition, StoveState? warmStart = null)
    {
        CheckParameters(parameters);
        var scenario = model.Scenario(parameters, condition);
        return scenario.Regulation is null
            ? Settle(scenario, condition, warmStart)
            : Regulate(scenario, scenario.Regulation, condition, warmStart);
    }

    /// <summary>Lets the controller find its setting; where it would pass a limit, the setting stays there.</summary>
    private StoveSolution Regulate(Scenario scenario, Regulation task, Condition condition, StoveState? warmStart)
    {
        var at = model.Layout(scenario);
        var z = Start(at, warmStart, out var warm);
        var trace = CoupledSolver.Solve(scenario, at, z, warm);
        var setting = z[at.Control];
        if (trace.Converged && setting >= task.Least && setting <= task.Most)
        {
            return new StoveSolution(model, scenario, at, z, trace, condition, fireIsOut: false);
        }

        var most = Settle(scenario.AtSetting(task.Most), condition, warmStart);
        if (!trace.Converged ? task.SensedPa(scenario, most.NodePa(task.Node)) > task.SetPointPa : setting > task.Most)
        {
            return most;
        }

        return Settle(scenario.AtSetting(task.Least), condition, warmStart);
    }

    private StoveSolution Settle(Scenario scenario, Condition condition, StoveState? warmStart)
    {
        var at = model.Layout(scenario);
        var z = Start(at, warmStart, out var warm);
        var trace = CoupledSolver.Solve(scenario, at, z, warm);
        if (trace.Converged || !scenario.IsBurning)
        {
            return new StoveSolution(model, scenario, at, z, trace, condition, fireIsOut: false);
        }

        // A fire that finds no steady state (no blower and no draught, as a rule) goes out; then the stove reads as without one.
        var without = scenario.WithoutFire();
        at = model.Layout(without);
        z = new double[at.Count];
        trace = CoupledSolver.Solve(without, at, z, warm: false);
        return new StoveSolution(model, without, at, z, trace, condition, fireIsOut: true);
    }

    private static double[] Start(UnknownLayout at, StoveState? warmStart, out bool warm)
    {
        var z = new double[at.Count];
        warm = warmStart is StoveSolution before && before.Unknowns.Length == z.Length && before.Status != SolveStatus.NotConverged;
        if (warm)
        {
            ((StoveSolution)warmStart!).Unknowns.CopyTo(z);
        }

        return z;
    }

    private static void CheckParameters(ReadOnlySpan<double> parameters)
    {
        if (parameters.Length != ParameterSlopes.Parameters)
        {
            throw new InputException("parameters", $"{parameters.Length} values given for {ParameterSlopes.Parameters} parameters", "Give one value per parameter, zero for nominal.");
        }

        for (var k = 0; k < parameters.Length; k++)
        {
            var (limit, unit) = (Parameter)k switch
            {
                Parameter.Wind or Parameter.House or Parameter.SensorZero => (300.0, "Pa"),
                Parameter.ProofSensor => (1500.0, "K"),
                Parameter.Moisture => (0.5, "of mass as fired"),
                _ => (12.0, "(natural logarithm)"),
            };
            InputException.Require(parameters[k], -limit, limit, ((Parameter)k).ToString(), unit, "Zero is the nominal stove.");
        }
    }
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
