using Emberwright.Stove;

namespace Emberwright.Diagnosis.Inference;

/// <summary>
/// The readings of a visit that the virtual stove predicts, in an order that does not depend on the order they came in,
/// with their covariance R.
/// </summary>
internal sealed class ReadingSet
{
    private readonly double[] _covariance;

    internal ReadingSet(ReadingEvidence[] items, double[] covariance)
    {
        Items = items;
        _covariance = covariance;
        Values = [.. items.Select(i => Noise.Compared(i.Observable.Measure, i.Value))];
        var factor = Cholesky.Factor(covariance, items.Length)
            ?? throw new InvalidOperationException("The covariance of the readings is not positive definite.");
        Precision = factor.Inverse();
        LnDeterminant = factor.LnDeterminant;
    }

    /// <summary>The readings.</summary>
    public ReadingEvidence[] Items { get; }

    /// <summary>Number of readings.</summary>
    public int Count => Items.Length;

    /// <summary>The values compared (CO as ln ppm).</summary>
    public double[] Values { get; }

    /// <summary>R⁻¹, row major.</summary>
    public double[] Precision { get; }

    /// <summary>ln|R|.</summary>
    public double LnDeterminant { get; }

    /// <summary>Covariance of two readings.</summary>
    public double Covariance(int i, int j) => _covariance[i * Count + j];

    /// <summary>Sorts the readings and sets up their covariance.</summary>
    public static ReadingSet Of(IEnumerable<ReadingEvidence> readings)
    {
        var items = readings
            .OrderBy(r => r.Epoch)
            .ThenBy(r => r.Observable.Measure)
            .ThenBy(r => r.Observable.Place, StringComparer.Ordinal)
            .ThenBy(r => r.Observable.Condition.Fire)
            .ThenBy(r => r.Observable.Condition.Blower)
            .ThenBy(r => r.Observable.Condition.Opening)
            .ThenBy(r => r.Value)
            .ThenBy(r => r.Id, StringComparer.Ordinal)
            .ToArray();
        var n = items.Length;
        var r = new double[n * n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var (a, b) = (items[i], items[j]);
                var sum = 0.0;
                if (i == j) sum += Square(Noise.Own(a.Observable, a.Value));
                if (a.Observable == b.Observable) sum += Noise.Model(a.Observable, a.Value) * Noise.Model(b.Observable, b.Value);
                if (a.Observable.Measure == Measure.Pressure && b.Observable.Measure == Measure.Pressure) sum += Square(Noise.GaugeOffsetPa);
                r[i * n + j] = r[j * n + i] = sum;
            }
        }
        return new ReadingSet(items, r);
    }

    /// <summary>The same readings with further independent scatter on each.</summary>
    /// <param name="sd">Additional standard deviation of each reading.</param>
    public ReadingSet Widened(Func<int, double> sd)
    {
        var r = (double[])_covariance.Clone();
        for (var i = 0; i < Count; i++) r[i * Count + i] += Square(sd(i));
        return new ReadingSet(Items, r);
    }

    private static double Square(double x) => x * x;
}
