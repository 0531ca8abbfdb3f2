// How is the coupled set solved for every stove, healthy or not?
//  1. Flows and pressures by the global-gradient step at the present densities, then temperatures and compositions by one
//     sweep along the flow; repeat until both change little.
//  2. Newton's method on the whole set with its analytic Jacobian and a line search on the scaled residual.
//  3. Should 2 fail: damped nesting (flows to rest at each temperature, temperatures half-way), then 2 again.
//  4. Should that fail: the fire's heat switched on in steps, each by 3, temperatures a quarter-way at the end, then 2 again.
//  5. Should that fail: from the clean stove to this one, its restrictions and leaks put in step by step, each by 2.
//  6. Should that fail without a fire: the path of states from a pulled terminal to its own pressure, see DraughtPath.
//     Otherwise "not converged".
// Converged means every mass residual below 1e-9 kg/s, every pressure residual below 1e-7 Pa, heat within 1e-6 W.
// Source: Todini & Pilati (1988), A gradient algorithm for the analysis of pipe networks; Dennis & Schnabel (1983), ch. 6.
namespace Emberwright.Stove.Air;

/// <summary>How one solve went.</summary>
internal readonly record struct SolveTrace(bool Converged, int Iterations, int Attempt, double MassKgPerS, double PressurePa, int WorstRow);

internal static class CoupledSolver
{
    public const double MassTolerance = 1e-9;
    public const double PressureTolerance = 1e-7;
    public const double HeatTolerance = 1e-6;
    public const double ShareTolerance = 1e-11;

    private const int MostUnknowns = 64;
    private const int MostLinks = 32;
    private const int MostNodes = 10;

    /// <summary>Solves in place: <paramref name="z"/> holds the start and receives the answer.</summary>
    public static SolveTrace Solve(Scenario s, in UnknownLayout at, Span<double> z, bool warm)
    {
        Span<LinkPoint> points = stackalloc LinkPoint[MostLinks];
        points = points[..at.Links];
        var iterations = 0;
        if (warm)
        {
            var direct = Polish(s, at, z, points, ref iterations, 1);
            if (direct.Converged)
            {
                return direct;
            }
        }

        Start(s, at, z);
        Interleave(s, at, z, points, 40, 1, ref iterations);
        var trace = Polish(s, at, z, points, ref iterations, 1);
        if (trace.Converged)
        {
            return trace;
        }

        Start(s, at, z);
        Nest(s, at, z, points, 40, 0.5, ref iterations);
        trace = Polish(s, at, z, points, ref iterations, 2);
        if (trace.Converged)
        {
            return trace;
        }

        Start(s, at, z);
        for (var share = 0.0; s.IsBurning && share < 1; share += 0.2)
        {
            Nest(s with { HeatShare = share }, at, z, points, 15, 0.5, ref iterations);
        }

        Nest(s, at, z, points, 60, 0.25, ref iterations);
        trace = Polish(s, at, z, points, ref iterations, 3);
        if (trace.Converged)
        {
            return trace;
        }

        Start(s, at, z);
        for (var share = 0.0; share < 1; share += 0.05)
        {
            var part = s.PartlyRestricted(share);
            if (share == 0)
            {
                Interleave(part, at, z, points, 40, 1, ref iterations);
            }

            Polish(part, at, z, points, ref iterations, 4);
        }

        trace = Polish(s, at, z, points, ref iterations, 4);
        return trace.Converged || s.IsBurning || s.Regulation is not null ? trace : FollowDraught(s, at, z, points, trace, ref iterations);
    }

    private static SolveTrace FollowDraught(Scenario s, in UnknownLayout at, Span<double> z, Span<LinkPoint> points, SolveTrace before, ref int iterations)
    {
        var beginning = DraughtPath.Beginning(s);
        Start(beginning, at, z);
        Interleave(beginning, at, z, points, 40, 1, ref iterations);
        return Polish(beginning, at, z, points, ref iterations, 5).Converged && DraughtPath.Follow(s, at, z, points, ref iterations)
            ? Polish(s, at, z, points, ref iterations, 5)
            : before;
    }

    /// <summary>The start Newton's method gets, scaled, for comparing other methods from the same place.</summary>
    internal static double[] RoughStart(Scenario s, in UnknownLayout at)
    {
        var z = new double[at.Count];
        var iterations = 0;
        Span<LinkPoint> points = stackalloc LinkPoint[at.Links];
        Start(s, at, z);
        Interleave(s, at, z, points, 40, 1, ref iterations);
        for (var k = 0; k < z.Length; k++)
        {
            z[k] /= Scaling.Column(at, k);
        }

        return z;
    }

    /// <summary>The start before any sweep, scaled: what a solver without them would begin from.</summary>
    internal static double[] ColdStart(Scenario s, in UnknownLayout at)
    {
        var z = new double[at.Count];
        Start(s, at, z);
        for (var k = 0; k < z.Length; k++)
        {
            z[k] /= Scaling.Column(at, k);
        }

        return z;
    }

