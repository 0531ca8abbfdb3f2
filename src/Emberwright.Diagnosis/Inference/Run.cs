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

    /// <summary>Prepares a diagnosis from nothing.</summary>
    /// <param name="stove">The stove.</param>
    /// <param name="model">What predicts it.</param>
    /// <param name="evidence">All evidence.</param>
    /// <param name="catalogue">Faults, signs and actions of the pattern.</param>
    public Run(StoveCase stove, IStoveModel model, IReadOnlyList<Evidence> evidence, Catalogue catalogue)
        : this(new Groundwork(stove, model, catalogue), evidence, catalogue)
    {
    }

    /// <summary>Prepares a diagnosis on what has been worked out about the stove.</summary>
    /// <param name="ground">What has been worked out.</param>
    /// <param name="evidence">All evidence.</param>
    /// <param name="catalogue">Faults, signs and actions of the pattern.</param>
    public Run(Groundwork ground, IReadOnlyList<Evidence> evidence, Catalogue catalogue)
    {
        _file = CaseFile.Of(ground, evidence);
        _catalogue = catalogue;
        _hypotheses = _file.Hypotheses;
        _library = new ModeLibrary(_file, ground.Of(_file));
        _search = new Search(_file, _library);
        _writer = new BeliefsWriter(_file, _library, _catalogue, evidence, ground.Bands, _hypotheses);
    }

    /// <summary>Solves of the virtual stove so far.</summary>
    public int Solves => _library.Solves;

    /// <summary>Components so far.</summary>
    public IReadOnlyList<Candidate> Candidates => _search.Candidates;

    /// <summary>Works on; each step is a slice, the last of a stage carries its conclusion with nothing left to work out.</summary>
    public IEnumerable<Progress> Steps()
    {
        var total = _hypotheses.Count;
        var done = 0;
        foreach (var _ in Singles()) yield return new Progress(DiagnosisStage.Singles, ++done, total, null, null);
        foreach (var slice in InSlices(DiagnosisStage.Singles, done)) yield return slice;
        var singles = done;
        foreach (var pairs in Pairs()) yield return new Progress(DiagnosisStage.Pairs, singles + pairs, total, null, null);
        foreach (var _ in _search.Triples(_hypotheses)) yield return new Progress(DiagnosisStage.Pairs, total, total, null, null);
        foreach (var _ in _search.Doubts()) yield return new Progress(DiagnosisStage.Doubts, total, total, null, null);
        foreach (var slice in InSlices(DiagnosisStage.Done, total)) yield return slice;
    }

    /// <summary>The whole conclusion at once. What only a reader needs is worked out when it is first looked at.</summary>
    public Progress Whole()
    {
        foreach (var _ in Singles())
        {
        }
        foreach (var _ in Pairs())
        {
        }
        foreach (var _ in _search.Triples(_hypotheses))
        {
        }
        foreach (var _ in _search.Doubts())
        {
        }
        return Conclude(DiagnosisStage.Done, _hypotheses.Count);
    }

    private IEnumerable<Candidate> Singles() => _search.Singles(_hypotheses.Where(h => h.Kind != HypothesisKind.Pair));

    private IEnumerable<int> Pairs() => _search.Pairs(_hypotheses.Where(h => h.Kind == HypothesisKind.Pair));

    private IEnumerable<Progress> InSlices(DiagnosisStage stage, int done)
    {
        var concluded = Conclude(stage, done);
        var empty = concluded with { Beliefs = null, Posterior = null };
        yield return empty;
        foreach (var _ in BeliefsWriter.Finish(concluded.Beliefs!)) yield return empty;
        yield return concluded;
    }

    private Progress Conclude(DiagnosisStage stage, int done)
    {
        var candidates = _search.Candidates;
        var share = candidates.Where(c => !c.IsUnlisted).MaxBy(c => c.LnWeight) is { } best ? _library.MisfitShare(best.Mode) : 1;
        Weigh(candidates, MisfitAlarm.LeastUnlisted(share, Hypothesis.UnlistedShare));
        var posterior = new Posterior(_file, _library, _catalogue, candidates);
        return new Progress(stage, done, _hypotheses.Count, _writer.Write(posterior, candidates, _search.Builder, MisfitAlarm.Sounds(share)), posterior);
    }

    /// <summary>Normalises the weights; causes that are not listed together get at least what the misfit says.</summary>
    private static void Weigh(IReadOnlyList<Candidate> candidates, double leastUnlisted)
    {
        var most = candidates.Max(c => c.LnWeight);
        var (listed, unlisted) = (0.0, 0.0);
        foreach (var candidate in candidates)
        {
            var weight = Math.Exp(candidate.LnWeight - most);
            if (candidate.IsUnlisted) unlisted += weight;
            else listed += weight;
        }
        var share = unlisted / (listed + unlisted);
        var raised = unlisted > 0 ? Math.Max(share, leastUnlisted) : share;
        foreach (var candidate in candidates)
        {
            var weight = Math.Exp(candidate.LnWeight - most);
            candidate.Weight = candidate.IsUnlisted ? weight / unlisted * raised : weight / listed * (1 - raised);
        }
    }
}
