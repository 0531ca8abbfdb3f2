// Question:    what would a check show under one scenario, given everything already known?
// Equations:   y* = h(c) + e*, e* correlated with the readings' errors by ρ: g̃ = g − JᵀR⁻¹ρ;
//              mean h(ĉ) + ρᵀR⁻¹r̂ + g̃ᵀΔ, variance g̃ᵀVg̃ + σ² − ρᵀR⁻¹ρ, where Δ, V are the unknowns' mean shift and
//              covariance once each fouling is known to be past its limit or within it:
//              G = seen combinations, Q = ΣGᵀ(GΣGᵀ)⁻¹, Δ = Q(E[v|past or within] − Gĉ), V = Σ − QGΣ + Q·diag(Var[v|·])·Qᵀ.
// Symbols:     as in Problem and Mode; v ln of the share left of each fouled passage.
// Validity:    near the mode; one further solve for each condition and component, none for each scenario.
// Assumptions: given past or within, the foulings are independent.
// Source:      Gaussian conditioning; textbook.
// Worked:      the same reading predicted again has the variance of its own scatter and a little more (tested).
using System.Collections.Immutable;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>Predicts readings and signs under the scenarios of a posterior.</summary>
internal sealed class Predictor(CaseFile file, ModeLibrary library)
{
    private readonly Dictionary<(Candidate, ulong), (double[] Shift, double[] Covariance)> _conditioned = [];
    private readonly Dictionary<(Mode, Quantity, bool), (double Mean, double[] Row)> _rows = [];
    private readonly Dictionary<Condition, ImmutableArray<ContactRule>> _rules = [];
    private readonly Dictionary<string, double> _meter = new(StringComparer.Ordinal);
    private readonly ElectricalReadings? _circuit = file.Ground.Circuit;

    /// <summary>Joint mean and covariance of readings taken now, instruments included.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="observables">What would be read.</param>
    /// <param name="mean">Receives the means in SI; +∞ for an open circuit, NaN where nothing predicts it.</param>
    /// <param name="covariance">Receives the covariance, row major.</param>
    public void Predict(Scenario scenario, IReadOnlyList<Observable> observables, Span<double> mean, Span<double> covariance)
    {
        var n = observables.Count;
        covariance.Clear();
        var follow = new double[n][];
        var rho = new double[n][];
        for (var i = 0; i < n; i++)
        {
            if (_circuit is not null && _circuit.Knows(observables[i].Measure, observables[i].Place))
                (mean[i], covariance[i * n + i]) = Electrical(scenario, observables[i]);
            else
                mean[i] = OfStove(scenario, observables[i], out follow[i]!, out rho[i]!);
        }
        var (_, spread) = Conditioned(scenario);
        for (var i = 0; i < n; i++)
        {
            if (follow[i] is null) continue;
            for (var j = 0; j <= i; j++)
            {
                if (follow[j] is null) continue;
                var together = Shared(scenario, observables[i], observables[j], rho[i], rho[j], mean) + Quadratic(spread, follow[i], follow[j]);
                covariance[i * n + j] = covariance[j * n + i] = together;
            }
            var own = Noise.Own(observables[i], Plain(observables[i], mean[i]));
            covariance[i * n + i] = Math.Max(covariance[i * n + i], 0.5 * own * own);
        }
        for (var i = 0; i < n; i++)
            if (observables[i].Measure == Measure.CarbonMonoxide && follow[i] is not null) ToPpm(mean, covariance, i, n);
    }