    /// <summary>Largest residuals of a state; the worst row by scaled size.</summary>
    public static SolveTrace Judge(in UnknownLayout at, ReadOnlySpan<double> residual, int iterations, int attempt)
    {
        double mass = 0, pressure = 0, heat = 0, share = 0, worst = -1;
        var row = 0;
        for (var i = 0; i < at.Count; i++)
        {
            var size = Math.Abs(residual[i]);
            double scaled;
            if (i < at.Links || i == at.Control)
            {
                pressure = Larger(pressure, size);
                scaled = size / PressureTolerance;
            }
            else if (i < at.Links + at.Nodes)
            {
                mass = Larger(mass, size);
                scaled = size / MassTolerance;
            }
            else if (i < at.Links + (2 * at.Nodes))
            {
                heat = Larger(heat, size);
                scaled = size / HeatTolerance;
            }
            else
            {
                share = Larger(share, size);
                scaled = size / ShareTolerance;
            }

            if (!(scaled <= worst))
            {
                worst = scaled;
                row = i;
            }
        }

        var converged = mass < MassTolerance && pressure < PressureTolerance && heat < HeatTolerance && share < ShareTolerance;
        return new SolveTrace(converged, iterations, attempt, mass, pressure, row);
    }

    private static double Larger(double a, double b) => b > a || double.IsNaN(b) ? b : a;

    private static void Start(Scenario s, in UnknownLayout at, Span<double> z)
    {
        z.Clear();
        for (var l = 0; l < at.Links; l++)
        {
            z[at.Q(l)] = s.Links[l].Kind == LinkKind.Power && s.Links[l].Exponent != 2 ? 1e-4 : 4e-3;
        }

        for (var i = 0; i < at.Nodes; i++)
        {
            z[at.T(i)] = s.RoomK;
        }

        if (at.IsControlled)
        {
            z[at.Control] = 1;
        }
    }

    /// <summary>Whole-set Newton steps with a line search.</summary>
    private static SolveTrace Polish(Scenario s, in UnknownLayout at, Span<double> z, Span<LinkPoint> points, ref int iterations, int attempt)
    {
        var n = at.Count;
        Span<double> residual = stackalloc double[MostUnknowns];
        Span<double> trial = stackalloc double[MostUnknowns];
        Span<double> trialResidual = stackalloc double[MostUnknowns];
        Span<double> jacobian = stackalloc double[n * n];
        Span<int> pivots = stackalloc int[MostUnknowns];
        residual = residual[..n];
        trial = trial[..n];
        trialResidual = trialResidual[..n];

        CoupledEquations.Assemble(s, at, z, points, residual, jacobian);
        var merit = Scaling.Merit(at, residual);
        for (var i = 0; i < 25; i++)
        {
            var trace = Judge(at, residual, iterations, attempt);
            if (trace.Converged || !double.IsFinite(merit))
            {
                return trace;
            }

            iterations++;
            Scaling.Apply(at, jacobian, residual);
            if (!DenseLu.Factor(jacobian, pivots, n))
            {
                return trace;
            }

            DenseLu.Solve(jacobian, pivots, n, residual);
            var step = 1.0;
            var improved = false;
            for (var half = 0; half < 8; half++, step *= 0.4)
            {
                for (var k = 0; k < n; k++)
                {
                    trial[k] = z[k] - (step * residual[k] * Scaling.Column(at, k));
                }

                Bound(at, trial);
                CoupledEquations.Assemble(s, at, trial, points, trialResidual, half == 0 ? jacobian : []);
                var trialMerit = Scaling.Merit(at, trialResidual);
                if (trialMerit < merit * (1 - (0.1 * step)) || trialMerit < 1e-24)
                {
                    improved = true;
                    merit = trialMerit;
                    if (half > 0)
                    {
                        CoupledEquations.Assemble(s, at, trial, points, trialResidual, jacobian);
                    }

                    break;
                }
            }

            if (!improved)
            {
                CoupledEquations.Assemble(s, at, z, points, residual, []);
                return Judge(at, residual, iterations, attempt);
            }

            trial.CopyTo(z);
            trialResidual.CopyTo(residual);
        }

        return Judge(at, residual, iterations, attempt);
    }

    private static void Bound(in UnknownLayout at, Span<double> z)
    {
        for (var i = 0; i < at.Nodes; i++)
        {
            z[at.T(i)] = Math.Clamp(z[at.T(i)], 200, 2500);
        }

        if (at.IsControlled)
        {
            z[at.Control] = Math.Clamp(z[at.Control], 0, 4);
        }
    }

    private static void Interleave(Scenario s, in UnknownLayout at, Span<double> z, Span<LinkPoint> points, int most, double damping, ref int iterations)
    {
        for (var i = 0; i < most; i++)
        {
            iterations++;
            var flow = FlowStep.Take(s, at, z, points, 1);
            var heat = HeatSweep.Take(s, at, z, points, damping);
            if (i >= 2 && flow < 0.05 && heat < 15)
            {
                return;
            }
        }
    }

    private static void Nest(Scenario s, in UnknownLayout at, Span<double> z, Span<LinkPoint> points, int most, double damping, ref int iterations)
    {
        for (var i = 0; i < most; i++)
        {
            for (var k = 0; k < 12; k++)
            {
                iterations++;
                if (FlowStep.Take(s, at, z, points, k < 4 ? 1 : 0.7) < 1e-6)
                {
                    break;
                }
            }

            if (HeatSweep.Take(s, at, z, points, damping) < 0.02)
            {
                return;
            }
        }
    }
}
