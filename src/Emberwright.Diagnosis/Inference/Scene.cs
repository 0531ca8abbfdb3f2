using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>
/// What a set of readings gives, whatever else is known beside them: the unknowns with their prior, the states solved so far, and
/// every fit so far under what it was fitted to and from.
/// </summary>
internal sealed class Scene(IStoveModel model, Layout layout, Prior prior, ReadingSet readings)
{
    private const int MostSolves = 20_000;

    private readonly Dictionary<(string, Mode?), Mode?> _fits = [];
    private readonly Dictionary<Mode, FoulingStates> _states = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<Mode, double> _shares = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<(Mode, string), Border> _borders = [];
    private readonly Dictionary<Bound, int> _margins = new(ReferenceEqualityComparer.Instance);

    /// <summary>States solved so far.</summary>
    public SolveCache Cache { get; } = new(model);

    /// <summary>The unknowns without faults.</summary>
    public Layout Layout => layout;

    /// <summary>Their prior.</summary>
    public Prior Prior => prior;

    /// <summary>The readings.</summary>
    public ReadingSet Readings => readings;

    /// <summary>True when so much has been worked out that it should begin anew.</summary>
    public bool IsFull => Cache.Solves > MostSolves;

    /// <summary>A fit, made once for what it is fitted to and where it starts.</summary>
    public Mode? Fit(string to, Mode? from, Func<Mode?> fit)
    {
        if (_fits.TryGetValue((to, from), out var mode)) return mode;
        mode = fit();
        _fits.Add((to, from), mode);
        return mode;
    }

    /// <summary>Joint fouling under a fit.</summary>
    public FoulingStates States(Mode mode, IReadOnlyList<Fault> fouling)
    {
        if (_states.TryGetValue(mode, out var states)) return states;
        states = FoulingStates.Of(mode, fouling);
        _states.Add(mode, states);
        return states;
    }

    /// <summary>How seldom readings that a fit explains misfit it as these do.</summary>
    public double MisfitShare(Mode mode)
    {
        if (_shares.TryGetValue(mode, out var share)) return share;
        share = MisfitAlarm.Share(mode);
        _shares.Add(mode, share);
        return share;
    }

    /// <summary>What adding shifts to a fit would do.</summary>
    public Border Border(Mode mode, string key, IReadOnlyList<FaultShift> shifts)
    {
        if (_borders.TryGetValue((mode, key), out var border)) return border;
        border = Inference.Border.Of(mode, shifts);
        _borders.Add((mode, key), border);
        return border;
    }

    /// <summary>A number for a margin that joins fits; the same for the same margin.</summary>
    public int Number(Bound margin)
    {
        if (_margins.TryGetValue(margin, out var number)) return number;
        _margins.Add(margin, _margins.Count);
        return _margins.Count - 1;
    }
}
