using Emberwright.Stove;

namespace Emberwright.Diagnosis;

/// <summary>Everything diagnosis concludes from a stove and its evidence.</summary>
/// <param name="Suspects">Faults by falling probability.</param>
/// <param name="Areas">Restriction of each area and each leak with its interval, as found and as of now.</param>
/// <param name="Bands">Healthy bands of what can be read on this stove today.</param>
/// <param name="Comparisons">Each reading against its healthy band.</param>
/// <param name="Doubtful">The reading that is probably wrong, if one is.</param>
/// <param name="Alike">Sets of suspects that the evidence does not separate.</param>
/// <param name="NoListedCauseFits">True when even the best listed explanation misfits the readings.</param>
/// <param name="CannotTell">True when the evidence does not single anything out.</param>
/// <param name="Stops">Safety stops that stand, most urgent first.</param>
/// <param name="Notes">Plain sentences on what limits the conclusion.</param>
public sealed record Beliefs(
    IReadOnlyList<Suspect> Suspects,
    IReadOnlyList<RestrictionEstimate> Areas,
    IReadOnlyList<Band> Bands,
    IReadOnlyList<Comparison> Comparisons,
    DoubtfulReading? Doubtful,
    IReadOnlyList<AlikeSet> Alike,
    bool NoListedCauseFits,
    bool CannotTell,
    IReadOnlyList<StandingStop> Stops,
    IReadOnlyList<string> Notes);

/// <summary>A fault with its marginal probability given all evidence.</summary>
/// <param name="Fault">Fault id; <c>nothing</c> and <c>unlisted</c> stand for themselves.</param>
/// <param name="Name">Name in the trade's words.</param>
/// <param name="Prior">Probability before any evidence, 0…1.</param>
/// <param name="Probability">Probability that it is present now, after everything done so far, 0…1.</param>
/// <param name="Because">Each piece of evidence with its factor on the odds, strongest first.</param>
/// <param name="AsFound">Probability that it was present as found, 0…1; a cured fault keeps this one.</param>
public sealed record Suspect(
    string Fault, string Name, double Prior, double Probability, IReadOnlyList<Because> Because, double AsFound)
{
    /// <summary>Where the probability before any evidence comes from; null where it is nobody's number.</summary>
    public string? PriorOrigin { get; init; }

    /// <summary>Stands for a stove with no fault of the catalogue and no fouling past a limit.</summary>
    public const string Nothing = "nothing";

    /// <summary>Stands for a cause that the catalogue does not list.</summary>
    public const string Unlisted = "unlisted";
}

/// <summary>One piece of evidence in the explanation of a probability.</summary>
/// <param name="Evidence">Entry id of the evidence.</param>
/// <param name="Words">The evidence in words, with what was expected.</param>
/// <param name="Factor">Odds with all evidence ÷ odds without this piece. Factors need not multiply.</param>
public sealed record Because(string Evidence, string Words, double Factor);

/// <summary>Estimated restriction of a passage, or opening of a leak, with a 90 % interval.</summary>
/// <param name="Parameter">Which passage or leak.</param>
/// <param name="Name">Name in words.</param>
/// <param name="AsFound">Estimate as found.</param>
/// <param name="Now">Estimate after all actions so far; equal to as found when nothing was done.</param>
public sealed record RestrictionEstimate(Parameter Parameter, string Name, Interval AsFound, Interval Now);

/// <summary>A median with the bounds of a 90 % interval, fractions 0…1 for restrictions.</summary>
/// <param name="Low">5 % quantile.</param>
/// <param name="Median">Median.</param>
/// <param name="High">95 % quantile.</param>
public readonly record struct Interval(double Low, double Median, double High);

/// <summary>The range a reading should have on this stove, in this condition, today, when healthy.</summary>
/// <param name="Observable">What is read.</param>
/// <param name="Low">Lower end in the measure's SI unit.</param>
/// <param name="Expected">Most likely healthy value.</param>
/// <param name="High">Upper end.</param>
/// <param name="Confidence">Share of healthy stoves inside, 0…1.</param>
/// <param name="Origin">Where it comes from: pattern, card, last visit.</param>
public sealed record Band(Observable Observable, double Low, double Expected, double High, double Confidence, string Origin);

/// <summary>How a reading stands to its band.</summary>
public enum Verdict
{
    /// <summary>Inside.</summary>
    In,
    /// <summary>A vacuum (or pressure) nearer to nought than it should be.</summary>
    TooWeak,
    /// <summary>A vacuum (or pressure) further from nought than it should be.</summary>
    TooStrong,
    /// <summary>Below the band.</summary>
    Low,
    /// <summary>Above the band.</summary>
    High,
}

/// <summary>A reading against its healthy band.</summary>
/// <param name="Evidence">Entry id of the reading.</param>
/// <param name="Reading">Value in SI.</param>
/// <param name="Band">The band.</param>
/// <param name="Verdict">How it stands.</param>
/// <param name="Epoch">Epoch of the reading; 0 is as found.</param>
public sealed record Comparison(string Evidence, double Reading, Band Band, Verdict Verdict, int Epoch);

/// <summary>A reading that the rest of the evidence contradicts.</summary>
/// <param name="Evidence">Entry id.</param>
/// <param name="Words">What was read and what the rest implies.</param>
/// <param name="Probability">Probability that this reading is grossly wrong.</param>
public sealed record DoubtfulReading(string Evidence, string Words, double Probability);

/// <summary>Suspects that the evidence does not separate, and the check that would.</summary>
/// <param name="Faults">Fault ids.</param>
/// <param name="Separator">Check id that would separate them, or null when none is known.</param>
public sealed record AlikeSet(IReadOnlyList<string> Faults, string? Separator);

/// <summary>A safety stop that a fact calls for.</summary>
/// <param name="Rule">Rule id.</param>
/// <param name="Words">What to do, imperative.</param>
/// <param name="Evidence">Entry id that triggered it.</param>
/// <param name="ReleasedBy">Who may release it.</param>
/// <param name="Source">Source of the threshold.</param>
public sealed record StandingStop(string Rule, string Words, string Evidence, string ReleasedBy, string Source);

/// <summary>The check recommended now, with what it costs and why.</summary>
/// <param name="Check">Check id.</param>
/// <param name="Name">What to do, in words.</param>
/// <param name="Cost">Expected cost of the check itself, in the firm's currency.</param>
/// <param name="Minutes">Minutes it takes.</param>
/// <param name="Because">Why this one.</param>
/// <param name="ExpectedTotal">Expected total cost until the stove provably runs when starting with it.</param>
/// <param name="Cautions">Cautions at this step.</param>
public sealed record RecommendedCheck(
    string Check, string Name, double Cost, double Minutes, string Because, double ExpectedTotal, IReadOnlyList<string> Cautions);

/// <summary>The next check and the best alternatives, or nothing left to do.</summary>
/// <param name="Best">The recommended check; null when the stove provably runs or nothing remains.</param>
/// <param name="Alternatives">The next best, up to two unless more were asked for.</param>
public sealed record NextCheck(RecommendedCheck? Best, IReadOnlyList<RecommendedCheck> Alternatives);
