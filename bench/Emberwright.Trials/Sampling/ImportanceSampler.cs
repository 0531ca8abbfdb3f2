// Question:    how probable are the readings under one hypothesis, without taking the posterior for normal?
// Equations:   P(y|d) = E_q[ N(y; h(c), R)·p(c) / q(c) ], estimated by the mean over draws c of q; effective draws (Σw)²/Σw².
//              q: after pilot runs (population Monte Carlo), with u = b − x (and w = a − κ·x for the exchanger's surface) in place of b (and a), u, w and all other
//              unknowns from ¾·N(m, 1.1²·C) + ¼·t₄(m, C), m and C at first those of the mode; then each x from p(x | u, w), which is
//              its normal of mean (μ_b − u)/s_b² + κ(μ_a − w)/s_a² − 1/τ over the precision 1/s_b² + κ²/s_a², cut off at 0.
// Symbols:     c unknowns, h what the instruments would show, R covariance of the readings; b clean baseline, x restriction
//              with prior Exp(τ), a surface, μ and s their prior means and widths.
// Validity:    one epoch, no last visit, readings only; a posterior of one mode.
// Assumptions: none beyond the model's own: the priors are taken as stated and every draw is solved anew.
// Source:      Owen, Monte Carlo theory, methods and examples (2013), ch. 9; defensive mixtures: Hesterberg (1995);
//              pilot runs: Cappé, Guillin, Marin & Robert (2004). From memory.
// Worked:      the sampled evidence of one linear reading is its normal density (tested).
using Emberwright.Diagnosis.Inference;
using Emberwright.Stove;
using Emberwright.Trials.Generator;
using MathNet.Numerics;

namespace Emberwright.Trials.Sampling;

/// <summary>The evidence of one hypothesis by importance sampling from its mode.</summary>
internal sealed class ImportanceSampler
{
    private const double Inflation = 1.1;
    private const double HeavyShare = 0.25;
    private const int HeavyDegrees = 4;
    private const double Impossible = 10;
    private const int Pilots = 4;
    private const double EnoughPerUnknown = 8;
    private const double FlattestPower = 0.02;
    private const double Kappa = PriorTable.InsulationPerRestriction;

    private readonly Problem _problem;
    private readonly IStoveModel _model;
    private readonly Passage[] _passages;
    private readonly int[] _free;
    private double[] _centre;
    private Cholesky _covariance;
    private readonly double _lnConstant;
    private readonly Dictionary<Condition, StoveState> _warm = [];

    /// <summary>Prepares the proposal.</summary>
    /// <param name="mode">The mode to sample from.</param>
    /// <param name="model">What predicts the stove.</param>
    /// <exception cref="InvalidOperationException">The mode's covariance is not positive definite.</exception>
    public ImportanceSampler(Mode mode, IStoveModel model)
    {
        _problem = mode.Problem;
        _model = model;
        var layout = _problem.Layout;
        _passages = [.. Enumerable.Range(0, layout.Count).Where(k => layout.Unknowns[k].IsExponential).Select(k => Passage.Of(layout, k))];
        _free = [.. Enumerable.Range(0, layout.Count).Where(k => !layout.Unknowns[k].IsExponential)];
        var m = _free.Length;
        var rows = _free.Select(k => Row(layout.Count, k)).ToArray();
        _centre = [.. rows.Select(r => Cholesky.Dot(r, mode.Mean))];
        var c = new double[m * m];
        for (var i = 0; i < m; i++)
            for (var j = 0; j < m; j++)
                for (var k = 0; k < layout.Count; k++)
                    if (rows[i][k] != 0) c[i * m + j] += rows[i][k] * Cholesky.Dot(mode.Covariance.AsSpan(k * layout.Count, layout.Count), rows[j]);
        _covariance = Cholesky.Factor(c, m) ?? throw new InvalidOperationException("The mode's covariance is not positive definite.");
        _lnConstant = -0.5 * (_problem.Readings.Count * Math.Log(2 * Math.PI) + _problem.Readings.LnDeterminant);
    }