    /// <summary>Mean of a reading, how it follows the unknowns, and how its error goes with the errors of past readings.</summary>
    private double OfStove(Scenario scenario, Observable observable, out double[]? follow, out double[]? rho)
    {
        var mode = library.Full(scenario.Candidate);
        var (mean, row) = Row(mode, Quantity.Of(file.Plan.Now, observable), asRead: true);
        (follow, rho) = (null, null);
        if (!double.IsFinite(mean)) return double.NaN;
        var readings = mode.Problem.Readings;
        var count = readings.Count;
        var off = Noise.Model(observable, Plain(observable, mean));
        rho = new double[count];
        for (var i = 0; i < count; i++)
        {
            var before = readings.Items[i];
            if (before.Observable == observable) rho[i] += off * Noise.Model(observable, before.Value);
            if (before.Observable.Measure == Measure.Pressure && observable.Measure == Measure.Pressure) rho[i] += Noise.GaugeOffsetPa * Noise.GaugeOffsetPa;
        }
        follow = (double[])row.Clone();
        for (var i = 0; i < count; i++)
        {
            mean += rho[i] * mode.Pull(i);
            var weight = Cholesky.Dot(readings.Precision.AsSpan(i * count, count), rho);
            for (var k = 0; k < follow.Length; k++) follow[k] -= weight * mode.At.Jacobian[i * follow.Length + k];
        }
        return mean + Cholesky.Dot(follow, Conditioned(scenario).Shift);
    }

    /// <summary>Covariance of the errors of two readings, given the errors of past ones.</summary>
    private double Shared(Scenario scenario, Observable a, Observable b, double[] rhoA, double[] rhoB, Span<double> mean)
    {
        var mode = library.Full(scenario.Candidate);
        var readings = mode.Problem.Readings;
        var count = readings.Count;
        var sum = 0.0;
        if (a.Measure == Measure.Pressure && b.Measure == Measure.Pressure) sum += Noise.GaugeOffsetPa * Noise.GaugeOffsetPa;
        if (a == b)
        {
            var plain = Plain(a, Row(mode, Quantity.Of(file.Plan.Now, a), asRead: true).Mean);
            sum += Math.Pow(Noise.Own(a, plain), 2) + Math.Pow(Noise.Model(a, plain), 2);
        }
        if (a.Measure == b.Measure && a.Place == b.Place && mode.Problem.Layout.IndexOf(UnknownKind.Offset, null, 0, a.Measure, a.Place) < 0)
            sum += PriorTable.OffsetSd(a.Measure) * PriorTable.OffsetSd(a.Measure);
        for (var i = 0; i < count; i++) sum -= Cholesky.Dot(readings.Precision.AsSpan(i * count, count), rhoA) * rhoB[i];
        return sum;
    }

    /// <summary>From ln ppm to ppm, as a lognormal.</summary>
    private static void ToPpm(Span<double> mean, Span<double> covariance, int at, int n)
    {
        var variance = Math.Min(covariance[at * n + at], 2);
        var ppm = Math.Exp(Math.Min(mean[at] + variance / 2, 12));
        mean[at] = ppm;
        for (var j = 0; j < n; j++)
        {
            if (j == at) continue;
            covariance[at * n + j] *= ppm;
            covariance[j * n + at] *= ppm;
        }
        covariance[at * n + at] = ppm * ppm * (Math.Exp(variance) - 1);
    }

    private static double Plain(Observable observable, double value) =>
        observable.Measure == Measure.CarbonMonoxide ? Math.Exp(Math.Min(value, 12)) : value;

    /// <summary>Probability of an outcome of a sign had now.</summary>
    public double Probability(Scenario scenario, SignTable table, int outcome)
    {
        if (table.Sign.Margin is { } margin && !scenario.Discrete.Any(f => f.Symptoms.Any(s => s.Sign == table.Sign.Id)))
        {
            var quantity = margin.Quantity is { } observable
                ? Quantity.Of(file.Plan.Now, observable)
                : Quantity.Of(file.Plan.Now, margin.Parameter!.Value);
            var (mean, row) = Row(library.Full(scenario.Candidate), quantity, asRead: false);
            if (double.IsFinite(mean))
            {
                var (shift, covariance) = Conditioned(scenario);
                mean += Cholesky.Dot(row, shift);
                var sd = Math.Sqrt(margin.Blur * margin.Blur + Spread(covariance, row));
                var above = outcome < margin.Cuts.Count ? Normal.Below((margin.Cuts[outcome] - mean) / sd) : 1;
                var below = outcome > 0 ? Normal.Below((margin.Cuts[outcome - 1] - mean) / sd) : 0;
                return (1 - margin.Lapse) * Math.Max(above - below, 0) + margin.Lapse / (margin.Cuts.Count + 1);
            }
        }
        var present = scenario.Discrete.Select(IndexOf).ToArray();
        return table.Probability(outcome, present, scenario.Fouled, file.FirstFouling, scenario.IsUnlisted);
    }

