// Which check is worth doing next?
// T(c) = cost(c) + Σ_o P(o)·V(w | o), over the results o of the check; for a remedy T = cost + V(w with it cured).
// Symbols: w weights of the explanations, V expected cost of the fixed order of repair (RepairPlan), P(o) = Σ_k w_k·P(o | k).
// Validity: any posterior with at least one explanation.
// Assumptions: after this one check no further question is asked (one-step look-ahead).
// Source: Heckerman, Breese & Rommelse, Decision-theoretic troubleshooting, CACM 38(3), 1995 (from memory).
// Worked: the tests of Troubleshooting hold V against the literature's examples.
using Emberwright.Diagnosis.Checks;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Planning;

/// <summary>Recommends the next check by least expected total cost until the stove provably runs.</summary>
/// <param name="catalogue">What can be wrong and what can be done on this pattern.</param>
/// <param name="tariff">What time, trips and harm cost.</param>
public sealed class Planner(Catalogue catalogue, Tariff tariff)
{
    /// <summary>Id of the recommendation to make the stove safe, which precedes all work on it.</summary>
    public const string MakeSafe = "make-safe";

    private const double Running = 0.03;

    /// <summary>
    /// What a look must save beyond its own price. V counts on every later finding being right, so what a look promises is
    /// rather too much, and the best of a hundred promises more so: a look that just pays for itself does not (from memory, no source).
    /// </summary>
    private const double Margin = 1;

    /// <summary>Probability of what can hurt people from which on a stove that runs is looked into further.</summary>
    private const double Dangerous = 0.1;

    /// <summary>Between a look and a deed that come out nearly alike, the deed: V does not see that looking goes on.</summary>
    private const double ActingIsWorth = 0.93;

    /// <summary>The best next check and a few alternatives.</summary>
    /// <param name="predictive">What is believed and what it predicts.</param>
    /// <param name="situation">Where the visit stands.</param>
    /// <param name="alternatives">At most so many alternatives.</param>
    public NextCheck Next(IPredictive predictive, Situation situation, int alternatives = 2) =>
        Steps(predictive, situation, alternatives, deep: false).OfType<NextCheck>().Last();

    /// <summary>
    /// The same, ever better: first one step ahead, then two steps ahead for one more of the best eight with every element, then again
    /// with more second steps. The last is the best; whoever cannot wait takes the latest. Nothing in it is left to chance.
    /// </summary>
    /// <param name="predictive">What is believed and what it predicts.</param>
    /// <param name="situation">Where the visit stands.</param>
    /// <param name="alternatives">At most so many alternatives.</param>
    public IEnumerable<NextCheck> Improving(IPredictive predictive, Situation situation, int alternatives = 2) =>
        Steps(predictive, situation, alternatives, deep: true).OfType<NextCheck>();

    /// <summary>The same in slices of a few milliseconds, so that a screen can be drawn between any two; null while a plan is not yet ready.</summary>
    /// <param name="predictive">What is believed and what it predicts.</param>
    /// <param name="situation">Where the visit stands.</param>
    /// <param name="alternatives">At most so many alternatives.</param>
    /// <param name="deep">False to end with the plan one step ahead.</param>
    public IEnumerable<NextCheck?> Steps(IPredictive predictive, Situation situation, int alternatives = 2, bool deep = true)
    {
        if (!situation.Concern)
        {
            yield return Routine(situation);
            yield break;
        }

        var board = new Board(catalogue, tariff, predictive, situation);
        List<Option> all = [];
        foreach (var option in Offered(board, predictive, situation))
        {
            all.Add(option);
            yield return null;
        }

        yield return OrRoutine(Arrange(board, all, situation, alternatives), situation);
        if (!deep) yield break;
        foreach (var deeper in new Lookahead(board).Over(all, Weighed))
            yield return deeper is null ? null : OrRoutine(Arrange(board, deeper, situation, alternatives), situation);
    }

    // A service that is due is done, whether or not a reading is worth looking into.
    private NextCheck OrRoutine(NextCheck next, Situation situation)
    {
        if (next.Best is not null || !situation.IsDue || Routine(situation).Best is not { } service) return next;
        return situation is { OnSite: true, MadeSafe: false }
            ? new NextCheck(SafeFirst(service.Name, service.ExpectedTotal), [service with { Cautions = [Cautions.MakeSafe, .. service.Cautions.Except([Cautions.MakeSafe])] }])
            : new NextCheck(service, []);
    }

    // Once a call has all but named it, only what changes the arrangements is still asked.
    private IEnumerable<Option> Offered(Board board, IPredictive predictive, Situation situation) =>
        situation.OnSite || !Arrangement.IsSettled(board, predictive.Explanations, catalogue)
            ? board.Options()
            : board.Options().Where(o => Arrangement.MayChange(o, board));

    private static double Weighed(Option option) => option.LikelyCures ? option.Total * ActingIsWorth : option.Total;

