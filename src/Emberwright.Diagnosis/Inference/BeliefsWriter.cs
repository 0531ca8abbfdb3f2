using Emberwright.Diagnosis.Safety;
using Emberwright.Stove;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>Says what the posterior means: suspects, areas, bands, doubts, stops.</summary>
internal sealed class BeliefsWriter
{
    private const double LeastNamed = 0.002;
    private const int Explained = 8;
    private const int DrawsPerSlice = 100;
    private const double LeastDoubt = 0.15;
    private const double SingledOut = 0.5;
    private const double AsGoodAsFound = 0.9;

    private readonly CaseFile _file;
    private readonly ModeLibrary _library;
    private readonly Catalogue _catalogue;
    private readonly IReadOnlyList<Evidence> _evidence;
    private readonly HealthyBands _bands;
    private readonly IReadOnlyList<Hypothesis> _hypotheses;

    /// <summary>Prepares the writer.</summary>
    public BeliefsWriter(
        CaseFile file, ModeLibrary library, Catalogue catalogue, IReadOnlyList<Evidence> evidence, HealthyBands bands, IReadOnlyList<Hypothesis> hypotheses)
    {
        _file = file;
        _library = library;
        _catalogue = catalogue;
        _evidence = evidence;
        _bands = bands;
        _hypotheses = hypotheses;
    }

    /// <summary>Writes the conclusion; its longer lists are worked out when they are first looked at.</summary>
    /// <param name="posterior">The posterior.</param>
    /// <param name="candidates">Its components, weighed.</param>
    /// <param name="builder">What built them.</param>
    /// <param name="misfit">True when no listed cause fits.</param>
    public Beliefs Write(Posterior posterior, IReadOnlyList<Candidate> candidates, CandidateBuilder builder, bool misfit)
    {
        var standing = StandingConcern.Of(_evidence, _file.Plan.Now);
        var marginals = new Marginals(_file, candidates, builder);
        List<Suspect> suspects =
        [
            .. Suspects(marginals, standing is not null)
                .Select((s, k) => s.Index < 0 || k >= Explained ? s.Suspect : s.Suspect with { Because = new Later<Because>(Explanation(marginals, s.Suspect, s.Index)) }),
        ];
        var comparisons = Comparisons();
        var top = suspects.FirstOrDefault(s => s.Fault != Suspect.Unlisted);
        var unproved = StandingConcern.IsUnproved(_evidence);
        var cannotTell = top is null || top.Probability < SingledOut || top.Fault == Suspect.Nothing && (standing is not null || unproved);
        return new Beliefs(
            suspects, new Later<RestrictionEstimate>(Areas(candidates)), new Later<Band>(Bands()), comparisons, Doubtful(candidates, builder),
            new Later<AlikeSet>(AlikeSets.Steps(suspects, posterior, _catalogue, _evidence)), misfit, cannotTell, Stops(suspects),
            Notes(candidates, standing ?? (unproved ? StandingConcern.Unproved : null), misfit));
    }

    /// <summary>Works out what a conclusion has left for later, in slices.</summary>
    public static IEnumerable<bool> Finish(Beliefs beliefs)
    {
        IEnumerable<Func<bool>> left =
        [
            .. beliefs.Suspects.Select(s => s.Because).OfType<Later<Because>>().Select(l => (Func<bool>)l.Advance),
            .. beliefs.Bands is Later<Band> bands ? [bands.Advance] : Array.Empty<Func<bool>>(),
            .. beliefs.Areas is Later<RestrictionEstimate> areas ? [areas.Advance] : Array.Empty<Func<bool>>(),
            .. beliefs.Alike is Later<AlikeSet> alike ? [alike.Advance] : Array.Empty<Func<bool>>(),
        ];
        foreach (var advance in left)
            while (advance()) yield return true;
    }

    private IEnumerable<IReadOnlyList<Because>?> Explanation(Marginals marginals, Suspect suspect, int fault)
    {
        var because = new List<Because>();
        foreach (var piece in Because(marginals, suspect, fault))
        {
            because.Add(piece);
            yield return null;
        }
        yield return Strongest(because);
    }

    private IEnumerable<IReadOnlyList<Band>?> Bands()
    {
        var bands = new List<Band>();
        foreach (var observable in HealthyBands.Usual(_file.Stove))
        {
            if (_bands.Of(observable) is { } band) bands.Add(band);
            yield return null;
        }
        yield return bands;
    }

    private IEnumerable<IReadOnlyList<RestrictionEstimate>?> Areas(IReadOnlyList<Candidate> candidates)
    {
        var draws = new List<Draw>(Estimates.Count);
        foreach (var draw in Draws.From(_file, _library, candidates, Estimates.Count))
        {
            draws.Add(draw);
            if (draws.Count % DrawsPerSlice == 0) yield return null;
        }
        yield return Estimates.From(_file, draws);
    }