    private (double Mean, double Variance) Electrical(Scenario scenario, Observable observable)
    {
        CircuitChange[] changes = [.. scenario.Discrete.SelectMany(f => f.Circuit).Where(c => _circuit!.Wiring.HasComponent(c.Component)).DistinctBy(c => c.Component)];
        var closed = Meter(observable, [], changes);
        var (mean, variance) = (closed, Scatter(observable, closed));
        foreach (var rule in Rules(observable.Condition))
        {
            var open = Meter(observable, [rule.Contact], changes);
            if (closed == open || Math.Abs(closed - open) < 1e-6) continue;
            var supposed = rule.Sensed.Measure == Measure.Pressure ? scenario.SwitchClosed : null;
            var share = supposed is { } known ? known ? 1 : 0 : Closed(scenario, rule);
            if (!double.IsFinite(mean) || !double.IsFinite(open) || share is > 0.98 or < 0.02)
            {
                if (share < 0.5) (mean, variance) = (open, Scatter(observable, open));
                continue;
            }
            variance = share * variance + (1 - share) * Scatter(observable, open) + share * (1 - share) * (mean - open) * (mean - open);
            mean = share * mean + (1 - share) * open;
        }
        return (mean, variance);
    }

    private ImmutableArray<ContactRule> Rules(Condition condition)
    {
        if (_rules.TryGetValue(condition, out var known)) return known;
        known = file.Ground.Rules(condition);
        _rules.Add(condition, known);
        return known;
    }

    private double Meter(Observable observable, string[] open, CircuitChange[] changes)
    {
        var key = $"{observable.Measure} {observable.Place} {observable.Condition} {string.Concat(open)} {string.Join('+', changes.Select(c => c.ToString()))}";
        if (_meter.TryGetValue(key, out var value)) return value;
        value = _circuit!.Predict(observable, open, changes);
        _meter.Add(key, value);
        return value;
    }

    private static double Scatter(Observable observable, double value) => !double.IsFinite(value) ? 1
        : observable.Measure == Measure.Resistance ? Math.Pow(0.5 + 0.12 * value, 2)
        : Math.Pow(Noise.Own(observable, value), 2) + Math.Pow(Noise.Model(observable, value), 2);

    /// <summary>Probability that the vacuum switch, if it follows its vacuum, stands closed; 1 where there is none.</summary>
    public double SwitchClosed(Scenario scenario, Condition condition)
    {
        if (_circuit is null || !_circuit.Wiring.HasComponent(ComponentIds.VacuumSwitch)) return 1;
        return Closed(scenario, ContactRule.Vacuum(ComponentIds.VacuumSwitch, file.Stove, condition));
    }

    /// <summary>Probability that a contact stands closed, if it follows what it senses; 1 where it is itself at fault.</summary>
    private double Closed(Scenario scenario, ContactRule rule)
    {
        if (scenario.Discrete.Any(f => f.Circuit.Any(c => c.Component == rule.Contact))) return 1;
        var mode = library.Full(scenario.Candidate);
        var (shift, covariance) = Conditioned(scenario);
        Quantity[] quantities = [.. rule.Quantities(file.Plan.Now)];
        var by = new (double Mean, double[] Row)[quantities.Length];
        Span<double> values = stackalloc double[quantities.Length];
        Span<double> slopes = stackalloc double[quantities.Length];
        for (var q = 0; q < by.Length; q++)
        {
            by[q] = Row(mode, quantities[q], asRead: false);
            if (!double.IsFinite(by[q].Mean)) return 1;
            values[q] = by[q].Mean + Cholesky.Dot(by[q].Row, shift);
        }
        var z = rule.Deviate(values, slopes);
        var row = new double[by[0].Row.Length];
        for (var k = 0; k < row.Length; k++)
            for (var q = 0; q < by.Length; q++) row[k] += slopes[q] * by[q].Row[k];
        return Normal.Below(z / Math.Sqrt(1 + Spread(covariance, row)));
    }

