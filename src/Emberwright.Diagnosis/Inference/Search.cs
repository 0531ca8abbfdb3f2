// Question:    in what order are the hypotheses worked through so that the likely ones come first and none is missed?
// Equations:   nothing, then singles and the unlisted cause from nothing's fit; pairs: those that share a fit are only
//              re-weighted; the others are screened by Border, the promising ones solved once, those within 7 nats fitted
//              from the better single; then threes where Triples says so; last, fits without evidence that looks wrong.
// Symbols:     nat: unit of ln probability.
// Validity:    any number of faults; the work is cut into slices, each at most a few solves.
// Assumptions: a pair that its screen's upper estimate puts 7 nats below the best adds nothing but its linear weight.
// Source:      Occam's window: Madigan & Raftery, JASA 89 (1994) 1535. From memory.
// Worked:      —
namespace Emberwright.Diagnosis.Inference;

/// <summary>Works through all hypotheses of a case, slice by slice.</summary>
internal sealed class Search
{
    private const double Negligible = 12;
    private const double Window = 7;
    private const int MostRefits = 32;
    private const int PairsPerSlice = 24;

    private readonly CaseFile _file;
    private readonly ModeLibrary _library;
    private readonly CandidateBuilder _builder;
    private readonly List<Candidate> _candidates = [];

    /// <summary>Prepares the search.</summary>
    public Search(CaseFile file, ModeLibrary library)
    {
        _file = file;
        _library = library;
        _builder = new CandidateBuilder(file, library);
    }

    /// <summary>Components found so far.</summary>
    public IReadOnlyList<Candidate> Candidates => _candidates;

    /// <summary>What turns hypotheses into components.</summary>
    public CandidateBuilder Builder => _builder;

    /// <summary>Nothing, singles and the unlisted cause; each step is one slice.</summary>
    public IEnumerable<Candidate> Singles(IEnumerable<Hypothesis> hypotheses)
    {
        var nothing = _library.FitNothing();
        foreach (var hypothesis in hypotheses)
        {
            if (hypothesis.Kind == HypothesisKind.Unlisted)
            {
                foreach (var unlisted in Unlisted(hypothesis))
                {
                    _candidates.Add(unlisted);
                    yield return unlisted;
                }
                continue;
            }
            var mode = hypothesis.Kind switch
            {
                HypothesisKind.Nothing or HypothesisKind.Unlisted => nothing,
                HypothesisKind.Single => LeavesFitAlone(hypothesis.Faults) ? nothing : _library.Fit(hypothesis.Faults, nothing),
                HypothesisKind.Pair or HypothesisKind.Triple => null,
            };
            if (mode is null) continue;
            var candidate = _builder.Build(hypothesis, mode);
            _candidates.Add(candidate);
            yield return candidate;
        }
    }

    /// <summary>A cause that is not listed throws readings off by much or by little; nobody knows beforehand.</summary>
    private IEnumerable<Candidate> Unlisted(Hypothesis hypothesis)
    {
        // Where nothing was read its size says nothing.
        var sizes = _file.Readings.Count == 0 ? [1.0] : ModeLibrary.SizesOfUnlisted;
        foreach (var size in sizes)
            if (_library.FitUnlisted(size) is { } mode)
                yield return _builder.Build(hypothesis with { LnPrior = hypothesis.LnPrior - Math.Log(sizes.Length) }, mode);
    }

    /// <summary>Pairs; each step is one slice.</summary>
    public IEnumerable<int> Pairs(IEnumerable<Hypothesis> hypotheses)
    {
        var singles = _candidates.Where(c => c.Hypothesis.Kind == HypothesisKind.Single).ToDictionary(c => c.Hypothesis.Faults[0]);
        var shifts = Enumerable.Range(0, _file.Discrete.Count).Select(f => _library.Shifts([f])).ToArray();
        var best = _candidates.Max(c => c.LnWeight);
        var done = 0;
        var solves = _library.Solves;
        foreach (var hypothesis in hypotheses)
        {
            var (i, j) = (hypothesis.Faults[0], hypothesis.Faults[1]);
            singles.TryGetValue(i, out var a);
            singles.TryGetValue(j, out var b);
            if (a is not null && b is not null && AtMost(hypothesis, a, b, shifts[i].Count > 0 && shifts[j].Count > 0) < best - Negligible)
            {
                if (++done % PairsPerSlice == 0) yield return done;
                continue;
            }
            var bounds = _library.Bounds(hypothesis.Faults);
            var fromA = a is not null && BoundTable.SameMargins(bounds, a.Bounds);
            var fromB = b is not null && BoundTable.SameMargins(bounds, b.Bounds);
            var candidate = fromA && shifts[j].Count == 0 ? _builder.Build(hypothesis, a!.Mode, singles: (a, b))
                : fromB && shifts[i].Count == 0 ? _builder.Build(hypothesis, b!.Mode, singles: (a, b))
                : fromA && (!fromB || a!.LnWeight >= b!.LnWeight) ? Joint(hypothesis, a!, j, (a, b), shifts, best)
                : fromB ? Joint(hypothesis, b!, i, (a, b), shifts, best)
                : _library.Fit(hypothesis.Faults, _library.Nothing) is { } mode ? _builder.Build(hypothesis, mode, singles: (a, b))
                : null;
            if (candidate is not null)
            {
                _candidates.Add(candidate);
                best = Math.Max(best, candidate.LnWeight);
            }
            if (++done % PairsPerSlice != 0 && _library.Solves == solves) continue;
            solves = _library.Solves;
            yield return done;
        }
    }