    /// <summary>ln of the evidence and the number of effective draws, after pilot runs that move the proposal to where the posterior is.</summary>
    public (double Ln, double Effective) Evidence(int draws, Chance chance)
    {
        for (var pilot = 0; pilot < Pilots; pilot++) Adapt(draws / Pilots / 2, chance);
        var ln = new double[draws];
        var y = new double[_free.Length];
        for (var k = 0; k < draws; k++) ln[k] = LnWeight(y, chance);
        var weights = Weights(ln, 1);
        return (ln.Max() + Math.Log(weights.Sum() / draws), Effective(weights));
    }

    /// <summary>
    /// Centre and covariance of a pilot run's weighted draws. Weights that leave too few of them are flattened first: their ln times a power below 1.
    /// </summary>
    private void Adapt(int draws, Chance chance)
    {
        var m = _free.Length;
        var y = Enumerable.Range(0, draws).Select(_ => new double[m]).ToArray();
        var ln = y.Select(at => LnWeight(at, chance)).ToArray();
        var power = 1.0;
        while (Effective(Weights(ln, power)) < EnoughPerUnknown * m && power > FlattestPower) power *= 0.8;
        var weights = Weights(ln, power);
        var total = weights.Sum();
        var centre = new double[m];
        for (var k = 0; k < draws; k++) Cholesky.AddScaled(centre, weights[k] / total, y[k]);
        var covariance = new double[m * m];
        for (var k = 0; k < draws; k++)
        {
            if (weights[k] == 0) continue;
            for (var i = 0; i < m; i++) y[k][i] -= centre[i];
            for (var i = 0; i < m; i++) Cholesky.AddScaled(covariance.AsSpan(i * m, m), weights[k] / total * y[k][i], y[k]);
        }

        if (Cholesky.Factor(covariance, m) is not { } factor) return;
        (_centre, _covariance) = (centre, factor);
    }

    private static double[] Weights(double[] ln, double power)
    {
        var most = ln.Max();
        return [.. ln.Select(l => Math.Exp(power * (l - most)))];
    }

    private static double Effective(double[] weights) => Square(weights.Sum()) / weights.Sum(Square);

    private double[] Row(int count, int unknown)
    {
        var row = new double[count];
        row[unknown] = 1;
        foreach (var p in _passages)
        {
            if (p.Baseline == unknown) row[p.Restriction] = -1;
            if (p.Surface == unknown) row[p.Restriction] = -Kappa;
        }

        return row;
    }

    /// <summary>ln of one draw's weight; −∞ where the prior leaves nothing or the stove has no state.</summary>
    private double LnWeight(double[] y, Chance chance)
    {
        var c = new double[_problem.Layout.Count];
        var lnProposal = DrawFree(c, chance);
        for (var i = 0; i < y.Length; i++) y[i] = c[_free[i]];
        var lnTarget = 0.0;
        foreach (var p in _passages)
        {
            var (mean, sd) = Given(p, c);
            var x = Draws.Truncated(mean, sd, 0, chance.Unit());
            lnProposal += Normal.LnDensity(x, mean, sd * sd) - Normal.LnBelow(mean / sd);
            lnTarget += -Math.Log(p.Tau) - x / p.Tau;
            c[p.Restriction] = x;
            c[p.Baseline] += x;
            if (p.Surface >= 0) c[p.Surface] += Kappa * x;
        }

        var prior = _problem.Prior;
        if (Array.Exists(_free, k => Square(c[k] - prior.Mean[k]) > Square(Impossible) * prior.Covariance[k * c.Length + k])) return double.NegativeInfinity;
        foreach (var k in _free) lnTarget += Normal.LnDensity(c[k], prior.Mean[k], prior.Covariance[k * c.Length + k]);
        lnTarget += LnLikelihood(c);
        return double.IsNaN(lnTarget) ? double.NegativeInfinity : lnTarget - lnProposal;
    }