    private (double Mean, double[] Row) Row(Mode mode, Quantity quantity, bool asRead)
    {
        if (_rows.TryGetValue((mode, quantity, asRead), out var known)) return known;
        var row = new double[mode.Mean.Length];
        var mean = quantity.Observable is { } observable && !Known(mode, observable)
            ? double.NaN
            : asRead ? mode.Problem.Read(mode.Mean, quantity.Epoch, quantity.Observable!, row) : mode.Problem.Value(mode.Mean, quantity, row);
        _rows.Add((mode, quantity, asRead), (mean, row));
        return (mean, row);
    }

    private bool Known(Mode mode, Observable observable) =>
        file.Stove.Pattern.Levels.ContainsKey(observable.Condition.Fire)
        && mode.Problem.State(mode.Mean, file.Plan.Now, observable.Condition).Knows(observable.Measure, observable.Place);

    private (double[] Shift, double[] Covariance) Conditioned(Scenario scenario)
    {
        if (_conditioned.TryGetValue((scenario.Candidate, scenario.Fouled), out var known)) return known;
        known = Condition(scenario);
        _conditioned.Add((scenario.Candidate, scenario.Fouled), known);
        return known;
    }

    private (double[] Shift, double[] Covariance) Condition(Scenario scenario)
    {
        var mode = library.Full(scenario.Candidate);
        var states = scenario.Candidate.States;
        var n = mode.Mean.Length;
        var m = file.Fouling.Count;
        var covariance = (double[])mode.Covariance.Clone();
        var shift = new double[n];
        if (m == 0) return (shift, covariance);
        var spread = new double[m][];
        var inner = new double[m * m];
        var delta = new double[m];
        var variance = new double[m];
        for (var f = 0; f < m; f++)
        {
            var seen = new double[n];
            states.Seen(states.Bit(f, file.Plan.Now)).CopyTo(seen, 0);
            spread[f] = mode.Times(seen);
            for (var g = 0; g <= f; g++)
                inner[f * m + g] = inner[g * m + f] = Cholesky.Dot(states.Seen(states.Bit(g, file.Plan.Now)), spread[f]);
            inner[f * m + f] *= 1 + 1e-9;
            var value = Cholesky.Dot(seen, mode.Mean);
            var (mean, var) = Given(mode, seen, value, inner[f * m + f], file.Fouling[f].Fouling!.Limit, (scenario.Fouled >> f & 1) != 0);
            (delta[f], variance[f]) = (mean - value, var);
        }
        if (Cholesky.Factor(inner, m) is not { } factor) return (shift, covariance);
        var inverse = factor.Inverse();
        for (var f = 0; f < m; f++)
        {
            var q = new double[n];
            for (var g = 0; g < m; g++)
                for (var k = 0; k < n; k++) q[k] += inverse[f * m + g] * spread[g][k];
            for (var i = 0; i < n; i++)
            {
                shift[i] += q[i] * delta[f];
                for (var j = 0; j < n; j++) covariance[i * n + j] += q[i] * (variance[f] * q[j] - spread[f][j]);
            }
        }
        return (shift, covariance);
    }

    private static (double Mean, double Variance) Given(Mode mode, double[] seen, double value, double variance, double limit, bool past)
    {
        var only = Array.FindIndex(seen, s => s != 0);
        if (only >= 0 && Array.FindLastIndex(seen, s => s != 0) == only && mode.Skews[only] is { } skew)
        {
            var (mean, var) = skew.Given(-limit, past);
            return (-mean, var);
        }
        return Skew.Between(value, variance, past ? double.NegativeInfinity : limit, past ? limit : double.PositiveInfinity);
    }

    private static double Spread(double[] covariance, double[] row) => Math.Max(Quadratic(covariance, row, row), 0);

    private static double Quadratic(double[] covariance, double[] a, double[] b)
    {
        var n = a.Length;
        var sum = 0.0;
        for (var k = 0; k < n; k++)
            if (a[k] != 0) sum += a[k] * Cholesky.Dot(covariance.AsSpan(k * n, n), b);
        return sum;
    }

    private int IndexOf(Fault fault)
    {
        for (var i = 0; i < file.Faults.Count; i++)
            if (ReferenceEquals(file.Faults[i], fault)) return i;
        return -1;
    }
}
