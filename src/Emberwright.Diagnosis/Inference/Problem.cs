// Question:    how well do given values of the unknowns explain the evidence, and which way is better?
// Equations:   Φ(c) = ½(c − c₀)ᵀΛ⁻¹(c − c₀) + ½rᵀR⁻¹r − Σ ln P(margins | z(c)),  r = y − h(c);
//              ∂Φ = Λ⁻¹(c − c₀) − JᵀR⁻¹r − Gᵀ∂lnP,  H = Λ⁻¹ + JᵀR⁻¹J + Gᵀ·diag(k)·G.
//              A pressure is read as (1 + s)·p + o, a temperature or a gas share as its value + o, CO as ln ppm.
// Symbols:     c unknowns; c₀, Λ prior; y readings, h predictions, R their covariance; J = ∂h/∂c; z margins' deviates,
//              G = ∂z/∂c, k their curvatures; s gauge scale, o offset of the place.
// Validity:    wherever the virtual stove can be solved; elsewhere the point is marked unsolved and its misfit is +∞.
// Assumptions: restrictions' exponential priors stand in as N(τ, τ²) and are put right by Skew.
// Source:      Tarantola, Inverse Problem Theory, 3.2; Bishop, Pattern Recognition and Machine Learning, 4.4. From memory.
// Worked:      one unknown N(0,1) read directly as 1 ± 1: Φ(½) = 0.25, its least value (by hand).
using Emberwright.Stove;

namespace Emberwright.Diagnosis.Inference;

/// <summary>The evidence of one visit under one hypothesis, as a function of the unknowns.</summary>
internal sealed class Problem
{
    private static readonly Parameter[] Sensed =
        [Parameter.SensedPressure, Parameter.SwitchThreshold, Parameter.SensorZero, Parameter.ProofSensor];

    private readonly SolveCache _cache;

    /// <summary>Sets up the problem.</summary>
    public Problem(SolveCache cache, Layout layout, Prior prior, ReadingSet readings, IReadOnlyList<IMargin> margins)
    {
        _cache = cache;
        Layout = layout;
        Prior = prior;
        Readings = readings;
        Margins = margins;
    }

    /// <summary>The same problem with another prior.</summary>
    public Problem(Problem problem, Prior prior)
        : this(problem._cache, problem.Layout, prior, problem.Readings, problem.Margins)
    {
    }

    /// <summary>The unknowns.</summary>
    public Layout Layout { get; }

    /// <summary>Their prior.</summary>
    public Prior Prior { get; }

    /// <summary>The readings.</summary>
    public ReadingSet Readings { get; }

    /// <summary>Evidence that is not a number but depends smoothly on the model.</summary>
    public IReadOnlyList<IMargin> Margins { get; }

    /// <summary>Evaluates Φ, its gradient and curvature.</summary>
    public Linearisation At(double[] point)
    {
        var n = Layout.Count;
        var count = Readings.Count;
        var residual = new double[count];
        var jacobian = new double[count * n];
        var solved = true;
        for (var i = 0; i < count; i++)
        {
            var reading = Readings.Items[i];
            var row = jacobian.AsSpan(i * n, n);
            var predicted = Read(point, reading.Epoch, reading.Observable, row);
            residual[i] = Readings.Values[i] - predicted;
            solved &= double.IsFinite(predicted);
        }

        var misfit = 0.0;
        var gradient = new double[n];
        var curvature = (double[])Prior.Precision.Clone();
        AddPrior(point, ref misfit, gradient);
        AddReadings(residual, jacobian, ref misfit, gradient, curvature);
        var (deviates, rows) = AddMargins(point, ref misfit, gradient, curvature, ref solved);
        return new Linearisation
        {
            Point = point,
            Misfit = solved && double.IsFinite(misfit) ? misfit : double.PositiveInfinity,
            Gradient = gradient,
            Curvature = curvature,
            Residual = residual,
            Jacobian = jacobian,
            Deviates = deviates,
            MarginJacobian = rows,
            Solved = solved,
        };
    }

    /// <summary>What the instrument would show (CO as ln ppm), and its gradient over the unknowns.</summary>
    public double Read(double[] point, int epoch, Observable observable, Span<double> row)
    {
        var value = Value(point, Quantity.Of(epoch, observable), row);
        switch (observable.Measure)
        {
            case Measure.Pressure:
                var scale = Layout.GaugeScale;
                var factor = 1 + point[scale];
                foreach (ref var slope in row) slope *= factor;
                row[scale] += value;
                value *= factor;
                break;
            case Measure.CarbonMonoxide:
                var ppm = Math.Max(value, 1);
                foreach (ref var slope in row) slope /= ppm;
                value = Math.Log(ppm);
                break;
            case Measure.Temperature or Measure.Oxygen or Measure.CarbonDioxide or Measure.Voltage or Measure.Resistance
                or Measure.Current or Measure.Speed or Measure.Feed or Measure.Duration or Measure.Flow or Measure.Capacitance:
                break;
        }
        var offset = Layout.OffsetOf(observable.Measure, observable.Place);
        if (offset < 0) return value;
        row[offset] += 1;
        return value + point[offset];
    }

