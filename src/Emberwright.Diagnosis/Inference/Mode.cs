// Question:    how well does a hypothesis explain all readings and margins together, and what does each one of them add?
// Equations:   ln P(y|d) = −Φ(ĉ) − ½ln|2πR| − ½ln|Λ| − ½ln|H| + Σ_a ln S_a;
//              with Σ = H⁻¹, B = R⁻¹ − R⁻¹JΣJᵀR⁻¹ and u = R⁻¹r̂: leaving reading i out,
//                ln P(y_i | rest) = ½ln(B_ii/2π) − ½u_i²/B_ii, Δĉ = −ΣJᵀR⁻¹e_i·u_i/B_ii, ΔΣ = +gᵢgᵢᵀ/B_ii;
//              leaving margin t out, with C = gᵀΣg, C₋ = C/(1 − kC), z₋ = ẑ − ℓ′C₋: P(t | rest) = ∫ P_t(z)·N(z; z₋, C₋) dz;
//              if reading i were off by N(0, K): gain = −½ln(1 + K·B_ii) + ½K·u_i²/(1 + K·B_ii).
// Symbols:     as in Problem; ℓ′, k slope and curvature of the margin's ln P; S_a of Skew.
// Validity:    near the best point; exact for linear predictions.
// Assumptions: the posterior under one hypothesis has one mode.
// Source:      Laplace's method: Tierney & Kadane, JASA 81 (1986) 82; deletion formulas: Cook & Weisberg, Residuals and
//              Influence in Regression (1982), 2.2. From memory.
// Worked:      y = c + e, c ~ N(0,1), e ~ N(0,1), y = 1: ln P = ln N(1; 0, 2) = −1.51551 (by hand, tested).
namespace Emberwright.Diagnosis.Inference;

/// <summary>The posterior of the unknowns under one hypothesis, near its best point, and its evidence.</summary>
internal sealed class Mode
{
    // Abscissas and weights of nine-point Gauss–Hermite quadrature for the standard normal (Abramowitz & Stegun, table 25.10, rescaled).
    private static readonly double[] Nodes =
        [-4.512745863399783, -3.205429002856470, -2.076847978677830, -1.023255663789133, 0, 1.023255663789133, 2.076847978677830, 3.205429002856470, 4.512745863399783];

    private static readonly double[] Weights =
    [
        2.2345844007746e-5, 2.789141321231769e-3, 4.991640676521788e-2, 2.440975028949394e-1, 4.063492063492064e-1,
        2.440975028949394e-1, 4.991640676521788e-2, 2.789141321231769e-3, 2.2345844007746e-5,
    ];

    private const int MostStandIns = 2;
    private const double MostRestriction = 3;

    private readonly Problem _problem;
    private readonly double[] _pull;
    private readonly double[] _precision;
    private readonly double[]?[] _influence;
    private readonly (double Cavity, double[] Row, MarginPoint At)?[] _cavity;
    private readonly double[] _weighted;
    private double?[]? _gains;
    private double?[]? _givenMargin;
    private double? _doubt;

    private Mode(Problem problem, Linearisation at, double[] mean, double misfit, Cholesky factor, bool reliable)
    {
        _problem = problem;
        At = at;
        Mean = mean;
        Factor = factor;
        Reliable = reliable;
        Covariance = factor.Inverse();
        var n = mean.Length;
        var count = problem.Readings.Count;
        Skews = new Skew?[n];
        var ln = -misfit - 0.5 * (count * Math.Log(2 * Math.PI) + problem.Readings.LnDeterminant + problem.Prior.LnDeterminant + factor.LnDeterminant);
        for (var k = 0; k < n; k++)
        {
            if (!problem.Layout.Unknowns[k].IsExponential) continue;
            var skew = SkewOf(k, mean[k], Covariance[k * n + k]);
            Skews[k] = skew;
            // A fit that has not ended may not borrow from where it might have ended.
            ln += reliable ? skew.LnFactor : Math.Min(skew.LnFactor, 0);
        }
        LnEvidence = ln;

        _pull = new double[count];
        _precision = new double[count];
        Array.Fill(_precision, double.NaN);
        _influence = new double[count][];
        _cavity = new (double, double[], MarginPoint)?[problem.Margins.Count];
        _weighted = new double[count * n];
        var residual = new double[count];
        for (var i = 0; i < count; i++)
        {
            residual[i] = at.Residual[i];
            var row = at.Jacobian.AsSpan(i * n, n);
            for (var k = 0; k < n; k++) residual[i] -= row[k] * (mean[k] - at.Point[k]);
        }
        for (var i = 0; i < count; i++)
        {
            var precision = problem.Readings.Precision.AsSpan(i * count, count);
            _pull[i] = Cholesky.Dot(precision, residual);
            for (var j = 0; j < count; j++) Cholesky.AddScaled(_weighted.AsSpan(i * n, n), precision[j], at.Jacobian.AsSpan(j * n, n));
        }
    }

