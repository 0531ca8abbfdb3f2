// What do the codes, counters and settings that a board shows say of the stove?
// Codes: by the card. Counters: failed ÷ starts since the last service, or of at most 150 starts in all; hours ÷ starts; igniter's
//   starts and blowers' hours against what such parts last. Settings: value against the card's, step by step.
// Symbols: starts and failed starts (–), hours (h).
// Validity: as found, before any work; a counter without its partner, a code or a setting that no card lists, stays what it is.
// Assumptions: limits are those in the words of the signs (from memory, no source).
// Source: common practice, no source.
// Worked: 9 failed of 52 starts: 17 %, some.

using System.Globalization;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Patterns;

namespace Emberwright.Diagnosis.Signs;

/// <summary>Turns what the board itself keeps and shows into signs.</summary>
internal static class StoveRecord
{
    private const double FewStartsInAll = 150;

    /// <summary>The evidence with the signs that codes, counters and settings amount to in place of them.</summary>
    public static IReadOnlyList<Evidence> Judged(IReadOnlyList<Evidence> evidence, StoveCase stove)
    {
        if (!evidence.Any(e => e is CodeEvidence or CounterEvidence or ParameterEvidence)) return evidence;
        var counters = evidence.OfType<CounterEvidence>().Where(c => c.Epoch == 0).GroupBy(c => c.Counter).ToDictionary(g => g.Key, g => g.Last());
        var signs = evidence.SelectMany(e => e switch
        {
            CodeEvidence code => Code(code, stove),
            CounterEvidence counter => Counter(counter, counters),
            ParameterEvidence setting => Setting(setting, stove),
            _ => [],
        }).Concat(Settings(evidence, stove)).ToList();
        // What somebody has answered in words is not said twice.
        var said = evidence.OfType<SignEvidence>().Select(s => (s.Sign, s.Epoch)).ToHashSet();
        signs = [.. signs.Where(s => !said.Contains((s.Sign, s.Epoch))).DistinctBy(s => (s.Sign, s.Epoch, s.Outcome))];
        var used = signs.Select(s => s.Id).ToHashSet();
        return [.. evidence.Where(e => e is not (CodeEvidence or CounterEvidence or ParameterEvidence) || !used.Contains(e.Id)), .. signs];
    }

    private static IEnumerable<SignEvidence> Code(CodeEvidence code, StoveCase stove)
    {
        var meaning = CodeBook.Read(code.Code, stove.Card);
        // A display may show plain words instead of a code; they need no card.
        var words = meaning.Source switch { CodeSource.OnCard => meaning.Words!, CodeSource.NoCard => code.Code, CodeSource.NotOnCard => null };
        if (words is null) yield break;
        var outcome = meaning.Alarm ?? Lexicon.Read("alarm shown", words, stove.Pattern.Id).Found.Where(f => f.Sign == "code").Select(f => f.Outcome).FirstOrDefault();
        if (outcome is not null) yield return new SignEvidence(code.Id, code.Epoch, "code", outcome);
    }

    private static IEnumerable<SignEvidence> Counter(CounterEvidence counter, Dictionary<string, CounterEvidence> all)
    {
        double? Of(string id) => all.TryGetValue(id, out var found) ? found.Value : null;
        SignEvidence Say(string sign, string outcome) => new(counter.Id, counter.Epoch, sign, outcome);
        if (counter.Epoch != 0 || all[counter.Counter] != counter) yield break;
        switch (counter.Counter)
        {
            case Counters.FailedSinceService when Of(Counters.StartsSinceService) is { } starts and > 0:
                yield return Say(StoveCounters.Failed, Share(counter.Value, starts));
                break;
            case Counters.FailedStarts when Of(Counters.FailedSinceService) is null && Of(Counters.Starts) is { } starts and > 0 and <= FewStartsInAll:
                yield return Say(StoveCounters.Failed, Share(counter.Value, starts));
                break;
            case Counters.Starts:
                yield return Say(StoveCounters.IgniterStarts, counter.Value < 700 ? "few" : counter.Value <= 2000 ? "usual" : "many");
                break;
            case Counters.HoursSinceService when Of(Counters.StartsSinceService) is { } starts and > 0:
                yield return Say(StoveCounters.RunLength, Length(counter.Value / starts));
                break;
            case Counters.Hours:
                yield return Say(StoveCounters.RunHours, counter.Value < 4000 ? "few" : counter.Value <= 10_000 ? "usual" : "many");
                if (Of(Counters.HoursSinceService) is null && Of(Counters.Starts) is { } inAll and > 0) yield return Say(StoveCounters.RunLength, Length(counter.Value / inAll));
                break;
            default:
                break;
        }
    }

    private static IEnumerable<SignEvidence> Setting(ParameterEvidence setting, StoveCase stove)
    {
        if (Proper(setting, stove) is not { Changes: { } effect } proper || Steps(setting, proper) is not { } steps) yield break;
        var more = steps * proper.PercentPerStep;
        yield return new SignEvidence(setting.Id, setting.Epoch, effect == ParameterEffect.Feed ? StoveCounters.FeedTrim : StoveCounters.BlowerTrim,
            more == 0 ? "as-card" : more > 0 ? "above" : "below");
    }

    // Right only once every setting the card lists has been read; one that differs is enough for wrong.
    private static IEnumerable<SignEvidence> Settings(IReadOnlyList<Evidence> evidence, StoveCase stove)
    {
        var read = evidence.OfType<ParameterEvidence>().Where(p => Proper(p, stove) is not null).ToList();
        if (read.FirstOrDefault(p => !IsSame(p.Value, Proper(p, stove)!.Value)) is { } wrong)
            yield return new SignEvidence(wrong.Id, wrong.Epoch, StoveCounters.Settings, "changed");
        else if (read.Count > 0 && stove.Card!.Parameters.All(proper => read.Any(p => IsNamed(proper, p))))
            yield return new SignEvidence(read[0].Id, read[0].Epoch, StoveCounters.Settings, "right");
    }

    private static CardParameter? Proper(ParameterEvidence setting, StoveCase stove) => stove.Card?.Parameters.FirstOrDefault(p => IsNamed(p, setting));

    private static bool IsNamed(CardParameter proper, ParameterEvidence setting) => string.Equals(proper.Name.Trim(), setting.Parameter.Trim(), StringComparison.OrdinalIgnoreCase);

    private static double? Steps(ParameterEvidence setting, CardParameter proper) =>
        Number(setting.Value) is { } found && Number(proper.Value) is { } right ? Math.Round(found - right, 9) : null;

    private static bool IsSame(string found, string right) => Number(found) is { } a && Number(right) is { } b
        ? Math.Abs(a - b) < 1e-9
        : string.Equals(found.Trim(), right.Trim(), StringComparison.OrdinalIgnoreCase);

    private static double? Number(string text) =>
        double.TryParse(text.Trim().Replace('−', '-'), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? value : null;

    private static string Share(double failed, double starts) => CounterSymptoms.Class(failed, starts) switch { 0 => "few", 1 => "some", _ => "many" };

    private static string Length(double hours) => hours < 1.5 ? "short" : hours <= 12 ? "usual" : "long";
}