    /// <summary>Stops that facts call for, and those of faults that are as good as found.</summary>
    private IReadOnlyList<StandingStop> Stops(List<Suspect> suspects)
    {
        var standing = SafetyStops.Standing(_evidence);
        var implied =
            from suspect in suspects
            where suspect.Probability >= AsGoodAsFound
            let rule = _catalogue.Fault(suspect.Fault)?.SafetyStop is { } id ? SafetyRules.Find(id) : null
            where rule is not null && standing.All(s => s.Rule != rule.Id) && suspect.Because.Count > 0
            select new StandingStop(rule.Id, rule.Words, suspect.Because[0].Evidence, rule.ReleasedBy, rule.Source);
        return [.. standing, .. implied.DistinctBy(s => s.Rule)];
    }

    private List<Comparison> Comparisons()
    {
        var comparisons = new List<Comparison>();
        foreach (var reading in _file.Readings.Items)
            if (_bands.Of(reading.Observable) is { } band)
                comparisons.Add(new Comparison(reading.Id, reading.Value, band, HealthyBands.Judge(reading.Value, band), reading.Epoch));
        return comparisons;
    }

    private List<(Suspect Suspect, int Index)> Suspects(Marginals marginals, bool somethingStands)
    {
        var now = _file.Plan.Now;
        var suspects = new List<(Suspect Suspect, int Index)>();
        for (var f = -2; f < _file.Faults.Count; f++)
        {
            if (f >= 0 && f < _file.FirstFouling && _file.FirstOf(f) != f) continue;
            var (id, name) = f switch
            {
                -2 => (Suspect.Unlisted, "a cause not listed here"),
                -1 => (Suspect.Nothing, StandingConcern.IsUnproved(_evidence) ? "nothing more found, not yet proved" : "nothing wrong"),
                _ => (_file.Faults[f].Id, _file.Faults[f].Name),
            };
            var probability = marginals.Probability(f, now);
            var asFound = now == 0 ? probability : marginals.Probability(f, 0);
            if (f >= 0 && probability < LeastNamed && asFound < LeastNamed) continue;
            suspects.Add((new Suspect(id, name, PriorOf(f), probability, [], asFound) { PriorOrigin = OriginOf(f) }, f));
        }
        if (somethingStands) Concede(suspects);
        return [.. suspects.OrderByDescending(s => s.Suspect.Probability).ThenByDescending(s => s.Suspect.AsFound).ThenBy(s => s.Index)];
    }

    /// <summary>While a complaint or CO stands, "nothing" is never concluded: beyond an even chance it is an unlisted cause.</summary>
    private static void Concede(List<(Suspect Suspect, int Index)> suspects)
    {
        const double most = 0.49;
        var at = suspects.FindIndex(s => s.Index == -1);
        var other = suspects.FindIndex(s => s.Index == -2);
        var excess = suspects[at].Suspect.Probability - most;
        if (excess <= 0) return;
        suspects[at] = (suspects[at].Suspect with { Probability = most }, -1);
        suspects[other] = (suspects[other].Suspect with { Probability = suspects[other].Suspect.Probability + excess }, -2);
    }

    /// <summary>Each piece of evidence with its factor, one at a time.</summary>
    private IEnumerable<Because> Because(Marginals marginals, Suspect suspect, int fault)
    {
        // A fault that has been cured is explained as found.
        var epoch = suspect.Probability >= suspect.AsFound ? _file.Plan.Now : 0;
        return marginals.Evidence.Select(e => new Because(e.Evidence.Id, Words(e.Evidence), marginals.Factor(fault, epoch, e.Index)));
    }

    private static List<Because> Strongest(List<Because> because) =>
        [.. because.OrderByDescending(b => Math.Abs(Math.Log(b.Factor))).ThenBy(b => b.Evidence, StringComparer.Ordinal)];

    private string Words(Evidence evidence) =>
        Wording.Of(evidence, _catalogue, evidence is ReadingEvidence reading && _file.Readings.Items.Contains(reading) ? _bands.Of(reading.Observable) : null);