    /// <summary>Where the problem was linearised.</summary>
    public Linearisation At { get; }

    /// <summary>ĉ.</summary>
    public double[] Mean { get; }

    /// <summary>Σ = H⁻¹, row major.</summary>
    public double[] Covariance { get; }

    /// <summary>Cholesky factor of H.</summary>
    public Cholesky Factor { get; }

    /// <summary>ln P(readings and margins | hypothesis).</summary>
    public double LnEvidence { get; }

    /// <summary>Exponential prior put right, for each restriction; null elsewhere.</summary>
    public Skew?[] Skews { get; }

    /// <summary>False when the fit did not converge, lies on a bound, or was only extrapolated.</summary>
    public bool Reliable { get; }

    /// <summary>The problem.</summary>
    public Problem Problem => _problem;

    /// <summary>The posterior at the end of a fit.</summary>
    public static Mode Of(Fit fit) =>
        new(fit.Problem, fit.Best, fit.Best.Point, fit.Best.Misfit, fit.Factor, fit.Converged && !fit.Clipped);

    /// <summary>The posterior of a problem taken as linear round one point.</summary>
    public static Mode? Linear(Problem problem, Linearisation at) =>
        GaussNewton.Extrapolate(at) is { } end ? new Mode(problem, at, end.Point, end.Misfit, end.Factor, reliable: false) : null;

    /// <summary>Fits from a start; where that fails the linear answer there, where even that fails null.</summary>
    public static Mode? From(Problem problem, double[] start)
    {
        if (GaussNewton.Minimise(problem, start) is not { } fit) return Linear(problem, problem.At(start));
        var mode = Of(fit);
        for (var again = 0; again < MostStandIns && mode.Nearer() is { } nearer; again++)
        {
            if (GaussNewton.Minimise(nearer, mode.Mean) is not { } moved) break;
            mode = Of(moved);
        }
        return mode;
    }

    /// <summary>What the evidence makes of a restriction's exponential prior, from a mean and variance of it.</summary>
    public Skew SkewOf(int unknown, double mean, double variance)
    {
        var prior = _problem.Prior;
        return Skew.Of(mean, variance, _problem.Layout.Unknowns[unknown].Sd, prior.Mean[unknown], prior.Covariance[unknown * prior.Mean.Length + unknown]);
    }

    /// <summary>The problem with stand-ins nearer to where the evidence puts the restrictions; null when they are near enough.</summary>
    private Problem? Nearer()
    {
        var n = Mean.Length;
        var far = new List<(int, double, double)>();
        for (var k = 0; k < n; k++)
            if (Skews[k] is { } skew && skew.IsFarFrom(Mean[k], Covariance[k * n + k])) far.Add((k, 0, skew.Tau * Math.Min(skew.Mean, MostRestriction)));
        return far.Count == 0 ? null : new Problem(_problem, _problem.Prior.StandingIn(far));
    }

    /// <summary>
    /// The same posterior in a layout with further shifts, which keep their prior: no evidence has seen them. Shifts the
    /// two layouts share stay where they are.
    /// </summary>
    /// <param name="problem">The problem in the larger layout.</param>
    /// <param name="common">Number of unknowns before the shifts.</param>
    public Mode Padded(Problem problem, int common)
    {
        var n = Mean.Length;
        var m = problem.Layout.Count;
        var to = new int[n];
        var taken = new bool[m];
        for (var k = 0; k < n; k++)
        {
            to[k] = k;
            for (var j = common; k >= common && j < m; j++)
            {
                if (taken[j] || problem.Layout.Unknowns[j] != _problem.Layout.Unknowns[k]) continue;
                to[k] = j;
                break;
            }
            taken[to[k]] = true;
        }
        var point = (double[])problem.Prior.Mean.Clone();
        var gradient = new double[m];
        var curvature = (double[])problem.Prior.Precision.Clone();
        for (var i = 0; i < n; i++)
        {
            point[to[i]] = At.Point[i];
            gradient[to[i]] = At.Gradient[i];
            for (var j = 0; j < n; j++) curvature[to[i] * m + to[j]] = At.Curvature[i * n + j];
        }
        double[] Wide(double[] rows)
        {
            var wide = new double[rows.Length / n * m];
            for (var r = 0; r < rows.Length / n; r++)
                for (var k = 0; k < n; k++) wide[r * m + to[k]] = rows[r * n + k];
            return wide;
        }
        var at = new Linearisation
        {
            Point = point,
            Misfit = At.Misfit,
            Gradient = gradient,
            Curvature = curvature,
            Residual = At.Residual,
            Jacobian = Wide(At.Jacobian),
            Deviates = At.Deviates,
            MarginJacobian = Wide(At.MarginJacobian),
            Solved = At.Solved,
        };
        var mean = (double[])problem.Prior.Mean.Clone();
        for (var k = 0; k < n; k++) mean[to[k]] = Mean[k];
        var factor = Cholesky.Factor(curvature, m) ?? throw new InvalidOperationException("A posterior precision is not positive definite.");
        return new Mode(problem, at, mean, At.Misfit, factor, Reliable);
    }

