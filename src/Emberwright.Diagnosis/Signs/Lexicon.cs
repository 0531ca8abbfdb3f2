using System.Collections.Frozen;
using Emberwright.Diagnosis.Checks;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Signs;

/// <summary>
/// Maps people's own words to signs and actions of the catalogue: the customer's complaint, a question with its answer, a
/// thing looked at with what was seen, a deed. What it does not know stays a note, and it says so.
/// </summary>
public sealed class Lexicon
{
    private static readonly char[] Breaks = ['.', ',', ';', ':', '!', '?', '(', ')', '\n'];

    private static readonly FrozenDictionary<string, Lazy<Lexicon>> ByPattern =
        PatternIds.All.ToFrozenDictionary(id => id, id => new Lazy<Lexicon>(() => new Lexicon(Catalogue.For(id))));

    private const double AlarmLength = 4;

    private static readonly IReadOnlyList<string> Urgent = [Complaints.HopperSmoke, Complaints.CoAlarm, Complaints.PowerCutSmoke];

    private readonly List<(Sign Sign, Words Topic)> _topics = [];
    private readonly List<Phrase> _phrases = [];

    // Written with a plus: its parts may stand anywhere in the text, in any order.
    private readonly List<(Sign Sign, Outcome Outcome, Words[] Parts)> _scattered = [];
    private readonly Catalogue _catalogue;

    private Lexicon(Catalogue catalogue)
    {
        _catalogue = catalogue;
        foreach (var sign in catalogue.Signs)
        {
            foreach (var topic in sign.Topics ?? []) _topics.Add((sign, Words.Of(topic)));
            foreach (var outcome in sign.Outcomes)
            {
                var alone = outcome.Alone ?? [];
                foreach (var said in outcome.Synonyms)
                {
                    if (said.Contains('+')) _scattered.Add((sign, outcome, [.. said.Split('+').Select(Words.Of)]));
                    else _phrases.Add(new(sign, outcome, Words.Of(said), alone.Contains(said)));
                }
            }
        }
    }

