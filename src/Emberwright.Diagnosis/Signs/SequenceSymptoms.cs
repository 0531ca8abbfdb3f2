// Question:    what does the customer tell, and which alarm shows, when the burn sequence already knows how a start ends with a fault?
// Equation:    w_stop = Σ_{o ≠ runs} e(o);  w_run = e(runs)·(T_run + 0.05);  both divided by their sum, since only who calls is heard;
//              P(c | o) = 0.85·[c is o's word] + 0.14·T(c), after the share T(alarm) that tells of the alarm where one is shown;
//              P(code a) = 0.85·f(a)/(w_stop + w_run) + 0.14·T(a); what is left goes to the usual.
// Symbols:     e(o) share of starts that end as o, f(a) share that end with alarm a (BurnOddsTable); T(c) the catalogue's stated
//              probability of c, T_run that of all complaints of a stove that runs.
// Validity:    faults that stop at least one start in twenty; the stated probabilities hold for all others: what is complained of
//              there is no stop that the sequence knows (a smell, a noise, a contact that comes and goes).
// Assumptions: six customers in seven tell the stop as it was; somebody whose stove runs calls as often as the catalogue has
//              complaints of a running stove, and one time in twenty besides (from memory, no source).
// Source:      total probability.
// Worked:      e(no-feed) .6, e(runs) .4, nothing stated: w_run .02, P(no-feed) = .85·.6/.62 = .823.
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Signs;

/// <summary>Puts what the burn sequence computes in place of a fault's stated complaints and alarms, where the sequence reaches.</summary>
internal static class SequenceSymptoms
{
    private const string Code = "code";
    private const string NoCode = "none";
    private const double Least = 0.05;
    internal const double AsItWas = 0.85;
    private const double AsStated = 0.14;
    private const double Negligible = 1e-3;
    private const double CallsAnyway = 0.05;

    /// <summary>The fault with computed complaints and alarms, or as it stands.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="patternId">The pattern it is on.</param>
    public static Fault Of(Fault fault, string patternId)
    {
        if (BurnOddsTable.Of(patternId, fault.Id) is not { } odds) return fault;
        if (1 - Share(odds, BurnOutcome.Runs) < Least) return fault;
        return fault with
        {
            Symptoms =
            [
                .. fault.Symptoms.Where(s => s.Sign is not (Complaints.Sign or Code)),
                .. Told(fault, odds, patternId), .. Shown(fault, odds, patternId),
            ],
        };
    }

    private static IEnumerable<Symptom> Told(Fault fault, BurnOdds odds, string patternId)
    {
        var stated = Stated(fault, Complaints.Sign);
        var ends = Word.Values.ToHashSet();
        var running = stated.Where(s => !ends.Contains(s.Key) && s.Key != Complaints.AlarmShown).ToDictionary();
        var (stops, runs) = Callers(fault, odds);
        var alarmed = odds.Alarms.Where(a => IsShown(patternId, a.Key)).Sum(a => a.Value) > 0 ? stated.GetValueOrDefault(Complaints.AlarmShown) : 0;
        var told = new Dictionary<string, double>();
        void Add(string complaint, double probability) => told[complaint] = told.GetValueOrDefault(complaint) + probability;

        if (alarmed > 0) Add(Complaints.AlarmShown, stops * alarmed * (AsItWas + AsStated));
        foreach (var (outcome, complaint) in Word)
            Add(complaint, stops * (1 - alarmed) * AsItWas * Share(odds, outcome) / (1 - Share(odds, BurnOutcome.Runs)));
        foreach (var (complaint, probability) in stated) Add(complaint, stops * (1 - alarmed) * AsStated * probability);
        foreach (var (complaint, probability) in running) Add(complaint, runs * probability / (running.Values.Sum() + CallsAnyway));
        return told.Where(t => t.Value > Negligible).Select(t => new Symptom(Complaints.Sign, t.Key, t.Value));
    }

    private static IEnumerable<Symptom> Shown(Fault fault, BurnOdds odds, string patternId)
    {
        var stated = Stated(fault, Code);
        var (stops, _) = Callers(fault, odds);
        var share = stops / (1 - Share(odds, BurnOutcome.Runs));
        var shown = odds.Alarms.Where(a => IsShown(patternId, a.Key)).ToDictionary(a => a.Key, a => a.Value * share);
        shown[NoCode] = Math.Max(0, 1 - shown.Values.Sum());
        return shown.Keys.Union(stated.Keys)
            .Select(alarm => new Symptom(Code, alarm, AsItWas * shown.GetValueOrDefault(alarm) + AsStated * stated.GetValueOrDefault(alarm)))
            .Where(s => s.Probability > Negligible);
    }

    // Shares of those who call: stoves that stop, stoves that run.
    private static (double Stops, double Runs) Callers(Fault fault, BurnOdds odds)
    {
        var ends = Word.Values.ToHashSet();
        var complains = Stated(fault, Complaints.Sign).Where(s => !ends.Contains(s.Key) && s.Key != Complaints.AlarmShown).Sum(s => s.Value);
        var runs = Share(odds, BurnOutcome.Runs);
        var all = 1 - runs + runs * (complains + CallsAnyway);
        return ((1 - runs) / all, runs * (complains + CallsAnyway) / all);
    }

    /// <summary>What the customer says of each way a start ends; a stove that runs has none.</summary>
    internal static IReadOnlyDictionary<BurnOutcome, string> Word { get; } = new Dictionary<BurnOutcome, string>
    {
        [BurnOutcome.Dead] = Complaints.Dead,
        [BurnOutcome.NeverStarts] = Complaints.AutomaticOnly,
        [BurnOutcome.NoFeed] = Complaints.NoFeed,
        [BurnOutcome.NeverLights] = Complaints.NoLight,
        [BurnOutcome.LightsThenStops] = Complaints.StopsProving,
        [BurnOutcome.StopsLater] = Complaints.StopsLater,
    };

    private static bool IsShown(string patternId, string alarm) => ProgramLibrary.For(patternId).Codes.Any(c => c.Id == alarm);

    private static double Share(BurnOdds odds, BurnOutcome outcome) => odds.Frequency.GetValueOrDefault(outcome);

    private static Dictionary<string, double> Stated(Fault fault, string sign) =>
        fault.Symptoms.Where(s => s.Sign == sign).ToDictionary(s => s.Outcome, s => s.Probability);
}
