// Question:    which values of the unknowns explain the evidence best under one hypothesis?
// Equations:   c ← c − α·H⁻¹∂Φ, α ≤ 1 so that no unknown moves more than 2.5 prior standard deviations, then halved by
//              backtracking (× 0.4) until Φ falls; −0.25 ≤ restriction ≤ 4; stop when ∂ΦᵀH⁻¹∂Φ < 0.005 or after 12 steps.
// Symbols:     as in Problem.
// Validity:    a start at which the stove can be solved; otherwise the fit is reported as not converged.
// Assumptions: none beyond Problem's.
// Source:      Nocedal & Wright, Numerical Optimization, 10.3. From memory.
// Worked:      a linear problem is solved in one step (tested).
namespace Emberwright.Diagnosis.Inference;

/// <summary>The most probable unknowns under one hypothesis.</summary>
/// <param name="Problem">The problem fitted.</param>
/// <param name="Best">The problem at its best point.</param>
/// <param name="Factor">Cholesky factor of the curvature there.</param>
/// <param name="Converged">False when steps ran out or the best point is only the start.</param>
/// <param name="Clipped">True when an unknown lies on its bound.</param>
internal sealed record Fit(Problem Problem, Linearisation Best, Cholesky Factor, bool Converged, bool Clipped);

/// <summary>Gauss–Newton minimisation with a step limit, backtracking and bounds.</summary>
internal static class GaussNewton
{
    private const double LeastRestriction = -0.25;
    private const double MostRestriction = 4;
    private const double MostSigmas = 2.5;
    private const double Tolerance = 0.005;
    private const int MostSteps = 12;

    /// <summary>Minimises Φ from a start; null when not even the start can be evaluated.</summary>
    public static Fit? Minimise(Problem problem, double[] start)
    {
        var at = problem.At(Bounded(problem.Layout, start));
        if (!at.Solved) return null;
        var converged = false;
        var clipped = false;
        for (var step = 0; step < MostSteps; step++)
        {
            var held = Held(problem.Layout, at);
            clipped = held.Contains(true);
            var direction = Direction(at, held);
            if (direction is null) return null;
            var decrement = -Cholesky.Dot(at.Gradient, direction);
            if (decrement < Tolerance)
            {
                converged = true;
                break;
            }
            var next = LineSearch(problem, at, direction);
            if (next is null) break;
            at = next;
        }
        var factor = Cholesky.Factor(at.Curvature, at.Point.Length);
        return factor is null ? null : new Fit(problem, at, factor, converged, clipped);
    }

    /// <summary>One unbounded Newton step without evaluating its end: where a linear model would have its minimum.</summary>
    public static (double[] Point, double Misfit, Cholesky Factor)? Extrapolate(Linearisation at)
    {
        var n = at.Point.Length;
        if (!at.Solved || Cholesky.Factor(at.Curvature, n) is not { } factor) return null;
        var step = factor.Solve(at.Gradient);
        var point = new double[n];
        for (var k = 0; k < n; k++) point[k] = at.Point[k] - step[k];
        return (point, at.Misfit - 0.5 * Cholesky.Dot(at.Gradient, step), factor);
    }

    private static double[]? Direction(Linearisation at, bool[] held)
    {
        var n = at.Point.Length;
        var curvature = at.Curvature;
        var gradient = at.Gradient;
        if (held.Contains(true))
        {
            curvature = (double[])curvature.Clone();
            gradient = (double[])gradient.Clone();
            for (var k = 0; k < n; k++)
            {
                if (!held[k]) continue;
                for (var j = 0; j < n; j++) curvature[k * n + j] = curvature[j * n + k] = j == k ? 1 : 0;
                gradient[k] = 0;
            }
        }
        var direction = Cholesky.Factor(curvature, n)?.Solve(gradient);
        for (var k = 0; direction is not null && k < n; k++) direction[k] = -direction[k];
        return direction;
    }

    private static Linearisation? LineSearch(Problem problem, Linearisation at, double[] direction)
    {
        var n = direction.Length;
        var length = 1.0;
        for (var k = 0; k < n; k++)
        {
            var sigmas = Math.Abs(direction[k]) * Math.Sqrt(problem.Prior.Precision[k * n + k]);
            if (sigmas * length > MostSigmas) length = MostSigmas / sigmas;
        }
        for (var attempt = 0; attempt < 6; attempt++, length *= 0.4)
        {
            var trial = new double[n];
            for (var k = 0; k < n; k++) trial[k] = at.Point[k] + length * direction[k];
            var next = problem.At(Bounded(problem.Layout, trial));
            if (next.Misfit < at.Misfit) return next;
        }
        return null;
    }

    private static bool[] Held(Layout layout, Linearisation at)
    {
        var held = new bool[layout.Count];
        for (var k = 0; k < held.Length; k++)
            held[k] = layout.Unknowns[k].IsExponential
                && (at.Point[k] <= LeastRestriction && at.Gradient[k] > 0 || at.Point[k] >= MostRestriction && at.Gradient[k] < 0);
        return held;
    }

    private static double[] Bounded(Layout layout, double[] point)
    {
        var bounded = (double[])point.Clone();
        for (var k = 0; k < bounded.Length; k++)
            if (layout.Unknowns[k].IsExponential) bounded[k] = Math.Clamp(bounded[k], LeastRestriction, MostRestriction);
        return bounded;
    }
}