    /// <summary>A quantity's true value, and its gradient over the unknowns.</summary>
    public double Value(double[] point, Quantity quantity, Span<double> row)
    {
        row.Clear();
        if (quantity.Parameter is { } parameter)
        {
            var sum = 0.0;
            Layout.Seen(parameter, quantity.Epoch, row);
            for (var k = 0; k < row.Length; k++) sum += row[k] * point[k];
            return sum;
        }
        var observable = quantity.Observable!;
        Span<double> gradient = stackalloc double[Layout.Parameters];
        gradient.Clear();
        var state = State(point, quantity.Epoch, observable.Condition);
        state.Sensitivity(observable.Measure, observable.Place, gradient);
        var value = state.Value(observable.Measure, observable.Place);
        if (observable is { Measure: Measure.Pressure, Place: Places.SwitchHose })
        {
            // What reaches the switch: the port's pressure times the share its hose passes on.
            var reaches = Math.Exp(Math.Min(Sum(point, Parameter.SensedPressure, quantity.Epoch), 0.5));
            foreach (ref var slope in gradient) slope *= reaches;
            value *= reaches;
            gradient[(int)Parameter.SensedPressure] += value;
        }
        Layout.Chain(gradient, quantity.Epoch, row);
        return value;
    }

    /// <summary>The stove's state in an epoch and condition.</summary>
    public StoveState State(double[] point, int epoch, Condition condition)
    {
        Span<double> parameters = stackalloc double[Layout.Parameters];
        Layout.Fill(point, epoch, parameters);
        // These act on what is sensed, not on the stove; without them states are shared more often.
        foreach (var sensed in Sensed) parameters[(int)sensed] = 0;
        return _cache.Solve(parameters, condition);
    }

    private double Sum(double[] point, Parameter parameter, int epoch)
    {
        var sum = 0.0;
        foreach (var share in Layout.Shares(parameter, epoch)) sum += share.Factor * point[share.Unknown];
        return sum;
    }

    private void AddPrior(double[] point, ref double misfit, double[] gradient)
    {
        var n = point.Length;
        Span<double> away = stackalloc double[n];
        for (var k = 0; k < n; k++) away[k] = point[k] - Prior.Mean[k];
        for (var k = 0; k < n; k++)
        {
            gradient[k] = Cholesky.Dot(Prior.Precision.AsSpan(k * n, n), away);
            misfit += 0.5 * away[k] * gradient[k];
        }
    }

    private void AddReadings(double[] residual, double[] jacobian, ref double misfit, double[] gradient, double[] curvature)
    {
        var n = gradient.Length;
        var count = residual.Length;
        Span<double> weighted = stackalloc double[n];
        for (var i = 0; i < count; i++)
        {
            var precision = Readings.Precision.AsSpan(i * count, count);
            var pull = Cholesky.Dot(precision, residual);
            misfit += 0.5 * residual[i] * pull;
            weighted.Clear();
            for (var j = 0; j < count; j++) Cholesky.AddScaled(weighted, precision[j], jacobian.AsSpan(j * n, n));
            var row = jacobian.AsSpan(i * n, n);
            Cholesky.AddScaled(gradient, -pull, row);
            for (var k = 0; k < n; k++) Cholesky.AddScaled(curvature.AsSpan(k * n, n), row[k], weighted);
        }
    }

    private (double[] Deviates, double[] Rows) AddMargins(double[] point, ref double misfit, double[] gradient, double[] curvature, ref bool solved)
    {
        var n = point.Length;
        var deviates = new double[Margins.Count];
        var rows = new double[Margins.Count * n];
        Span<double> values = stackalloc double[4];
        Span<double> slopes = stackalloc double[4];
        var each = new double[4 * n];
        for (var m = 0; m < Margins.Count; m++)
        {
            var margin = Margins[m];
            var size = margin.Quantities.Count;
            for (var q = 0; q < size; q++)
            {
                values[q] = Value(point, margin.Quantities[q], each.AsSpan(q * n, n));
                solved &= double.IsFinite(values[q]);
            }
            deviates[m] = margin.Deviate(values[..size], slopes);
            var row = rows.AsSpan(m * n, n);
            for (var q = 0; q < size; q++) Cholesky.AddScaled(row, slopes[q], each.AsSpan(q * n, n));

            var at = margin.At(deviates[m]);
            misfit -= at.LnProbability;
            Cholesky.AddScaled(gradient, -at.Slope, row);
            if (at.Curvature == 0) continue;
            for (var k = 0; k < n; k++)
                if (row[k] != 0) Cholesky.AddScaled(curvature.AsSpan(k * n, n), at.Curvature * row[k], row);
        }
        return (deviates, rows);
    }
}