    /// <summary>uᵢ and Bᵢᵢ of a reading: its pull on the fit and the precision with which the rest predicts it.</summary>
    public (double Pull, double Precision) Of(int reading)
    {
        if (double.IsNaN(_precision[reading]))
        {
            var n = Mean.Length;
            var count = _problem.Readings.Count;
            var own = _problem.Readings.Precision[reading * count + reading];
            _precision[reading] = Math.Max(own - Cholesky.Dot(_weighted.AsSpan(reading * n, n), Influence(reading)), 1e-12 * own);
        }
        return (_pull[reading], _precision[reading]);
    }

    /// <summary>ln P(reading | all other evidence).</summary>
    public double LnGiven(int reading)
    {
        var (u, b) = Of(reading);
        return 0.5 * Math.Log(b / (2 * Math.PI)) - 0.5 * u * u / b;
    }

    /// <summary>ln of the factor on the evidence if this reading were grossly wrong: off by N(0, K) beside everything else.</summary>
    public double GainIfWrong(int reading)
    {
        _gains ??= new double?[_pull.Length];
        return _gains[reading] ??= Gain(reading);
    }

    /// <summary>Σ ε/(1 − ε)·e^g over the readings, which may each be the one that is wrong.</summary>
    /// <param name="but">Readings left out of the sum.</param>
    public double DoubtInReadings(IReadOnlySet<int>? but)
    {
        if (but is null && _doubt is { } known) return known;
        var sum = 0.0;
        for (var i = 0; i < _pull.Length; i++)
            if (but is null || !but.Contains(i)) sum += Candidate.Share(Candidate.ReadingWrong, GainIfWrong(i));
        if (but is null) _doubt = sum;
        return sum;
    }

    private double Gain(int reading)
    {
        var (u, b) = Of(reading);
        var read = _problem.Readings.Items[reading];
        var sd = Noise.Gross(read.Observable.Measure, read.Value);
        var k = sd * sd;
        return -0.5 * Math.Log(1 + k * b) + 0.5 * k * u * u / (1 + k * b);
    }

    /// <summary>u_i = (R⁻¹r̂)_i: how hard a reading pulls.</summary>
    public double Pull(int reading) => _pull[reading];

    /// <summary>A margin at ĉ.</summary>
    public MarginPoint MarginAt(int margin) => Cavity(margin).At;

    /// <summary>ln P(margin | all other evidence): the mean of P over what the rest says of z, by nine-point Gauss–Hermite.</summary>
    public double LnGivenMargin(int margin)
    {
        _givenMargin ??= new double?[_problem.Margins.Count];
        return _givenMargin[margin] ??= Averaged(margin);
    }

    private double Averaged(int margin)
    {
        var (cavity, _, at) = Cavity(margin);
        return Averaged(_problem.Margins[margin], DeviateAt(margin) - at.Slope * cavity, cavity);
    }

    /// <summary>ln P of evidence that did not join the fit, foreseen from it.</summary>
    public double LnForeseen(IMargin margin)
    {
        var n = Mean.Length;
        var size = margin.Quantities.Count;
        var each = new double[size * n];
        Span<double> values = stackalloc double[size];
        Span<double> slopes = stackalloc double[size];
        for (var q = 0; q < size; q++)
        {
            values[q] = _problem.Value(Mean, margin.Quantities[q], each.AsSpan(q * n, n));
            if (!double.IsFinite(values[q])) return double.NaN;
        }
        var z = margin.Deviate(values, slopes);
        var row = new double[n];
        for (var q = 0; q < size; q++) Cholesky.AddScaled(row, slopes[q], each.AsSpan(q * n, n));
        return Averaged(margin, z, Math.Max(Cholesky.Dot(row, Times(row)), 0));
    }

