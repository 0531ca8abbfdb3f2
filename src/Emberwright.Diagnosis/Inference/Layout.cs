// Question:    which unknowns does a visit have, and what are the stove's parameters in each of its epochs?
// Equations:   p(e) = A_e·c: ln G = b − x_e − Σ shifts, ln UA = a − κ·x_exchanger,e, any other p = its unknown + Σ shifts.
// Symbols:     c unknowns, p parameters of the virtual stove, e epoch (number of actions done before), A_e a sparse matrix.
// Validity:    any number of epochs.
// Assumptions: an action redraws only what it names; everything else stays as it was.
// Source:      from memory; the epochs of a repair are those of Breese & Heckerman, "Decision-theoretic troubleshooting" (1996).
// Worked:      by hand in the tests: b = 0.1, x = 0.3 → ln G = −0.2.
using Emberwright.Stove;

namespace Emberwright.Diagnosis.Inference;

/// <summary>The unknowns of one visit and how they make up the stove's parameters in each epoch.</summary>
internal sealed class Layout
{
    /// <summary>Number of parameters of the virtual stove.</summary>
    public static readonly int Parameters = Enum.GetValues<Parameter>().Length;

    private readonly Contribution[][] _epochs;
    private readonly Dictionary<(Measure, string), int> _offsets = [];

    internal Layout(IReadOnlyList<Unknown> unknowns, Contribution[][] epochs)
    {
        Unknowns = unknowns;
        _epochs = epochs;
        GaugeScale = IndexOf(UnknownKind.GaugeScale, null);
        for (var k = 0; k < unknowns.Count; k++)
            if (unknowns[k] is { Kind: UnknownKind.Offset, Measure: { } measure, Place: { } place }) _offsets.Add((measure, place), k);
    }

    /// <summary>Index of the gauge's scale, or −1.</summary>
    public int GaugeScale { get; }

    /// <summary>Index of the offset of a measure at a place, or −1.</summary>
    public int OffsetOf(Measure measure, string place) => _offsets.GetValueOrDefault((measure, place), -1);

    /// <summary>One unknown's share in one parameter.</summary>
    internal readonly record struct Contribution(int Parameter, int Unknown, double Factor);

    /// <summary>All unknowns, in a fixed order.</summary>
    public IReadOnlyList<Unknown> Unknowns { get; }

    /// <summary>Number of unknowns.</summary>
    public int Count => Unknowns.Count;

    /// <summary>Number of epochs.</summary>
    public int Epochs => _epochs.Length;

    /// <summary>Lays out the unknowns of a visit without any fault.</summary>
    /// <param name="stove">The case.</param>
    /// <param name="epochs">What each epoch redraws; the first redraws nothing.</param>
    /// <param name="offsets">Measures and places at which something was read or will be predicted.</param>
    /// <param name="serviced">True for a stove just serviced: small restrictions in every epoch.</param>
    public static Layout Of(StoveCase stove, IReadOnlyList<IReadOnlySet<Parameter>> epochs, IEnumerable<(Measure, string)> offsets, bool serviced)
    {
        var unknowns = new List<Unknown>();
        var shares = epochs.Select(_ => new List<Contribution>()).ToArray();

        void Add(Unknown unknown, int from, int to, params (Parameter Parameter, double Factor)[] into)
        {
            for (var e = from; e < to; e++)
                foreach (var (parameter, factor) in into)
                    shares[e].Add(new Contribution((int)parameter, unknowns.Count, factor));
            unknowns.Add(unknown);
        }

        foreach (var parameter in PriorTable.Fouling)
            if (PriorTable.PatternSd(parameter, stove) is { } sd)
                Add(new Unknown(UnknownKind.Baseline, parameter, 0, 0, sd), 0, epochs.Count, (parameter, 1));
        foreach (var parameter in PriorTable.Fouling)
        {
            if (PriorTable.PatternSd(parameter, stove) is null) continue;
            foreach (var (from, to) in Spans(parameter, epochs))
            {
                var tau = serviced || from > 0 ? PriorTable.Serviced(parameter) : PriorTable.InUse(parameter, stove);
                var unknown = new Unknown(UnknownKind.Restriction, parameter, from, tau, tau);
                if (parameter == Parameter.Exchanger)
                    Add(unknown, from, to, (parameter, -1), (Parameter.Insulation, -PriorTable.InsulationPerRestriction));
                else
                    Add(unknown, from, to, (parameter, -1));
            }
        }
        foreach (var parameter in PriorTable.Free)
        {
            if (PriorTable.PatternSd(parameter, stove) is not { } sd) continue;
            foreach (var (from, to) in Spans(parameter, epochs))
                Add(new Unknown(UnknownKind.Free, parameter, from, PriorTable.Mean(parameter, stove.Site), sd), from, to, (parameter, 1));
        }
        Add(new Unknown(UnknownKind.GaugeScale, null, 0, 0, PriorTable.GaugeScaleSd), 0, 0);
        foreach (var (measure, place) in offsets.Distinct().Where(o => PriorTable.OffsetSd(o.Item1) > 0).OrderBy(o => o.Item1).ThenBy(o => o.Item2, StringComparer.Ordinal))
            Add(new Unknown(UnknownKind.Offset, null, 0, 0, PriorTable.OffsetSd(measure), measure, place), 0, 0);

        return new Layout(unknowns, [.. shares.Select(s => s.ToArray())]);
    }

