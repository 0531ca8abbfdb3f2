using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Inference;
using Emberwright.Stove;
using Emberwright.Stove.Patterns;
using Emberwright.Trials.Generator;
using Emberwright.Trials.Sampling;
using Xunit;

namespace Emberwright.Trials.Tests.Sampling;

/// <summary>
/// Simulation-based calibration: of stoves drawn from the prior, the rank of the truth among the posterior's draws is spread
/// evenly. Source: Talts, Betancourt, Simpson, Vehtari and Gelman (2018), Validating Bayesian inference algorithms with
/// simulation-based calibration, arXiv 1804.06788.
/// </summary>
public class RankTests
{
    private const int Stoves = 240;
    private const int Drawn = 1999;
    private const int Bins = 10;

    // χ² with 9 degrees of freedom: 33.7 is passed once in ten thousand (tables). What is added is play for the normal
    // approximation and for draws that are the same numbers in every case: a share of 0.10 may be 0.08 or 0.12 in every bin.
    private const double Allowed = 33.7 + Stoves * 0.04;

    private static readonly Observable[] Read =
    [
        .. from state in new[] { Condition.FanOnly, Condition.DoorOpen, Condition.IntakeStopped }
           from port in new[] { Places.Firebox, Places.BlowerInlet, Places.Collar }
           select new Observable(Measure.Pressure, port, state),
        new(Measure.Oxygen, Places.Flue, Condition.HighBurn), new(Measure.Temperature, Places.Collar, Condition.HighBurn),
    ];

    [Fact]
    public void The_truth_has_any_rank_among_the_draws_of_every_unknown()
    {
        var stove = FixedCases.Stove(DamperInsert.Pattern.Id, 0);
        var counts = new Dictionary<string, int[]>();
        for (var k = 0; k < Stoves; k++)
        {
            var chance = Chance.Of("rank", k);
            var (truth, open, layout) = FixedCases.Sound(stove, Read, chance);
            var hypothesis = Hypothesis.All(open.File.Discrete, open.File.Fouling, isService: false).First(h => h.Kind == HypothesisKind.Nothing);
            var candidate = new CandidateBuilder(open.File, open.Library).Build(hypothesis, open.Library.FitNothing());
            candidate.Weight = 1;
            var draws = Draws.From(open.File, open.Library, [candidate], Drawn).ToArray();
            Assert.Equal(Drawn, draws.Length);
            for (var u = 0; u < layout.Count; u++)
            {
                var below = draws.Count(d => d.Unknowns[u] < truth[u]);
                var unknown = layout.Unknowns[u];
                var name = $"{unknown.Kind} {unknown.Parameter} {unknown.Measure} {unknown.Place}";
                if (!counts.TryGetValue(name, out var bins)) counts[name] = bins = new int[Bins];
                bins[below * Bins / (Drawn + 1)]++;
            }
        }

        var expected = (double)Stoves / Bins;
        var uneven = counts.Select(c => (c.Key, Chi2: c.Value.Sum(n => (n - expected) * (n - expected) / expected), c.Value)).OrderByDescending(c => c.Chi2).ToArray();
        foreach (var (name, chi2, bins) in uneven) TestContext.Current.TestOutputHelper?.WriteLine($"{name}: {chi2:0.0}  {string.Join(' ', bins)}");
        Assert.True(uneven[0].Chi2 <= Allowed, $"{uneven[0].Key}: χ² {uneven[0].Chi2:0.0} from {string.Join(' ', uneven[0].Value)}");
    }
}
