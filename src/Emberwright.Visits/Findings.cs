using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Planning;
using Emberwright.Diagnosis.Rates;
using Emberwright.Diagnosis.Signs;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Controls.Wirings;
using Emberwright.Stove.Patterns;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits;

/// <summary>
/// Everything the engine says about a visit: healthy bands, comparisons, beliefs, the next check. Screens, the terminal
/// and the report only show these. Derived from the file alone; the same file always gives the same findings.
/// </summary>
/// <param name="Visit">The visit.</param>
/// <param name="Case">The stove, its site and its past.</param>
/// <param name="Catalogue">Faults, signs, checks and actions of the pattern.</param>
/// <param name="Evidence">The facts that diagnosis used.</param>
/// <param name="Beliefs">What is probably wrong.</param>
/// <param name="Problems">What was wrong in the file.</param>
public sealed record Findings(
    Visit Visit,
    StoveCase Case,
    Catalogue Catalogue,
    IReadOnlyList<Evidence> Evidence,
    Beliefs Beliefs,
    IReadOnlyList<Problem> Problems)
{
    private const double Likely = 0.5;
    private const int Alternatives = 2;

    private NextCheck? _next;

    /// <summary>What to do next; planned when it is first looked at.</summary>
    public NextCheck NextCheck
    {
        get => _next ??= WithWorkThere(new Planner(Catalogue, Tariff.Default).Next(Posterior, Situation, Alternatives), Alternatives);
        init => _next = value;
    }

    /// <summary>The posterior behind the beliefs, from which any check's results can be predicted.</summary>
    public required Posterior Posterior { get; init; }

    /// <summary>Where the visit stands for planning.</summary>
    public required Situation Situation { get; init; }

    /// <summary>Draws the conclusions from a visit file; null when the file does not say which stove it is.</summary>
    /// <param name="file">The file.</param>
    /// <param name="onSite">Whether somebody is at the stove; null reads it off what has been recorded.</param>
    /// <param name="rates">The firm's own rates by pattern.</param>
    /// <param name="workings">What earlier findings of the visit worked out; it shortens these and never changes them.</param>
    public static Findings? Of(VisitFile file, bool? onSite = null, IReadOnlyDictionary<string, PatternRates>? rates = null, Workings? workings = null)
    {
        ArgumentNullException.ThrowIfNull(file);
        var visit = Visit.Fold(file.Journal);
        if (PatternOf(visit) is not { } pattern) return null;
        var given = new Given(visit, pattern, file.Problems, onSite, rates?.GetValueOrDefault(pattern.Id));
        return given.Concluding(Diagnose.Infer(given.Stove, given.Evidence, given.Catalogue, workings));
    }

    /// <summary>
    /// The same findings with an ever better next check: the first is what stands here already, each later one looks further
    /// ahead. Each element takes a few milliseconds, so a screen may be drawn between them while somebody reads.
    /// </summary>
    /// <param name="alternatives">At most so many alternatives.</param>
    public IEnumerable<Findings> Improving(int alternatives = Alternatives) =>
        new Planner(Catalogue, Tariff.Default).Improving(Posterior, Situation, alternatives).Select(next => this with { NextCheck = WithWorkThere(next, alternatives) });

    /// <summary>Where a call leaves little to ask, what comes first at the stove follows.</summary>
    private NextCheck WithWorkThere(NextCheck next, int alternatives)
    {
        if (Situation.OnSite || !Situation.Concern || Situation.Stops.Count > 0 || next.Best is not null && next.Alternatives.Count >= alternatives) return next;
        var there = new Planner(Catalogue, Tariff.Default).Next(Posterior, Situation with { OnSite = true, MadeSafe = false }, alternatives);
        RecommendedCheck[] all = [.. new[] { next.Best }.Concat(next.Alternatives).Append(there.Best).Concat(there.Alternatives).OfType<RecommendedCheck>().DistinctBy(c => c.Check)];
        return new NextCheck(all.FirstOrDefault(), [.. all.Skip(1).Take(alternatives)]);
    }

    /// <summary><see cref="Improving"/> in slices of a few milliseconds, also in a browser; null while the next one is not yet ready.</summary>
    public IEnumerable<Findings?> ImprovingSteps() =>
        new Planner(Catalogue, Tariff.Default).Steps(Posterior, Situation).Select(next => next is null ? null : this with { NextCheck = WithWorkThere(next, Alternatives) });

    /// <summary>Why <see cref="Of"/> gave nothing.</summary>
    public static IReadOnlyList<Problem> WhyNone(VisitFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        var stated = Visit.Fold(file.Journal).Appliance?.Pattern;
        var remedy = $"Add an appliance entry whose pattern is one of {string.Join(", ", PatternLibrary.All.Select(p => p.Id))}.";
        return [stated is null
            ? new Problem(1, "appliance", "", "No appliance entry says which pattern the stove is of.", remedy)
            : new Problem(1, "appliance.pattern", stated, "No pattern goes by this name.", remedy)];
    }

    /// <summary>The virtual stove of a visit, with its card and site; null when the visit names no pattern that is known.</summary>
    public static VirtualStove? StoveOf(Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return PatternOf(visit) is { } pattern ? new VirtualStove(pattern, CardOf(visit).Card, visit.StoveSite()) : null;
    }

    /// <summary>The circuit of a visit's stove, with its card; null when the visit names no pattern that is known.</summary>
    public static Wiring? WiringOf(Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return PatternOf(visit) is { } pattern ? CardCircuit.Of(pattern, CardOf(visit).Card) : null;
    }

    /// <summary>What the alarm codes recorded mean by the stove's card, in order; one that the card does not list says so.</summary>
    public static IReadOnlyList<CodeMeaning> CodesOf(Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var card = CardOf(visit).Card;
        return [.. visit.Of<CodeBody>().Where(c => c.Body.Meaning is null).Select(c => CodeBook.Read(c.Body.Code, card))];
    }

    /// <summary>One line that says whose stove it is and of which pattern.</summary>
    public string Title =>
        string.Join(" · ", new[] { Visit.Customer?.Name, Visit.Appliance?.Name, Case.Pattern.Name }.Where(s => !string.IsNullOrWhiteSpace(s)));

    /// <summary>True when there is something to act on: a stop, a likely suspect, a reading out of band.</summary>
    public bool NeedsAttention =>
        Beliefs.Stops.Count > 0
        || Beliefs.Suspects.Any(s => s.Fault != "nothing" && s.Probability >= Likely)
        || Beliefs.Comparisons.Any(c => c.Verdict != Verdict.In);

    /// <summary>Whether a compared reading was taken as found or as left.</summary>
    public Phase PhaseOf(Comparison comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        return Visit.Readings.FirstOrDefault(r => r.Id == comparison.Evidence)?.Phase ?? (comparison.Epoch == 0 ? Phase.AsFound : Phase.AsLeft);
    }

    /// <summary>The name of a fault, or its id when it is not one of the pattern's.</summary>
    public string NameOfFault(string id) => Catalogue.Fault(id)?.Name ?? id;

    /// <summary>The name of a check, or its id when it is not one of the pattern's.</summary>
    public string NameOfCheck(string id) => Catalogue.Check(id)?.Name ?? id;

    /// <summary>
    /// The same in slices short enough for a screen to be drawn between them; the conclusion comes with the last slice,
    /// a first one with the end of the single faults.
    /// </summary>
    /// <param name="visit">The visit.</param>
    /// <param name="pattern">The stove's pattern.</param>
    /// <param name="problems">What was wrong in its file.</param>
    /// <param name="onSite">Whether somebody is at the stove; null reads it off what has been recorded.</param>
    /// <param name="rates">The firm's own rates for the pattern.</param>
    /// <param name="workings">What earlier findings of the visit worked out; it shortens these and never changes them.</param>
    public static IEnumerable<(Progress Progress, Findings? Findings)> Steps(
        Visit visit, Pattern pattern, IReadOnlyList<Problem> problems, bool? onSite = null, PatternRates? rates = null, Workings? workings = null)
    {
        ArgumentNullException.ThrowIfNull(visit);
        ArgumentNullException.ThrowIfNull(pattern);
        ArgumentNullException.ThrowIfNull(problems);
        var given = new Given(visit, pattern, problems, onSite, rates);
        return Diagnose.Steps(given.Stove, given.Evidence, given.Catalogue, workings)
            .Select(progress => (progress, progress.Beliefs is null ? null : given.Concluding(progress)));
    }

    /// <summary>What diagnosis is given of a visit.</summary>
    private sealed class Given
    {
        private readonly Visit _visit;
        private readonly IReadOnlyList<Problem> _problems;
        private readonly bool? _onSite;

        public Given(Visit visit, Pattern pattern, IReadOnlyList<Problem> problems, bool? onSite, PatternRates? rates)
        {
            var (card, cardProblems) = CardOf(visit);
            (_visit, _onSite, _problems) = (visit, onSite, [.. problems, .. cardProblems]);
            Catalogue = rates is null ? Catalogue.For(pattern.Id) : Catalogue.For(pattern.Id).Timed(rates.Minutes);
            Stove = visit.Case(pattern, card) with { Rates = rates };
            Evidence = SensorReadings.Judged(visit.Evidence(), Stove);
        }

        public StoveCase Stove { get; }

        public Catalogue Catalogue { get; }

        public IReadOnlyList<Evidence> Evidence { get; }

        public Findings Concluding(Progress progress)
        {
            var beliefs = progress.Beliefs!;
            var situation = new Situation(Evidence, beliefs.Stops, _onSite ?? IsOnSite(_visit), IsMadeSafe(_visit), IsConcern(Stove, beliefs));
            return new Findings(_visit, Stove, Catalogue, Evidence, beliefs, _problems) { Posterior = progress.Posterior!, Situation = situation };
        }
    }

    private static bool IsConcern(StoveCase stove, Beliefs beliefs) =>
        !stove.History.IsService
        || beliefs.Comparisons.GroupBy(c => c.Band.Observable).Any(same => same.Last().Verdict != Verdict.In)
        || beliefs.Suspects.Any(s => s.Fault != "nothing" && s.Probability >= Likely);

    // Whatever cannot be done over the telephone shows that somebody is there.
    private static bool IsOnSite(Visit visit) => visit.Facts.Any(f => f.Body is SafeBody or ReadingBody or ObservationBody or ActionBody or ProofBody);

    private static bool IsMadeSafe(Visit visit) => visit.Of<SafeBody>().Any(f => f.Body.Step is SafeStep.Unplugged or SafeStep.ProvedDead);

    // A card written into the visit narrows the bands; what is wrong in it is said, and the rest of it is used.
    private static (StoveCard? Card, IEnumerable<Problem> Problems) CardOf(Visit visit)
    {
        if (visit.Appliance?.CardJson is not { } json) return (null, []);
        var card = CardFile.Read(json, out var problems);
        return (card, problems.Select(p => new Problem(0, $"appliance.card{p.Path.TrimStart('$')}", "", p.Message, p.Remedy)));
    }

    private static Pattern? PatternOf(Visit visit) => visit.Appliance is { } appliance ? PatternLibrary.Find(appliance.Pattern) : null;
}
