using System.Globalization;
using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Rates;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>
/// The firm's own rates of causes and fouling: what its closed visits counted, given to diagnosis as counts. Diagnosis
/// alone decides how far counts move what was believed; each rate says on how many visits it rests.
/// </summary>
public static class FirmRates
{
    /// <summary>The rates by pattern, for the patterns the firm has seen.</summary>
    /// <param name="visits">Visits; only closed ones with conclusions count, and of these only breakdowns for causes.</param>
    public static IReadOnlyDictionary<string, PatternRates> Of(IEnumerable<VisitSummary> visits)
    {
        ArgumentNullException.ThrowIfNull(visits);
        var all = visits.ToArray();
        var minutes = Learning.Timed(all).ToDictionary(m => m.Work, m => new Rate(m.Median, string.Create(CultureInfo.InvariantCulture, $"based on {m.Times} of your visits")));
        return all.Where(v => v is { State: VisitState.SignedOff, Pattern: not null, Causes.Count: > 0 })
            .GroupBy(v => v.Pattern!).Where(g => Stove.Patterns.PatternLibrary.Find(g.Key)?.Id == g.Key)
            .ToDictionary(g => g.Key, g => Emberwright.Diagnosis.Rates.Learning.After(PatternRates.Of(g.Key), Counted(g.Key, [.. g])) with { Minutes = Of(g.Key, minutes) });
    }

    private static Dictionary<string, Rate> Of(string pattern, Dictionary<string, Rate> minutes)
    {
        var catalogue = Catalogue.For(pattern);
        return minutes.Where(m => catalogue.Check(m.Key) is not null || catalogue.Action(m.Key) is not null).ToDictionary();
    }

    /// <summary>The rates with what the firm's people put in the book in their place.</summary>
    /// <param name="learnt">What was learned.</param>
    /// <param name="book">The firm's book.</param>
    public static IReadOnlyDictionary<string, PatternRates> With(IReadOnlyDictionary<string, PatternRates> learnt, FirmBook book)
    {
        ArgumentNullException.ThrowIfNull(learnt);
        ArgumentNullException.ThrowIfNull(book);
        var rates = learnt.ToDictionary();
        foreach (var own in book.Rates.Where(r => r.Value is not null && Stove.Patterns.PatternLibrary.Find(r.Pattern)?.Id == r.Pattern))
            rates[own.Pattern] = rates.GetValueOrDefault(own.Pattern, PatternRates.Of(own.Pattern)).With(own.ToRates());
        return rates;
    }

    /// <summary>The rates as a file of priors, which the terminal's commands take.</summary>
    public static string Write(IReadOnlyDictionary<string, PatternRates> rates)
    {
        ArgumentNullException.ThrowIfNull(rates);
        return BodyWriter.Object(w =>
        {
            w.Text("format", RatesFile.Format);
            w.Number("version", 1);
            w.Member("patterns", all =>
            {
                foreach (var (pattern, own) in rates.OrderBy(r => r.Key, StringComparer.Ordinal))
                    all.Member(pattern, one =>
                    {
                        one.Member("faults", o => Write(o, "ratePercent", own.Faults.Select(f => (f.Key, f.Value))));
                        one.Member("fouling", o => Write(o, "perTonne", own.Fouling.Select(f => (EnumWords.Of(f.Key), f.Value))));
                        if (own.Minutes.Count > 0) one.Member("minutes", o => Write(o, "minutes", own.Minutes.Select(m => (m.Key, m.Value))));
                    });
            });
        });
    }

    private static void Write(BodyWriter w, string member, IEnumerable<(string Name, Rate Rate)> rates)
    {
        foreach (var (name, rate) in rates.Where(r => r.Rate.Value > 0).OrderBy(r => r.Name, StringComparer.Ordinal))
            w.Member(name, o =>
            {
                o.Number(member, Math.Max(1e-6, Math.Round(rate.Value, 6)));
                o.Text("origin", rate.Origin);
            });
    }

    private static ClosedVisits Counted(string pattern, VisitSummary[] visits)
    {
        var breakdowns = visits.Where(v => v.Kind == VisitKind.Breakdown).ToArray();
        return new(
            pattern, breakdowns.Length,
            breakdowns.SelectMany(Learning.Confirmed).Where(f => f != Suspect.Nothing).GroupBy(f => f).ToDictionary(g => g.Key, g => g.Count()),
            [
                .. visits.Where(v => v.Seen is { ReadAsFound: true, TonnesSince: > 0 })
                    .SelectMany(v => v.Seen!.Areas.Where(a => double.IsFinite(a.AsFound.Median)).Select(a => new FoulingFound(a.Parameter, Math.Clamp(a.AsFound.Median, 0, 0.98), v.Seen.TonnesSince!.Value))),
            ]);
    }
}
