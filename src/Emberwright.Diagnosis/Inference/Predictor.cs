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
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>Predicts readings and signs under the scenarios of a posterior.</summary>
internal sealed class Predictor(CaseFile file, ModeLibrary library)
{
    private readonly Dictionary<(Candidate, ulong), (double[] Shift, double[] Covariance)> _conditioned = [];
    private readonly Dictionary<(Mode, Quantity, bool), (double Mean, double[] Row)> _rows = [];
    private readonly ElectricalReadings? _circuit = WiringLibrary.All.FirstOrDefault(w => w.Pattern == file.Stove.Pattern.Id) is { } wiring
        ? new ElectricalReadings(wiring, Meter.Ordinary)
        : null;

    /// <summary>What a number read now would be.</summary>
    public IReadOnlyList<Predicted> Predict(Scenario scenario, Observable observable)
    {
        if (_circuit is not null && _circuit.Knows(observable.Measure, observable.Place)) return Electrical(scenario, observable);
        return Follow(scenario, observable) is { } line
            ? [new Predicted(1, line.Mean, Math.Sqrt(line.Own + line.Shared + Spread(Conditioned(scenario).Covariance, line.Row)))]
            : [];
    }

    /// <summary>
    /// What several numbers read now would be together: they share the stove's unknowns, the gauge's offset and what the
    /// model is off by at a place.
    /// </summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="observables">What would be read; none of it electrical.</param>
    /// <param name="mean">Receives the means.</param>
    /// <param name="covariance">Receives the covariance, row by row.</param>
    /// <returns>False when one of them cannot be predicted.</returns>
    public bool Predict(Scenario scenario, IReadOnlyList<Observable> observables, Span<double> mean, Span<double> covariance)
    {
        var n = observables.Count;
        var lines = new Line[n];
        for (var i = 0; i < n; i++)
        {
            if (_circuit is not null && _circuit.Knows(observables[i].Measure, observables[i].Place) || Follow(scenario, observables[i]) is not { } line) return false;
            lines[i] = line;
            mean[i] = line.Mean;
        }
        var unknowns = Conditioned(scenario).Covariance;
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var common = observables[i].Measure == observables[j].Measure
                    ? (observables[i].Measure == Measure.Pressure ? Noise.GaugeOffsetPa * Noise.GaugeOffsetPa : 0)
                        + (observables[i].Place == observables[j].Place ? Offset(scenario, observables[i]) : 0)
                    : 0;
                var value = Spread(unknowns, lines[i].Row, lines[j].Row) + (i == j ? lines[i].Own + lines[i].Shared : Math.Min(common, Math.Min(lines[i].Shared, lines[j].Shared)));
                covariance[i * n + j] = covariance[j * n + i] = value;
            }
        }
        return true;
    }

    private static double Offset(Scenario scenario, Observable observable) =>
        scenario.Candidate.Mode.Problem.Layout.IndexOf(UnknownKind.Offset, null, 0, observable.Measure, observable.Place) < 0
            ? PriorTable.OffsetSd(observable.Measure) * PriorTable.OffsetSd(observable.Measure)
            : 0;

    /// <summary>A predicted number: its mean, its dependence on the unknowns, and the variance that they do not explain.</summary>
    private readonly record struct Line(double Mean, double[] Row, double Own, double Shared);

    private Line? Follow(Scenario scenario, Observable observable)
    {
        var mode = scenario.Candidate.Mode;
        var (mean, row) = Row(mode, Quantity.Of(file.Plan.Now, observable), asRead: true);
        if (!double.IsFinite(mean)) return null;
        var plain = observable.Measure == Measure.CarbonMonoxide ? Math.Exp(mean) : mean;
        var own = Noise.Own(observable, plain);
        var off = Noise.Model(observable, plain);
        var shared = Offset(scenario, observable);
        if (observable.Measure == Measure.Pressure) shared += Noise.GaugeOffsetPa * Noise.GaugeOffsetPa;
        var variance = own * own + off * off + shared;

        var readings = mode.Problem.Readings;
        var n = readings.Count;
        var rho = new double[n];
        for (var i = 0; i < n; i++)
        {
            var before = readings.Items[i];
            if (before.Observable == observable) rho[i] += off * Noise.Model(observable, before.Value);
            if (before.Observable.Measure == Measure.Pressure && observable.Measure == Measure.Pressure) rho[i] += Noise.GaugeOffsetPa * Noise.GaugeOffsetPa;
        }
        var follow = (double[])row.Clone();
        for (var i = 0; i < n; i++)
        {
            mean += rho[i] * mode.Pull(i);
            var weight = Cholesky.Dot(readings.Precision.AsSpan(i * n, n), rho);
            variance -= weight * rho[i];
            for (var k = 0; k < follow.Length; k++) follow[k] -= weight * mode.At.Jacobian[i * follow.Length + k];
        }
        mean += Cholesky.Dot(follow, Conditioned(scenario).Shift);
        variance = Math.Max(variance, 0.5 * own * own);
        shared = Math.Min(shared, 0.9 * variance);
        return new Line(mean, follow, variance - shared, shared);
    }

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
        var present = new List<int>();
        foreach (var fault in scenario.Discrete) present.Add(IndexOf(fault));
        for (var f = 0; f < file.Fouling.Count; f++)
            if ((scenario.Fouled >> f & 1) != 0) present.Add(file.FirstFouling + f);
        return table.Probability(outcome, present.ToArray(), scenario.IsUnlisted);
    }

    private List<Predicted> Electrical(Scenario scenario, Observable observable)
    {
        CircuitChange[] changes = [.. scenario.Discrete.SelectMany(f => f.Circuit).Where(c => _circuit!.Wiring.HasComponent(c.Component)).DistinctBy(c => c.Component)];
        var closed = _circuit!.Predict(observable, [], changes);
        var hasSwitch = _circuit.Wiring.HasComponent(ComponentIds.VacuumSwitch);
        var open = hasSwitch ? _circuit.Predict(observable, [ComponentIds.VacuumSwitch], changes) : closed;
        var share = Math.Abs(closed - open) < 1e-6 || closed == open ? 1 : Closed(scenario, observable.Condition);
        var mixture = new List<Predicted>(2);
        if (share > 1e-4) mixture.Add(Meter1(observable, closed, share));
        if (share < 1 - 1e-4) mixture.Add(Meter1(observable, open, 1 - share));
        return mixture;
    }

    private double Closed(Scenario scenario, Condition condition)
    {
        var margin = new SwitchMargin(file.Plan.Now, condition, file.Stove.Card?.SwitchClosesPa ?? file.Stove.Pattern.Switch.ClosesPa, 0, -700);
        var mode = library.Full(scenario.Candidate);
        var (shift, covariance) = Conditioned(scenario);
        Span<double> values = stackalloc double[2];
        Span<double> slopes = stackalloc double[2];
        var (pressure, byPressure) = Row(mode, margin.Quantities[0], asRead: false);
        var (threshold, byThreshold) = Row(mode, margin.Quantities[1], asRead: false);
        if (!double.IsFinite(pressure)) return 1;
        values[0] = pressure + Cholesky.Dot(byPressure, shift);
        values[1] = threshold + Cholesky.Dot(byThreshold, shift);
        var z = margin.Deviate(values, slopes);
        var row = new double[byPressure.Length];
        for (var k = 0; k < row.Length; k++) row[k] = slopes[0] * byPressure[k] + slopes[1] * byThreshold[k];
        return Normal.Below(z / Math.Sqrt(1 + Spread(covariance, row)));
    }

    private static Predicted Meter1(Observable observable, double value, double weight) => observable.Measure == Measure.Resistance
        ? new Predicted(weight, Math.Log(double.IsFinite(value) ? Math.Max(value, 0.05) : 1e8), 0.12)
        : new Predicted(weight, value, Math.Sqrt(Math.Pow(Noise.Own(observable, value), 2) + Math.Pow(Noise.Model(observable, value), 2)));

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

    private static double Spread(double[] covariance, double[] row) => Math.Max(Spread(covariance, row, row), 0);

    private static double Spread(double[] covariance, double[] a, double[] b)
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
