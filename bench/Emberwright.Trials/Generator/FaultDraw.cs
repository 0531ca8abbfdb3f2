// Which faults does the next stove that is called about have, and how fouled is it?
// Equations: set of discrete faults by the weights of the hypotheses before any evidence; beside a pair, a third in proportion to
//            its rate with probability 0.1; restriction x = τ·E·e^(N(0, 0.3·k) − 0.045·k²), E ~ Exp(1), the last factor common to
//            all passages of a stove; a set is kept with probability Π (factor of each cause that is there)/(largest).
// Symbols: τ mean restriction in use, k mismatch.
// Validity: sets of up to three discrete faults.
// Assumptions: one fuel fouls everything at once more or less than usual, which the model does not know.
// Source: rates and factors are the catalogue's; the rest from memory, no source.
// Worked: k = 0: x is exponential with mean τ.
using System.Collections.Concurrent;
using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Inference;
using Emberwright.Stove;
using Emberwright.Stove.Faults;

namespace Emberwright.Trials.Generator;

/// <summary>What is wrong with a hidden stove.</summary>
/// <param name="Discrete">Discrete faults.</param>
/// <param name="Unlisted">True for a cause that no catalogue lists.</param>
/// <param name="Restriction">−ln of the share left open by dirt, per fouling parameter.</param>
internal sealed record FaultDraw(IReadOnlyList<Fault> Discrete, bool Unlisted, IReadOnlyDictionary<Parameter, double> Restriction)
{
    private const double ThirdFault = 0.1;
    private static readonly ConcurrentDictionary<string, (Fault[] Discrete, IReadOnlyList<Hypothesis> Hypotheses, double[] Weights)> Priors = new();

    /// <summary>Draws by the catalogue's priors.</summary>
    public static FaultDraw Of(StoveCase stove, Catalogue catalogue, Chance chance, double mismatch)
    {
        var (discrete, hypotheses, weights) = Priors.GetOrAdd(catalogue.PatternId, _ => PriorOf(catalogue));
        var hypothesis = hypotheses[chance.Pick(weights)];
        List<Fault> present = [.. hypothesis.Faults.Select(f => discrete[f])];
        if (present.Count == 2 && chance.Happens(ThirdFault))
        {
            var third = discrete[chance.Pick([.. discrete.Select(f => f.BaseRatePercent)])];
            if (!present.Contains(third)) present.Add(third);
        }

        // The faults stay; only the dirt is drawn again where it does not go with them, so that every fault keeps its rate.
        while (true)
        {
            var common = Math.Exp(chance.Normal(0, 0.3 * mismatch) - (0.045 * mismatch * mismatch));
            var restriction = PriorTable.Fouling
                .Where(p => PriorTable.PatternSd(p, stove) is not null)
                .ToDictionary(p => p, p => chance.Exponential(PriorTable.InUse(p, stove.History) * common));
            if (chance.Happens(Kept(present, restriction, catalogue))) return new FaultDraw(present, hypothesis.Kind == HypothesisKind.Unlisted, restriction);
        }
    }

    /// <summary>True when a fouling fault is past its limit, by the restriction of what it fouls.</summary>
    public static bool IsPast(FoulingLimit limit, double value) => value <= limit.Limit;

    private static (Fault[], IReadOnlyList<Hypothesis>, double[]) PriorOf(Catalogue catalogue)
    {
        Fault[] discrete = [.. catalogue.Faults.Where(f => f.Fouling is null)];
        var hypotheses = Hypothesis.All(discrete, [.. catalogue.Faults.Where(f => f.Fouling is not null)], isService: false);
        return (discrete, hypotheses, [.. hypotheses.Select(h => Math.Exp(h.LnPrior))]);
    }

    private static double Kept(IEnumerable<Fault> present, Dictionary<Parameter, double> restriction, Catalogue catalogue)
    {
        var kept = 1.0;
        foreach (var cause in present.SelectMany(f => f.CausedBy))
        {
            if (cause.Factor <= 1 || catalogue.Fault(cause.Fault)?.Fouling is not { } limit) continue;
            var value = limit.Parameter == Parameter.Insulation
                ? -PriorTable.InsulationPerRestriction * restriction.GetValueOrDefault(Parameter.Exchanger)
                : -restriction.GetValueOrDefault(limit.Parameter);
            if (!IsPast(limit, value)) kept /= cause.Factor;
        }

        return kept;
    }
}
