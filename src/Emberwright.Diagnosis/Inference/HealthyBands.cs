// Question:    what should each port and measure read on this stove today if it were healthy and just serviced?
// Equations:   y ≈ h(c₀) + J(c − c₀) + e; mean h(c₀), variance JΛJᵀ + R_ii, third cumulant Σ 2(J_x·τ)³ from the exponential
//              restrictions; quantiles by Cornish & Fisher: mean + sd·(z + γ(z² − 1)/6).
// Symbols:     as in Problem; γ skewness; z normal quantile.
// Validity:    restrictions small (τ about 0.07), where the predictions are nearly linear.
// Assumptions: a healthy stove is one without faults whose restrictions are those of a stove just serviced.
// Source:      Cornish & Fisher, Rev. Inst. Int. Stat. 5 (1938) 307. From memory.
// Worked:      exponential alone, τ = 1: 95 % quantile 1 + (1.645 + 2·1.706/6) = 3.21; exact 2.996.
using Emberwright.Stove;

namespace Emberwright.Diagnosis.Inference;

/// <summary>Healthy bands of a stove today.</summary>
internal sealed class HealthyBands
{
    private const double Confidence = 0.9;
    private const double Quantile = 1.6448536;

    private readonly Problem _problem;
    private readonly string _origin;
    private readonly Dictionary<Observable, Band?> _bands = [];

    /// <summary>Prepares the bands.</summary>
    /// <param name="problem">The healthy stove, serviced, with its prior and no evidence.</param>
    /// <param name="origin">Where its baseline comes from.</param>
    public HealthyBands(Problem problem, string origin)
    {
        _problem = problem;
        _origin = origin;
    }

    /// <summary>Conditions that bands are given for, as far as the pattern has them.</summary>
    public static IReadOnlyList<Condition> Conditions { get; } =
        [Condition.FanOnly, Condition.BlowerOff, Condition.DoorOpen, Condition.IntakeStopped, Condition.HighBurn, Condition.LowBurn];

    /// <summary>The band of one observable, or null when it cannot be predicted.</summary>
    public Band? Of(Observable observable)
    {
        if (_bands.TryGetValue(observable, out var band)) return band;
        band = Compute(observable);
        _bands.Add(observable, band);
        return band;
    }

    /// <summary>Everything that is usually read on a stove of this pattern.</summary>
    public static IEnumerable<Observable> Usual(StoveCase stove)
    {
        foreach (var condition in Conditions)
        {
            if (!stove.Pattern.Levels.ContainsKey(condition.Fire)) continue;
            foreach (var port in stove.Pattern.Ports) yield return new Observable(Measure.Pressure, port.Id, condition);
            if (condition.Fire == FireState.Cold) continue;
            yield return new Observable(Measure.Temperature, Places.Collar, condition);
            yield return new Observable(Measure.Oxygen, Places.Flue, condition);
            yield return new Observable(Measure.CarbonDioxide, Places.Flue, condition);
            yield return new Observable(Measure.CarbonMonoxide, Places.Flue, condition);
            yield return new Observable(Measure.Temperature, Places.WarmAir, condition);
        }
    }

    private Band? Compute(Observable observable)
    {
        var layout = _problem.Layout;
        var n = layout.Count;
        var state = _problem.State(_problem.Prior.Mean, 0, observable.Condition);
        if (!state.Knows(observable.Measure, observable.Place)) return null;
        var row = new double[n];
        var mean = _problem.Read(_problem.Prior.Mean, 0, observable, row);
        if (!double.IsFinite(mean)) return null;
        var plain = observable.Measure == Measure.CarbonMonoxide ? Math.Exp(mean) : mean;
        var variance = Square(Noise.Own(observable, plain)) + Square(Noise.Model(observable, plain));
        if (observable.Measure == Measure.Pressure) variance += Square(Noise.GaugeOffsetPa);
        if (layout.IndexOf(UnknownKind.Offset, null, 0, observable.Measure, observable.Place) < 0)
            variance += Square(PriorTable.OffsetSd(observable.Measure));
        var third = 0.0;
        for (var k = 0; k < n; k++)
        {
            variance += row[k] * Cholesky.Dot(_problem.Prior.Covariance.AsSpan(k * n, n), row);
            if (layout.Unknowns[k].IsExponential) third += 2 * Math.Pow(row[k] * layout.Unknowns[k].Sd, 3);
        }
        var sd = Math.Sqrt(variance);
        var skew = third / (variance * sd);
        double At(double z) => mean + sd * (z + skew * (z * z - 1) / 6);
        var (low, expected, high) = (At(-Quantile), At(0), At(Quantile));
        return observable.Measure == Measure.CarbonMonoxide
            ? new Band(observable, Math.Exp(low), Math.Exp(expected), Math.Exp(high), Confidence, _origin)
            : new Band(observable, low, expected, high, Confidence, _origin);
    }

    /// <summary>How a reading stands to its band.</summary>
    public static Verdict Judge(double reading, Band band)
    {
        if (reading >= band.Low && reading <= band.High) return Verdict.In;
        var below = reading < band.Low;
        if (band.Observable.Measure != Measure.Pressure) return below ? Verdict.Low : Verdict.High;
        return below == band.Expected < 0 ? Verdict.TooStrong : Verdict.TooWeak;
    }

    private static double Square(double x) => x * x;
}
