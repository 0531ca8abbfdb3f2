using Emberwright.Stove;

namespace Emberwright.Diagnosis.Inference;

/// <summary>One diagnosis from start to end, in slices.</summary>
internal sealed class Run
{
    private readonly CaseFile _file;
    private readonly Catalogue _catalogue;
    private readonly IReadOnlyList<Hypothesis> _hypotheses;
    private readonly ModeLibrary _library;
    private readonly Search _search;
    private readonly BeliefsWriter _writer;
    private readonly bool _brief;

    /// <summary>Prepares a diagnosis.</summary>
    /// <param name="stove">The stove.</param>
    /// <param name="model">What predicts it.</param>
    /// <param name="evidence">All evidence.</param>
    /// <param name="catalogue">Faults, signs and actions of the pattern.</param>
    /// <param name="brief">True leaves out what only a reader needs: the first conclusion, bands, explanations, alike sets.</param>
    public Run(StoveCase stove, IStoveModel model, IReadOnlyList<Evidence> evidence, Catalogue catalogue, bool brief = false)
    {
        _brief = brief;
        _file = CaseFile.Of(stove, model, evidence, catalogue);
        _catalogue = catalogue;
        var known = LastVisit.Of(stove, model);
        var offsets = _file.Readings.Items.Select(r => (r.Observable.Measure, r.Observable.Place)).Concat(known?.Offsets ?? []).ToArray();
        var layout = Layout.Of(stove, _file.Plan.Redrawn, offsets, serviced: false);
        _library = new ModeLibrary(_file, layout, Prior.Of(layout, known));
        _hypotheses = Hypothesis.All(_file.Discrete, _file.Fouling, stove.History.IsService);
        _search = new Search(_file, _library);
        var healthy = Layout.Of(stove, [new HashSet<Parameter>()], offsets, serviced: true);
        var bands = new HealthyBands(
            new Problem(new SolveCache(model), healthy, Prior.Of(healthy, known), ReadingSet.Of([]), []),
            known is not null ? "last visit" : stove.Card is { Healthy.Count: > 0 } ? "card" : "pattern");
        _writer = new BeliefsWriter(_file, _library, catalogue, evidence, bands, _hypotheses, brief);
    }

    /// <summary>Solves of the virtual stove so far.</summary>
    public int Solves => _library.Solves;

    /// <summary>Components so far.</summary>
    public IReadOnlyList<Candidate> Candidates => _search.Candidates;

    /// <summary>Works on; each step is a slice, the last of a stage carries its conclusion.</summary>
    public IEnumerable<Progress> Steps()
    {
        var total = _hypotheses.Count;
        var done = 0;
        foreach (var _ in _search.Singles(_hypotheses.Where(h => h.Kind != HypothesisKind.Pair)))
            yield return new Progress(DiagnosisStage.Singles, ++done, total, null, null);
        if (!_brief)
            foreach (var slice in Conclude(DiagnosisStage.Singles, done, total)) yield return slice;
        var singles = done;
        foreach (var pairs in _search.Pairs(_hypotheses.Where(h => h.Kind == HypothesisKind.Pair)))
            yield return new Progress(DiagnosisStage.Pairs, singles + pairs, total, null, null);
        foreach (var _ in _search.Doubts())
            yield return new Progress(DiagnosisStage.Doubts, total, total, null, null);
        foreach (var slice in Conclude(DiagnosisStage.Done, total, total)) yield return slice;
    }

    private IEnumerable<Progress> Conclude(DiagnosisStage stage, int done, int total)
    {
        var candidates = Normalised(_search.Candidates);
        var posterior = new Posterior(_file, _library, _catalogue, candidates);
        foreach (var beliefs in _writer.Write(posterior, candidates, _search.Builder))
            yield return new Progress(stage, done, total, beliefs, beliefs is null ? null : posterior);
    }

    private static IReadOnlyList<Candidate> Normalised(IReadOnlyList<Candidate> candidates)
    {
        var most = candidates.Max(c => c.LnWeight);
        var total = candidates.Sum(c => Math.Exp(c.LnWeight - most));
        foreach (var candidate in candidates) candidate.Weight = Math.Exp(candidate.LnWeight - most) / total;
        return candidates;
    }
}