    /// <summary>Reads a free text, such as a complaint.</summary>
    /// <param name="text">The text.</param>
    /// <param name="patternId">Pattern id.</param>
    /// <exception cref="Stove.InputException">The id names no pattern.</exception>
    public static LexiconReading Read(string text, string patternId)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Of(patternId).Read(null, text);
    }

    /// <summary>Reads a question with its answer, or a thing looked at with what was seen.</summary>
    /// <param name="what">The question, or what was looked at.</param>
    /// <param name="outcome">The answer, or what was seen.</param>
    /// <param name="patternId">Pattern id.</param>
    /// <exception cref="Stove.InputException">The id names no pattern.</exception>
    public static LexiconReading Read(string what, string outcome, string patternId)
    {
        ArgumentNullException.ThrowIfNull(what);
        ArgumentNullException.ThrowIfNull(outcome);
        return EarthWords.Read(what, outcome) is { } earth ? new LexiconReading([earth], []) : Of(patternId).Read(Words.Of(what), outcome);
    }

    /// <summary>Reads a deed; null when it is none of the catalogue's actions.</summary>
    /// <param name="text">What was done, in words.</param>
    /// <param name="patternId">Pattern id.</param>
    /// <exception cref="Stove.InputException">The id names no pattern.</exception>
    public static WorkAction? ReadAction(string text, string patternId)
    {
        ArgumentNullException.ThrowIfNull(text);
        var catalogue = Of(patternId)._catalogue;
        return ActionWords.Find(Words.Of(text), id => catalogue.Action(id) is not null) is { } found ? catalogue.Action(found) : null;
    }

    private static Lexicon Of(string patternId)
    {
        PatternIds.Require(patternId);
        return ByPattern[patternId].Value;
    }

    private LexiconReading Read(Words? what, string text)
    {
        var found = new Dictionary<string, Match>();
        var unused = new List<string>();
        var clauses = text.Split(Breaks, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        for (var c = 0; c < clauses.Length; c++)
        {
            var matches = Clause(what, Words.Of(clauses[c]), c).ToList();
            if (what is null) matches.AddRange(Alarms(Words.Of(clauses[c]), c));
            if (matches.Count == 0) unused.Add(clauses[c]);
            foreach (var match in matches) Keep(found, match);
        }

        foreach (var match in Clause(what, Words.Of(text), clauses.Length).Where(m => m.Alone && !found.ContainsKey(m.Sign))) found[match.Sign] = match;
        foreach (var match in Scattered(Words.Of(text), clauses.Length)) Keep(found, match);
        if (found.Count > 0 && clauses.Length > 0 && unused.Count == clauses.Length) unused.Clear();
        return new LexiconReading([.. found.Values.OrderBy(m => m.Clause).Select(m => new SignOutcome(m.Sign, m.Outcome))], unused);
    }

    private IEnumerable<Match> Scattered(Words text, int at) =>
        from p in _scattered
        where p.Parts.All(text.Say)
        select new Match(p.Sign.Id, p.Outcome.Id, p.Parts.Sum(w => w.Count) + 0.5, at, true, text.Has("now"), p.Outcome.Usual);

    private IEnumerable<Match> Clause(Words? what, Words clause, int at)
    {
        var here = Named(clause);
        var asked = here.Concat(what is null ? [] : Named(what)).Select(t => t.Sign.Id).ToHashSet();
        var now = clause.Has("now");
        foreach (var p in _phrases)
        {
            if (what is not null && p.Sign.Id == Complaints.Sign && !asked.Contains(Complaints.Sign)) continue;
            if (!p.Alone && !asked.Contains(p.Sign.Id)) continue;
            var length = p.Words.Count + (p.Alone ? 0.5 : 0);
            var said = p.Alone ? clause : here.Where(t => t.Sign == p.Sign && t.Topic.Count > 1).Aggregate(clause, (rest, t) => rest.Without(t.Topic));
            if (p.Words.IsParticle ? clause.Begin(p.Words) : said.Say(p.Words)) yield return new(p.Sign.Id, p.Outcome.Id, length, at, p.Alone, now, p.Outcome.Usual);
            else if (Other(p) is { } other && asked.Contains(p.Sign.Id) && !p.Words.IsParticle && said.Deny(p.Words)) yield return new(p.Sign.Id, other.Id, length - 0.5, at, false, now, other.Usual);
        }
    }

    /// <summary>What is left when one of two outcomes is denied; null where there are more.</summary>
    private static Outcome? Other(Phrase phrase) =>
        phrase.Sign.Outcomes.Count == 2 ? phrase.Sign.Outcomes.First(o => o.Id != phrase.Outcome.Id) : null;

    /// <summary>Alarms in a customer's own words; what is asked or looked at has its own words.</summary>
    private static IEnumerable<Match> Alarms(Words clause, int at) =>
        AlarmWords.In(clause).Select(a => new Match(a.Sign, a.Outcome, AlarmLength, at, true, false, 0));

    /// <summary>Signs whose topic is named, leaving out topics that are only part of a longer one ("hose" in "outside-air hose").</summary>
    private List<(Sign Sign, Words Topic)> Named(Words text)
    {
        var said = _topics.Where(t => text.Say(t.Topic)).ToList();
        return [.. said.Where(t => !said.Any(longer => longer.Sign != t.Sign && t.Topic.IsPartOf(longer.Topic)))];
    }

    private static void Keep(Dictionary<string, Match> found, Match match)
    {
        if (!found.TryGetValue(match.Sign, out var before) || Outranks(match, before)) found[match.Sign] = match;
    }

    private static bool Outranks(Match a, Match b)
    {
        if (a.Sign == Complaints.Sign)
        {
            var (urgentA, urgentB) = (Urgent.Contains(a.Outcome), Urgent.Contains(b.Outcome));
            if (urgentA != urgentB) return urgentA;
            if (a.Now != b.Now) return a.Now;
            if (a.Outcome == Complaints.Due || b.Outcome == Complaints.Due) return b.Outcome == Complaints.Due;
            if (a.Clause != b.Clause && b.Outcome is not (Complaints.AlarmShown or Complaints.Noise or Complaints.Due)) return false;
        }

        return a.Length > b.Length || a.Length == b.Length && a.Usual < b.Usual;
    }

    private sealed record Phrase(Sign Sign, Outcome Outcome, Words Words, bool Alone);

    private sealed record Match(string Sign, string Outcome, double Length, int Clause, bool Alone, bool Now, double Usual);
}

/// <summary>What a text says in the catalogue's terms.</summary>
/// <param name="Found">Signs with their outcomes, at most one outcome a sign, in the order of the text.</param>
/// <param name="Unused">Parts of the text that say nothing to the catalogue; they stay notes.</param>
public sealed record LexiconReading(IReadOnlyList<SignOutcome> Found, IReadOnlyList<string> Unused);

/// <summary>A sign with the outcome it had.</summary>
/// <param name="Sign">Id of the sign.</param>
/// <param name="Outcome">Id of the outcome.</param>
public readonly record struct SignOutcome(string Sign, string Outcome);