    private NextCheck Arrange(Board board, IReadOnlyList<Option> all, Situation situation, int alternatives)
    {
        List<string> order = [.. board.Order];
        var first = order.FirstOrDefault(id => all.Any(o => o.Id == id && !o.IsLastResort));
        bool Pays(Option o) => board.Standing - o.Total > Margin;
        var options = all.Where(o => o.LikelyCures || o.Id == first || Pays(o) || o.IsLastResort && order.Contains(o.Id))
            .OrderBy(o => o.IsLastResort).ThenBy(o => !o.IsDeep).ThenBy(Weighed).ThenBy(o => o.Id, StringComparer.Ordinal).ToList();
        if (options.FindIndex(o => board.Proof is { } id ? o.Id == id : o.Action is not null && o.Action == board.Cure) is var at and > 1) Offer(options, at);
        if (situation.Stops.Count > 0) return new NextCheck(Stopped(situation.Stops[0]), [.. WithoutFire(options, situation).Take(alternatives).Select(o => Recommend(o, board, situation))]);
        if (options.Count == 0 || board.Open < Running && situation.Epoch > 0 || situation.Runs && board.Hazard < Dangerous) return new NextCheck(null, []);
        var best = (situation.HasJustActed || situation.IsUnproved && !options[0].LikelyCures) && all.FirstOrDefault(o => o.Id == Rules.TestRun) is { } run ? run
            : all.Where(o => o.Check is { } c && Rules.LooksForAwaitedCause(c, board, situation)).MinBy(Weighed) is { } why ? why
            : options[0];
        if (situation is { OnSite: true, MadeSafe: false } && best.Needs.HasFlag(CheckNeeds.Unplugged))
            return new NextCheck(SafeFirst(best.Name, best.Total), [.. Others(options, best, situation).Prepend(best).Take(alternatives).Select(o => Recommend(o, board, situation))]);
        return new NextCheck(Recommend(best, board, situation), [.. Others(options, best, situation).Take(alternatives).Select(o => Recommend(o, board, situation))]);
    }

    // Alternatives differ from the best and from each other: no part of it, not the same deed again, on site one question at most.
    private IEnumerable<Option> Others(IEnumerable<Option> options, Option best, Situation situation)
    {
        var asked = IsQuestion(best);
        foreach (var option in options)
        {
            if (option.Id == best.Id || option.Action is not null && option.Action == best.Action || IsPartOf(option, best)) continue;
            if (situation.OnSite && asked && IsQuestion(option)) continue;
            asked |= IsQuestion(option);
            yield return option;
        }
    }

    private static bool IsQuestion(Option option) => option.Check?.Kind == CheckKind.Ask;

    // One step ahead a question about the unlikely may look cheaper; what proves the likeliest, or cures what is proved, is offered all the same.
    private static void Offer(List<Option> options, int at)
    {
        var proof = options[at];
        options.RemoveAt(at);
        options.Insert(1, proof);
    }

    /// <summary>A part of the recommended check is no alternative to it.</summary>
    private bool IsPartOf(Option option, Option best) => catalogue.Check(option.Id) is { Action: null } part && catalogue.Check(best.Id) is { } whole
        && part.Signs.All(whole.Signs.Contains) && part.Reads.All(whole.Reads.Contains);

    /// <summary>While a stop stands, what finds its cause on a cold stove may be done by whoever is there.</summary>
    private static IEnumerable<Option> WithoutFire(IEnumerable<Option> options, Situation situation) =>
        situation.OnSite ? options.Where(o => !o.Needs.HasFlag(CheckNeeds.Burning) && o.Id != Rules.TestRun) : [];

    // With nothing to find out, the work of a service is its next step; after it, proving and sign-off, which are no checks.
    private NextCheck Routine(Situation situation)
    {
        if (situation.Evidence.OfType<ActionEvidence>().Any() || catalogue.Action(ActionList.FullService) is not { } service) return new NextCheck(null, []);
        var cost = service.Minutes * tariff.PerMinute + service.PartCost;
        return new NextCheck(
            new(service.Id, service.Name, cost, service.Minutes, situation.Concern ? "Nothing is complained of and nothing stands out: do the service." : "Nothing is complained of and nothing is out of band: do the service.", cost, service.Cautions), []);
    }

    // What is opened carries its making-safe step until that is recorded.
    private RecommendedCheck Recommend(Option option, Board board, Situation situation) => new(
        option.Id, option.Name, option.Cost, option.Minutes, Reasons.For(option, board, catalogue) + (option.Then ?? ""), option.Total,
        !situation.MadeSafe && option.Needs.HasFlag(CheckNeeds.Unplugged) ? [Cautions.MakeSafe, .. option.Cautions.Except([Cautions.MakeSafe])] : option.Cautions);

    private static RecommendedCheck Stopped(StandingStop stop) =>
        new(stop.Rule, stop.Words, 0, 0, $"A safety stop stands and comes before everything else. Released by: {stop.ReleasedBy}.", 0, [Cautions.Monoxide]);

    private RecommendedCheck SafeFirst(string before, double total) =>
        new(MakeSafe, Cautions.MakeSafe, 10 * tariff.PerMinute, 10, $"{before} needs the stove off, cold and unplugged.", total, [Cautions.MakeSafe, Cautions.Hot]);
}