    private static double Averaged(IMargin margin, double z, double variance)
    {
        var sd = Math.Sqrt(variance);
        var most = double.NegativeInfinity;
        Span<double> ln = stackalloc double[Nodes.Length];
        for (var k = 0; k < ln.Length; k++)
        {
            ln[k] = Math.Log(Weights[k]) + margin.At(z + sd * Nodes[k]).LnProbability;
            most = Math.Max(most, ln[k]);
        }
        var sum = 0.0;
        foreach (var l in ln) sum += Math.Exp(l - most);
        return most + Math.Log(sum);
    }

    /// <summary>Mean and variance of a combination g·c of the unknowns without one piece of evidence.</summary>
    /// <param name="g">The combination.</param>
    /// <param name="reading">Reading left out, or −1.</param>
    /// <param name="margin">Margin left out, or −1.</param>
    public (double Mean, double Variance) Without(ReadOnlySpan<double> g, int reading, int margin)
    {
        var mean = Cholesky.Dot(g, Mean);
        var spread = Times(g);
        var variance = Cholesky.Dot(g, spread);
        if (reading >= 0)
        {
            var (u, b) = Of(reading);
            var share = Cholesky.Dot(g, Influence(reading));
            mean -= share * u / b;
            variance += share * share / b;
        }
        if (margin >= 0)
        {
            var (cavity, row, at) = Cavity(margin);
            var share = Cholesky.Dot(spread, row);
            var open = cavity == 0 ? 1 : 1 + at.Curvature * cavity;
            mean -= share * at.Slope * open;
            variance += share * share * at.Curvature * open;
        }
        return (mean, variance);
    }

    /// <summary>r̃ᵀS⁻¹r̃: how far all readings lie from what the prior expects, linearised.</summary>
    public double ReadingMisfit()
    {
        var n = Mean.Length;
        var sum = 0.0;
        for (var i = 0; i < _pull.Length; i++)
        {
            var fromPrior = At.Residual[i];
            for (var k = 0; k < n; k++) fromPrior += At.Jacobian[i * n + k] * (At.Point[k] - _problem.Prior.Mean[k]);
            sum += fromPrior * _pull[i];
        }
        return sum;
    }

    /// <summary>½(ĉ − c₀)ᵀΛ⁻¹(ĉ − c₀): how far the unknowns had to go.</summary>
    public double Strain()
    {
        var n = Mean.Length;
        var away = new double[n];
        for (var k = 0; k < n; k++) away[k] = Mean[k] - _problem.Prior.Mean[k];
        var sum = 0.0;
        for (var k = 0; k < n; k++) sum += 0.5 * away[k] * Cholesky.Dot(_problem.Prior.Precision.AsSpan(k * n, n), away);
        return sum;
    }

    /// <summary>rᵀR⁻¹r and margins' misfit at the best point: what a further cause could still explain.</summary>
    public double Unexplained => 2 * At.Misfit;

    /// <summary>Σ·g.</summary>
    public double[] Times(ReadOnlySpan<double> g)
    {
        var n = Mean.Length;
        var result = new double[n];
        for (var k = 0; k < n; k++) result[k] = Cholesky.Dot(Covariance.AsSpan(k * n, n), g);
        return result;
    }

    /// <summary>ΣJᵀR⁻¹e_i: how the unknowns follow a reading.</summary>
    private double[] Influence(int reading) => _influence[reading] ??= Times(_weighted.AsSpan(reading * Mean.Length, Mean.Length));

    private (double Cavity, double[] Row, MarginPoint At) Cavity(int margin) => _cavity[margin] ??= CavityOf(margin);

    private (double Cavity, double[] Row, MarginPoint At) CavityOf(int margin)
    {
        var n = Mean.Length;
        var row = At.MarginJacobian.AsSpan(margin * n, n).ToArray();
        var at = _problem.Margins[margin].At(DeviateAt(margin));
        var c = Cholesky.Dot(row, Times(row));
        return (c / Math.Max(1 - at.Curvature * c, 1e-4), row, at);
    }

    private double DeviateAt(int margin)
    {
        var n = Mean.Length;
        var z = At.Deviates[margin];
        for (var k = 0; k < n; k++) z += At.MarginJacobian[margin * n + k] * (Mean[k] - At.Point[k]);
        return z;
    }
}
