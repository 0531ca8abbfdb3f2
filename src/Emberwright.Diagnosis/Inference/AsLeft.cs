namespace Emberwright.Diagnosis.Inference;

/// <summary>
/// What an earlier visit's readings as left say about the appliance itself: the joint posterior of its persistent
/// unknowns, widened by what a year of use adds. It is not a set of readings.
/// </summary>
internal sealed class AsLeft
{
    private readonly Unknown[] _unknowns;
    private readonly double[] _covariance;

    /// <summary>Takes the persistent unknowns out of a posterior.</summary>
    /// <param name="layout">Layout of the fit as left.</param>
    /// <param name="mean">Its posterior mean.</param>
    /// <param name="covariance">Its posterior covariance, row major.</param>
    public AsLeft(Layout layout, double[] mean, double[] covariance)
    {
        var kept = Enumerable.Range(0, layout.Count).Where(k => layout.Unknowns[k].Persists).ToArray();
        _unknowns = [.. kept.Select(k => layout.Unknowns[k])];
        Mean = [.. kept.Select(k => mean[k])];
        var n = kept.Length;
        _covariance = new double[n * n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++) _covariance[i * n + j] = covariance[kept[i] * layout.Count + kept[j]];
            var growth = PriorTable.GrowthSd(_unknowns[i]);
            _covariance[i * n + i] += growth * growth;
        }
    }

    /// <summary>Posterior means.</summary>
    public double[] Mean { get; }

    /// <summary>Measures and places with an offset of their own.</summary>
    public IEnumerable<(Stove.Measure, string)> Offsets =>
        _unknowns.Where(u => u.Kind == UnknownKind.Offset).Select(u => (u.Measure!.Value, u.Place!));

    /// <summary>Covariance of two of the unknowns.</summary>
    public double Covariance(int a, int b) => _covariance[a * Mean.Length + b];

    /// <summary>Index of this unknown, or −1 when the earlier visit said nothing about it.</summary>
    public int IndexOf(Unknown unknown) => Array.FindIndex(_unknowns, u => u.Matches(unknown));
}