    private double PriorOf(int fault)
    {
        if (fault >= _file.FirstFouling)
        {
            var limit = _file.Faults[fault].Fouling!;
            if (limit.Parameter == Parameter.Insulation) return PriorOfInsulation(limit);
            return Math.Exp(limit.Limit / PriorTable.InUse(limit.Parameter, _file.Stove));
        }
        return fault switch
        {
            -2 => Math.Exp(_hypotheses.First(h => h.Kind == HypothesisKind.Unlisted).LnPrior),
            -1 => Math.Exp(_hypotheses.First(h => h.Kind == HypothesisKind.Nothing).LnPrior) * Enumerable.Range(0, _file.Fouling.Count).Aggregate(1.0, (p, f) => p * (1 - PriorOf(_file.FirstFouling + f))),
            _ => _hypotheses.Where(h => Array.Exists(h.Faults, f => _file.FirstOf(f) == fault)).Sum(h => Math.Exp(h.LnPrior)),
        };
    }

    private string? OriginOf(int fault) => fault < 0 ? null
        : _file.Faults[fault].Fouling is { } fouling && _file.Stove.Rates?.Fouling.GetValueOrDefault(fouling.Parameter) is { } own ? own.Origin
        : _file.Stove.Rates?.Faults.GetValueOrDefault(_file.Faults[fault].Id)?.Origin ?? _file.Faults[fault].Origin;

    private double PriorOfInsulation(FoulingLimit limit)
    {
        var tau = PriorTable.InUse(Parameter.Exchanger, _file.Stove);
        var own = PriorTable.PatternSd(Parameter.Insulation, _file.Stove) ?? 0;
        var sd = Math.Sqrt(own * own + Math.Pow(PriorTable.InsulationPerRestriction * tau, 2));
        return Normal.Below((limit.Limit + PriorTable.InsulationPerRestriction * tau) / sd);
    }

    private DoubtfulReading? Doubtful(IReadOnlyList<Candidate> candidates, CandidateBuilder builder)
    {
        var n = _file.Readings.Count + _file.Conditionals.Count;
        var worst = -1;
        var most = 0.0;
        for (var i = 0; i < n; i++)
        {
            if (builder.EvidenceAt(i) is not ReadingEvidence) continue;
            var p = candidates.Sum(c => c.Weight < 1e-12 ? 0 : c.Weight * c.Wrong(i));
            if (p > most) (worst, most) = (i, p);
        }
        if (worst < 0 || most < LeastDoubt) return null;
        var reading = (ReadingEvidence)builder.EvidenceAt(worst);
        var implied = Implied(candidates, worst, reading);
        return new DoubtfulReading(
            reading.Id,
            Words(reading) + (implied is { } value ? $"; everything else implies about {Wording.Number(reading.Observable.Measure, value)}. Read it again." : "; it contradicts everything else. Read it again."),
            most);
    }

    private double? Implied(IReadOnlyList<Candidate> candidates, int index, ReadingEvidence reading)
    {
        if (index >= _file.Readings.Count) return null;
        var best = candidates.Where(c => c.Doubted == index).MaxBy(c => c.LnWeight) ?? candidates.MaxBy(c => c.LnWeight)!;
        var compared = Noise.Compared(reading.Observable.Measure, reading.Value) - best.Mode.Of(index).Pull / best.Mode.Of(index).Precision;
        return reading.Observable.Measure == Measure.CarbonMonoxide ? Math.Exp(compared) : compared;
    }

    private List<string> Notes(IReadOnlyList<Candidate> candidates, string? standing, bool misfit)
    {
        var notes = new List<string>();
        if (standing is not null) notes.Add(standing);
        if (misfit) notes.Add("No listed cause fits the readings well; read again, or look for something that is not listed.");
        foreach (var twice in _evidence.OfType<SignEvidence>().GroupBy(e => (e.Epoch, e.Sign)).Where(g => g.Key.Sign != Complaints.Sign && g.Select(e => e.Outcome).Distinct().Count() > 1))
            notes.Add($"Two entries contradict each other: {string.Join(" / ", twice.Select(e => Wording.Of(e, _catalogue, null)).Distinct())}. Look again.");
        foreach (var unused in _file.Unused.Where(u => !_file.Stated.Any(s => s.Evidence.Id == u.Id))) notes.Add(Unused(unused));
        if (_file.Stove.Card is not { Healthy.Count: > 0 } && _file.Stove.History.LastAsLeft is not { Count: > 0 })
            notes.Add("Healthy values come from the pattern alone, so bands are wide; a stove card or last visit's readings would narrow them.");
        if (candidates.Where(c => c.Weight > 0.05).Any(c => !c.Mode.Reliable))
            notes.Add("One of the likely explanations was not fitted exactly; its probability is approximate.");
        return notes;
    }

    private string Unused(Evidence unused) => unused is CodeEvidence code
        ? $"Alarm code {CodeBook.Read(code.Code, _file.Stove.Card).InWords}. It is kept, and weighs nothing."
        : $"Not used, because nothing here predicts it: {Wording.Of(unused, _catalogue, null)}.";
}
