// Question:    in what order are the hypotheses worked through so that the likely ones come first and none is missed?
// Equations:   nothing, then singles and the unlisted cause from nothing's fit; pairs: those that share a fit are only
//              re-weighted; the others are screened by Border, the promising ones solved once, those within 7 nats fitted
//              from the better single; last, fits without evidence that looks wrong.
// Symbols:     nat: unit of ln probability.
// Validity:    any number of faults; the work is cut into slices, each at most a few solves.
// Assumptions: a pair that its screen's upper estimate puts 7 nats below the best adds nothing but its linear weight.
// Source:      Occam's window: Madigan & Raftery, JASA 89 (1994) 1535. From memory.
// Worked:      —
namespace Emberwright.Diagnosis.Inference;

/// <summary>Works through all hypotheses of a case, slice by slice.</summary>
internal sealed class Search
{
    private const double Window = 7;
    private const int MostRefits = 24;
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
            var mode = hypothesis.Kind switch
            {
                HypothesisKind.Nothing => nothing,
                HypothesisKind.Unlisted => _library.FitUnlisted(),
                HypothesisKind.Single => _library.Key(hypothesis.Faults) == _library.Key([]) ? nothing : _library.Fit(hypothesis.Faults, nothing),
                HypothesisKind.Pair => null,
            };
            if (mode is null) continue;
            var candidate = _builder.Build(hypothesis, mode);
            _candidates.Add(candidate);
            yield return candidate;
        }
    }

    /// <summary>Pairs; each step is one slice.</summary>
    public IEnumerable<int> Pairs(IEnumerable<Hypothesis> hypotheses)
    {
        var singles = _candidates.Where(c => c.Hypothesis.Kind == HypothesisKind.Single).ToDictionary(c => c.Hypothesis.Faults[0]);
        var keys = Enumerable.Range(0, _file.Discrete.Count).Select(f => _library.Key([f])).ToArray();
        var shifts = Enumerable.Range(0, _file.Discrete.Count).Select(f => _library.Shifts([f])).ToArray();
        var borders = new Dictionary<(Mode, int), Border>();
        var plain = _library.Key([]);
        var margins = Enumerable.Range(0, _file.Discrete.Count).Select(f => _library.MarginKey([f])).ToArray();
        var best = _candidates.Max(c => c.LnWeight);
        var done = 0;
        foreach (var hypothesis in hypotheses)
        {
            var (i, j) = (hypothesis.Faults[0], hypothesis.Faults[1]);
            singles.TryGetValue(i, out var a);
            singles.TryGetValue(j, out var b);
            var candidate = keys[i] == plain || keys[j] == plain
                ? Shared(hypothesis, a, b, keys)
                : Joint(hypothesis, StartOf(hypothesis, a, b, margins), shifts, borders, best);
            if (candidate is not null)
            {
                _candidates.Add(candidate);
                best = Math.Max(best, candidate.LnWeight);
            }
            if (++done % PairsPerSlice == 0) yield return done;
        }
    }

    /// <summary>Fits without evidence that looks wrong; each step is one slice.</summary>
    public IEnumerable<int> Doubts()
    {
        if (_candidates.Count == 0) yield break;
        var best = _candidates.Max(c => c.LnWeight);
        var order = _candidates.Select((c, k) => (c, k)).Where(x => x.c.LnWeight > best - Window).OrderByDescending(x => x.c.LnWeight).ThenBy(x => x.k).Select(x => x.k).ToArray();
        var done = 0;
        foreach (var k in order)
        {
            var candidate = _candidates[k];
            var doubtful = _builder.Doubtful(candidate).Take(2).ToHashSet();
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

    /// <summary>A pair of which at least one fault leaves the fit alone.</summary>
    private Candidate? Shared(Hypothesis hypothesis, Candidate? a, Candidate? b, string[] keys)
    {
        var key = _library.Key(hypothesis.Faults);
        var mode = key == keys[hypothesis.Faults[0]] ? a?.Mode
            : key == keys[hypothesis.Faults[1]] ? b?.Mode
            : _library.Known(key) ?? _library.Fit(hypothesis.Faults, a?.Mode ?? _library.Nothing);
        return mode is null ? null : _builder.Build(hypothesis, mode);
    }

    /// <summary>The better single among those whose fit has the same margins as the pair's, with the fault still to be added.</summary>
    private (Candidate Start, int Other)? StartOf(Hypothesis hypothesis, Candidate? a, Candidate? b, string[] margins)
    {
        var (i, j) = (hypothesis.Faults[0], hypothesis.Faults[1]);
        var both = _library.MarginKey(hypothesis.Faults);
        var (fromA, fromB) = (a is not null && margins[i] == both, b is not null && margins[j] == both);
        return (fromA, fromB) switch
        {
            (true, true) => a!.LnWeight >= b!.LnWeight ? (a, j) : (b, i),
            (true, false) => (a!, j),
            (false, true) => (b!, i),
            (false, false) => null,
        };
    }

    private Candidate? Joint(
        Hypothesis hypothesis, (Candidate Start, int Other)? from, IReadOnlyList<FaultShift>[] shifts, Dictionary<(Mode, int), Border> borders, double best)
    {
        if (from is not { } start)
            return _library.Fit(hypothesis.Faults, _library.Nothing) is { } mode ? _builder.Build(hypothesis, mode) : null;
        var border = BorderOf(start.Start.Mode, start.Other, shifts, borders);
        var screened = _builder.Build(hypothesis, start.Start.Mode, border.LnGain);
        if (!(screened.LnWeight - border.LnGain + border.LnBest > best - Window)) return screened;

        if (_library.Extrapolate(hypothesis.Faults, start.Start.Mode) is not { } linear) return screened;
        var candidate = _builder.Build(hypothesis, linear);
        if (!(candidate.LnWeight > best - Window)) return candidate.LnWeight > screened.LnWeight ? candidate : screened;
        return _library.Fit(hypothesis.Faults, start.Start.Mode) is { } fitted ? _builder.Build(hypothesis, fitted) : candidate;
    }

    private static Border BorderOf(Mode mode, int fault, IReadOnlyList<FaultShift>[] shifts, Dictionary<(Mode, int), Border> borders)
    {
        if (borders.TryGetValue((mode, fault), out var border)) return border;
        border = Border.Of(mode, shifts[fault]);
        borders.Add((mode, fault), border);
        return border;
    }
}