    /// <summary>Threes, where the pairs leave out more than one part in a hundred; each step is one slice.</summary>
    /// <param name="hypotheses">All hypotheses up to pairs.</param>
    public IEnumerable<int> Triples(IReadOnlyList<Hypothesis> hypotheses)
    {
        var done = 0;
        foreach (var (faults, pair) in Inference.Triples.Worth(_file.Discrete, _candidates))
        {
            if (Hypothesis.Three(_file.Discrete, hypotheses, faults) is not { } hypothesis) continue;
            var third = faults.Except(pair.Hypothesis.Faults).Single();
            var alone = BoundTable.SameMargins(_library.Bounds(faults), pair.Bounds) && _library.Shifts([third]).Count == 0;
            if ((alone ? pair.Mode : _library.Fit(faults, pair.Mode)) is { } mode) _candidates.Add(_builder.Build(hypothesis, mode));
            yield return ++done;
        }
    }

    /// <summary>Fits without evidence that looks wrong; each step is one slice.</summary>
    public IEnumerable<int> Doubts()
    {
        if (_candidates.Count == 0) yield break;
        var best = _candidates.Max(c => c.LnWeight);
        // Under an unlisted cause every reading may be off as it is.
        var order = Enumerable.Range(0, _candidates.Count)
            .Select(k => (Index: k, IsPair: _candidates[k].Hypothesis.Kind is HypothesisKind.Pair or HypothesisKind.Triple, Hoped: CandidateBuilder.LnHoped(_candidates[k])))
            .Where(x => x.Hoped > best - Window && !_candidates[x.Index].IsUnlisted).OrderBy(x => x.IsPair).ThenByDescending(x => x.Hoped).ThenBy(x => x.Index)
            .Select(x => x.Index).ToArray();
        var done = 0;
        foreach (var k in order)
        {
            var candidate = _candidates[k];
            var doubtful = CandidateBuilder.Doubtful(candidate).Take(2).ToHashSet();
            if (doubtful.Count == 0 || done >= MostRefits) continue;
            var replaced = new HashSet<int>();
            foreach (var index in doubtful.Order())
            {
                if (_builder.BuildWithout(candidate, index) is not { } without) continue;
                _candidates.Add(without);
                replaced.Add(index);
                done++;
                yield return done;
            }
            _candidates[k] = _builder.Build(candidate.Hypothesis, candidate.Mode, candidate.LnAdjustment, replaced);
        }
    }

    /// <summary>
    /// More than the weight of any pair that two faults can make together: each piece of evidence as the better of the two
    /// explains it, the readings as the better fit and all that fit leaves unexplained.
    /// </summary>
    private double AtMost(Hypothesis hypothesis, Candidate a, Candidate b, bool together)
    {
        var ln = hypothesis.LnPrior + Math.Max(a.Mode.LnEvidence, b.Mode.LnEvidence) + Math.Max(a.LnDoubt, b.LnDoubt);
        if (together) ln += 0.5 * Math.Min(a.Mode.Unexplained, b.Mode.Unexplained);
        var readings = _file.Readings.Count;
        for (var k = 0; k < a.Bounds.Length; k++)
            ln += a.Bounds[k].Margin is null && b.Bounds[k].Margin is null ? Math.Max(a.LnGiven(readings + k), b.LnGiven(readings + k)) : 0;
        for (var s = 0; s < _file.Stated.Count; s++) ln += Math.Max(a.Stated.LnGiven[s], b.Stated.LnGiven[s]) + 0.7;
        return ln;
    }

    private bool LeavesFitAlone(int[] faults) =>
        _library.Shifts(faults).Count == 0 && BoundTable.SameMargins(_library.Bounds(faults), _library.Bounds([]));

    /// <summary>A pair of faults that both act on the fit, from the fit of one of them.</summary>
    private Candidate Joint(
        Hypothesis hypothesis, Candidate start, int other, (Candidate?, Candidate?) singles, IReadOnlyList<FaultShift>[] shifts, double best)
    {
        var border = _library.Border(start.Mode, shifts[other]);
        var screened = _builder.Build(hypothesis, start.Mode, border.LnGain, singles: singles);
        if (!(screened.LnWeight - border.LnGain + border.LnBest > best - Window)) return screened;

        // Once the stove has been solved under the pair, the screen's estimate counts no more.
        if (_library.Extrapolate(hypothesis.Faults, start.Mode) is not { } linear)
            return _builder.Build(hypothesis, start.Mode, Math.Min(border.LnGain, 0), singles: singles);
        var candidate = _builder.Build(hypothesis, linear);
        if (!(candidate.LnWeight > best - Window)) return candidate;
        return _library.Fit(hypothesis.Faults, start.Mode) is { } fitted ? _builder.Build(hypothesis, fitted) : candidate;
    }
}