    /// <summary>Draws all but the restrictions; the ln of the density they were drawn from.</summary>
    private double DrawFree(double[] c, Chance chance)
    {
        var m = _free.Length;
        var stretch = Inflation;
        if (chance.Happens(HeavyShare))
        {
            var chi = 0.0;
            for (var d = 0; d < HeavyDegrees; d++) chi += Square(chance.Normal());
            stretch = Math.Sqrt(HeavyDegrees / chi);
        }

        var z = new double[m];
        for (var i = 0; i < m; i++) z[i] = chance.Normal();
        var spread = _covariance.Spread(z);
        for (var i = 0; i < m; i++) c[_free[i]] = _centre[i] + stretch * spread[i];

        var square = stretch * stretch * z.Sum(Square);
        var lnNormal = -0.5 * (m * Math.Log(2 * Math.PI) + square / Square(Inflation)) - m * Math.Log(Inflation);
        var lnHeavy = SpecialFunctions.GammaLn((HeavyDegrees + m) / 2.0) - SpecialFunctions.GammaLn(HeavyDegrees / 2.0)
            - 0.5 * m * Math.Log(HeavyDegrees * Math.PI) - 0.5 * (HeavyDegrees + m) * Math.Log(1 + square / HeavyDegrees);
        return Sum(Math.Log(1 - HeavyShare) + lnNormal, Math.Log(HeavyShare) + lnHeavy) - 0.5 * _covariance.LnDeterminant;
    }

    /// <summary>Mean and standard deviation of a restriction's normal, cut off at 0, given what is held of its baseline and surface.</summary>
    private (double Mean, double Sd) Given(Passage p, double[] c)
    {
        var prior = _problem.Prior;
        var unknowns = _problem.Layout.Unknowns;
        var baseline = Square(unknowns[p.Baseline].Sd);
        var precision = 1 / baseline;
        var linear = (prior.Mean[p.Baseline] - c[p.Baseline]) / baseline - 1 / p.Tau;
        if (p.Surface >= 0)
        {
            var surface = Square(unknowns[p.Surface].Sd);
            precision += Kappa * Kappa / surface;
            linear += Kappa * (prior.Mean[p.Surface] - c[p.Surface]) / surface;
        }

        return (linear / precision, 1 / Math.Sqrt(precision));
    }

    private double LnLikelihood(double[] c)
    {
        var layout = _problem.Layout;
        var readings = _problem.Readings;
        var miss = new double[readings.Count];
        Span<double> parameters = stackalloc double[Layout.Parameters];
        var here = new Dictionary<Condition, StoveState>();
        for (var i = 0; i < miss.Length; i++)
        {
            var (measure, place, condition) = readings.Items[i].Observable;
            if (!here.TryGetValue(condition, out var state))
            {
                layout.Fill(c, 0, parameters);
                try
                {
                    state = _model.Solve(parameters, condition, _warm.GetValueOrDefault(condition));
                }
                catch (InputException)
                {
                    // The heavy tail reaches stoves that nobody can have; the prior leaves them nothing.
                    return double.NegativeInfinity;
                }

                here.Add(condition, state);
                if (state.Status == SolveStatus.Converged) _warm[condition] = state;
            }

            var value = Noise.Compared(measure, state.Value(measure, place));
            if (measure == Measure.Pressure) value *= 1 + c[layout.GaugeScale];
            if (layout.OffsetOf(measure, place) is >= 0 and var offset) value += c[offset];
            miss[i] = readings.Values[i] - value;
        }

        var square = 0.0;
        for (var i = 0; i < miss.Length; i++) square += miss[i] * Cholesky.Dot(readings.Precision.AsSpan(i * miss.Length, miss.Length), miss);
        return _lnConstant - 0.5 * square;
    }

    private static double Square(double x) => x * x;

    /// <summary>ln of a sum from the lns of its terms.</summary>
    private static double Sum(double a, double b) => Math.Max(a, b) + Math.Log(1 + Math.Exp(-Math.Abs(a - b)));

    /// <summary>A restriction, the clean baseline it takes from, and the surface it lessens (−1 without).</summary>
    private readonly record struct Passage(int Restriction, int Baseline, int Surface, double Tau)
    {
        public static Passage Of(Layout layout, int restriction)
        {
            var unknown = layout.Unknowns[restriction];
            return new(restriction, layout.IndexOf(UnknownKind.Baseline, unknown.Parameter),
                unknown.Parameter == Parameter.Exchanger ? layout.IndexOf(UnknownKind.Free, Parameter.Insulation) : -1, unknown.Sd);
        }
    }
}
