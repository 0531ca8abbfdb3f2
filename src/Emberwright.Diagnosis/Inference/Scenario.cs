using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>One way things may stand now: a set of faults, discrete ones and fouling past its limit, with its probability.</summary>
/// <param name="Faults">Ids of all faults present now; empty when nothing listed is wrong.</param>
/// <param name="Weight">Probability, 0…1.</param>
/// <param name="IsUnlisted">True when the cause is one that the catalogue does not list.</param>
/// <param name="Candidate">The component it comes from, the heaviest where several give the same faults.</param>
/// <param name="Discrete">The discrete faults among them.</param>
/// <param name="Fouled">The foulings among them, a bit for each.</param>
internal sealed record Scenario(
    IReadOnlyList<string> Faults, double Weight, bool IsUnlisted, Candidate Candidate, IReadOnlyList<Fault> Discrete, ulong Fouled)
{
    /// <summary>Position of the vacuum switch with the blower on, where it has been supposed; else null.</summary>
    public bool? SwitchClosed { get; init; }

    /// <summary>Splits a mixture by what is wrong now; components with the same faults are joined.</summary>
    /// <param name="file">The case.</param>
    /// <param name="candidates">Components with normalised weights.</param>
    /// <param name="least">Components lighter than this are left out.</param>
    /// <param name="most">Number of scenarios kept.</param>
    public static IReadOnlyList<Scenario> Split(CaseFile file, IReadOnlyList<Candidate> candidates, double least, int most)
    {
        var now = file.Plan.Now;
        var found = new Dictionary<string, (Scenario Scenario, double Heaviest)>(StringComparer.Ordinal);
        var order = new List<string>();
        foreach (var candidate in candidates)
        {
            if (candidate.Weight < least) continue;
            var discrete = file.Present(candidate.Hypothesis.Faults, now);
            var byFouling = new SortedDictionary<ulong, double>();
            for (var m = 0; m < candidate.States.Masks.Length; m++)
            {
                var fouled = candidate.FouledIn(file, candidate.States.Masks[m], now);
                byFouling[fouled] = byFouling.GetValueOrDefault(fouled) + candidate.Weight * candidate.Stated.Weights[m];
            }
            foreach (var (fouled, weight) in byFouling)
            {
                if (weight < least) continue;
                string[] ids =
                [
                    .. discrete.Select(f => f.Id),
                    .. file.Fouling.Where((_, f) => (fouled >> f & 1) != 0).Select(f => f.Id),
                ];
                var key = string.Join('+', ids) + (candidate.IsUnlisted ? "?" : "");
                if (!found.TryGetValue(key, out var known))
                {
                    order.Add(key);
                    found.Add(key, (new Scenario(ids, weight, candidate.IsUnlisted, candidate, discrete, fouled), weight));
                    continue;
                }
                var heavier = weight > known.Heaviest;
                found[key] = (
                    known.Scenario with { Weight = known.Scenario.Weight + weight, Candidate = heavier ? candidate : known.Scenario.Candidate },
                    Math.Max(weight, known.Heaviest));
            }
        }
        var kept = order.Select((key, k) => (found[key].Scenario, k)).OrderByDescending(x => x.Scenario.Weight).ThenBy(x => x.k).Take(most).Select(x => x.Scenario).ToArray();
        var total = kept.Sum(s => s.Weight);
        return [.. kept.Select(s => s with { Weight = s.Weight / total })];
    }
}