    /// <summary>The same with shifts of supposed faults appended.</summary>
    /// <param name="shifts">Parameter, mean and standard deviation, and the epoch in which the fault is cured.</param>
    public Layout With(IReadOnlyList<FaultShift> shifts)
    {
        if (shifts.Count == 0) return this;
        var unknowns = new List<Unknown>(Unknowns);
        var shares = _epochs.Select(e => new List<Contribution>(e)).ToArray();
        foreach (var shift in shifts)
        {
            for (var e = 0; e < Math.Min(shift.CuredIn, Epochs); e++)
                shares[e].Add(new Contribution((int)shift.Parameter, unknowns.Count, 1));
            unknowns.Add(new Unknown(UnknownKind.Shift, shift.Parameter, 0, shift.Mean, shift.Sd, Place: shift.Place));
        }
        return new Layout(unknowns, [.. shares.Select(s => s.ToArray())]);
    }

    /// <summary>Parameters of the virtual stove in an epoch.</summary>
    public void Fill(ReadOnlySpan<double> unknowns, int epoch, Span<double> parameters)
    {
        parameters.Clear();
        foreach (var share in _epochs[epoch]) parameters[share.Parameter] += share.Factor * unknowns[share.Unknown];
    }

    /// <summary>Turns a gradient over parameters into one over unknowns, added to <paramref name="row"/>.</summary>
    public void Chain(ReadOnlySpan<double> gradient, int epoch, Span<double> row)
    {
        foreach (var share in _epochs[epoch]) row[share.Unknown] += share.Factor * gradient[share.Parameter];
    }

    /// <summary>Shares that make up one parameter in an epoch.</summary>
    public IEnumerable<Contribution> Shares(Parameter parameter, int epoch) => _epochs[epoch].Where(s => s.Parameter == (int)parameter);

    /// <summary>
    /// How the unknowns make up what is seen of a parameter when looking at it: of a passage, wheel or surface its fouling
    /// alone (neither the clean stove's tolerance nor a nest elsewhere can be seen there), of anything else its value.
    /// </summary>
    public void Seen(Parameter parameter, int epoch, Span<double> row)
    {
        var fouls = parameter == Parameter.Insulation || Array.IndexOf(PriorTable.Fouling, parameter) >= 0;
        foreach (var share in _epochs[epoch])
        {
            if (share.Parameter != (int)parameter) continue;
            if (fouls && Unknowns[share.Unknown].Kind is (UnknownKind.Baseline or UnknownKind.Shift)) continue;
            row[share.Unknown] += share.Factor;
        }
    }

    /// <summary>An unknown that moves a parameter one for one and nothing else in an epoch, or −1.</summary>
    public int Carrier(Parameter parameter, int epoch)
    {
        foreach (var share in _epochs[epoch])
            if (share.Parameter == (int)parameter && Unknowns[share.Unknown].Kind is (UnknownKind.Baseline or UnknownKind.Free)) return share.Unknown;
        return -1;
    }

    /// <summary>Index of the unknown of this kind that holds in an epoch, or −1.</summary>
    public int IndexOf(UnknownKind kind, Parameter? parameter, int epoch = 0, Measure? measure = null, string? place = null)
    {
        var found = -1;
        for (var k = 0; k < Count; k++)
        {
            var u = Unknowns[k];
            if (u.Kind == kind && u.Parameter == parameter && u.Measure == measure && u.Place == place && u.Epoch <= epoch) found = k;
        }
        return found;
    }

    private static IEnumerable<(int From, int To)> Spans(Parameter parameter, IReadOnlyList<IReadOnlySet<Parameter>> epochs)
    {
        var from = 0;
        for (var e = 1; e < epochs.Count; e++)
        {
            if (!epochs[e].Contains(parameter)) continue;
            yield return (from, e);
            from = e;
        }
        yield return (from, epochs.Count);
    }
}

/// <summary>A shift that a supposed fault makes, until it is cured.</summary>
/// <param name="Parameter">Which parameter.</param>
/// <param name="Mean">Mean shift.</param>
/// <param name="Sd">Standard deviation of the shift.</param>
/// <param name="CuredIn">Epoch from which it is gone; int.MaxValue when it is not cured.</param>
/// <param name="Place">Where it sits, when that is not the passage itself: a nest is in the cap, not in the run.</param>
internal readonly record struct FaultShift(Parameter Parameter, double Mean, double Sd, int CuredIn, string? Place = null);
