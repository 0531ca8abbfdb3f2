// Question:    which suspects does the evidence not separate, and which check would?
// Equations:   two suspects are alike when both are plausible (≥ 8 %, or ≥ 1 % beside one that stands out), they explain instead of
//              accompany each other (P(both) < ½·min), and the evidence has raised them alike: P/P₀ differ by less than a factor
//              of e^1.1 = 3. One that stands at 97 % because it is more often met stays in its set;
//              a check separates as far as its outcomes differ: total variation ½Σ|P_A − P_B| for signs,
//              2Φ(|μ_A − μ_B|/2s) − 1 for a number, on average over all pairs of the set, Σ p_A·p_B·d_AB/Σ p_A·p_B.
// Symbols:     P probability now, P₀ before any evidence.
// Validity:    any number of suspects; sets are the connected groups.
// Assumptions: a suspect's predictions are those of its heaviest scenario.
// Source:      total variation distance, textbook.
// Worked:      by hand in the tests.
using Emberwright.Diagnosis.Checks;

namespace Emberwright.Diagnosis.Inference;

/// <summary>Finds suspects that the evidence does not separate.</summary>
internal static class AlikeSets
{
    private const double Plausible = 0.08;
    private const double Possible = 0.01;
    private const double StandsOut = 0.5;
    private const double LnAlike = 1.1;
    private const double WorthNaming = 0.3;

    /// <summary>Groups of alike suspects with the check that separates each best, in slices of one check; the last is the answer.</summary>
    public static IEnumerable<IReadOnlyList<AlikeSet>?> Steps(
        IReadOnlyList<Suspect> suspects, Posterior posterior, Catalogue catalogue, IReadOnlyList<Evidence> evidence)
    {
        var sets = new List<AlikeSet>();
        foreach (var ids in Groups(suspects, posterior))
        {
            string? separator = null;
            foreach (var best in Separators(ids, posterior, catalogue, evidence))
            {
                separator = best;
                yield return null;
            }
            sets.Add(new AlikeSet(ids, separator));
        }
        yield return sets;
    }

    private static IEnumerable<string[]> Groups(IReadOnlyList<Suspect> suspects, Posterior posterior)
    {
        var open = suspects.Where(s => s.Probability >= Possible && s.Fault is not (Suspect.Nothing or Suspect.Unlisted)).ToArray();
        var group = Enumerable.Range(0, open.Length).ToArray();
        for (var a = 0; a < open.Length; a++)
        {
            for (var b = 0; b < a; b++)
            {
                if (!Alike(open[a], open[b], posterior)) continue;
                var (from, to) = (group[a], group[b]);
                for (var k = 0; k < group.Length; k++)
                    if (group[k] == from) group[k] = to;
            }
        }
        return open.Select((s, k) => (s.Fault, Group: group[k]))
            .GroupBy(x => x.Group)
            .Where(g => g.Count() > 1)
            .Select(g => g.Select(x => x.Fault).ToArray());
    }

    private static bool Alike(Suspect a, Suspect b, Posterior posterior)
    {
        var (most, least) = (Math.Max(a.Probability, b.Probability), Math.Min(a.Probability, b.Probability));
        if (least < Plausible && most < StandsOut) return false;
        var both = posterior.Scenarios.Where(s => s.Faults.Contains(a.Fault) && s.Faults.Contains(b.Fault)).Sum(s => s.Weight);
        return both < 0.5 * Math.Min(a.Probability, b.Probability) && Math.Abs(LnRaised(a) - LnRaised(b)) < LnAlike;
    }

    private static double LnRaised(Suspect suspect) => Math.Log(Math.Max(suspect.Probability, 1e-6) / Math.Max(suspect.Prior, 1e-6));

    /// <summary>The best separator so far, check by check.</summary>
    private static IEnumerable<string?> Separators(string[] ids, Posterior posterior, Catalogue catalogue, IReadOnlyList<Evidence> evidence)
    {
        var heavy = ids.Select(id => posterior.Scenarios.FirstOrDefault(s => s.Faults.Contains(id))).OfType<Scenario>().Distinct().ToArray();
        if (heavy.Length < 2) yield break;
        string? best = null;
        var most = 0.0;
        foreach (var check in catalogue.Checks)
        {
            if (check.Action is not null || Done(check, evidence)) continue;
            var value = Separation(check, heavy, posterior, catalogue);
            if (value >= WorthNaming && value / Math.Sqrt(check.Minutes + 3) > most) (best, most) = (check.Id, value / Math.Sqrt(check.Minutes + 3));
            yield return best;
        }
    }

    private static bool Done(Check check, IReadOnlyList<Evidence> evidence) =>
        check.Signs.Any(s => evidence.OfType<SignEvidence>().Any(e => e.Sign == s))
        || check.Reads.Count > 0 && check.Reads.All(r => evidence.OfType<ReadingEvidence>().Any(e => e.Observable == r));

    private static double Separation(Check check, Scenario[] scenarios, Posterior posterior, Catalogue catalogue)
    {
        var most = 0.0;
        foreach (var sign in check.Signs.Select(catalogue.Sign).OfType<Signs.Sign>())
            most = Math.Max(most, Mean(scenarios, (a, b) => 0.5 * Enumerable.Range(0, sign.Outcomes.Count)
                .Sum(o => Math.Abs(posterior.Probability(a, sign.Id, o) - posterior.Probability(b, sign.Id, o)))));
        foreach (var read in check.Reads)
            most = Math.Max(most, Mean(scenarios, (a, b) => Distance(posterior.Predict(a, read), posterior.Predict(b, read))));
        return most;
    }

    private static double Mean(Scenario[] scenarios, Func<Scenario, Scenario, double> distance)
    {
        var (sum, all) = (0.0, 0.0);
        for (var a = 0; a < scenarios.Length; a++)
        {
            for (var b = 0; b < a; b++)
            {
                var weight = scenarios[a].Weight * scenarios[b].Weight;
                sum += weight * distance(scenarios[a], scenarios[b]);
                all += weight;
            }
        }
        return all > 0 ? sum / all : 0;
    }

    private static double Distance((double Mean, double Variance) a, (double Mean, double Variance) b)
    {
        if (double.IsNaN(a.Mean) || double.IsNaN(b.Mean)) return 0;
        if (!double.IsFinite(a.Mean) || !double.IsFinite(b.Mean)) return double.IsFinite(a.Mean) == double.IsFinite(b.Mean) ? 0 : 1;
        return 2 * Normal.Below(Math.Abs(a.Mean - b.Mean) / (2 * Math.Sqrt(0.5 * (a.Variance + b.Variance)))) - 1;
    }
}
