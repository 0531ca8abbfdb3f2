// Question:    which sets of discrete faults are considered, and how probable is each before any evidence?
// Equations:   weight(nothing) = Σ rates of fouling/φ + 4, φ = 1/3, weight(i) = rate_i, weight(i, j) = ρ·rate_i·rate_j/Σ, ρ = 0.5,
//              weight(i, j, k) = ρ²·rate_i·rate_j·rate_k/Σ² where three are considered at all; weight(unlisted) = 5 % of the whole;
//              then all but the threes are made to sum to 1.
// Symbols:     rate in % of breakdown calls; Σ the sum of all rates. Fouling is not a hypothesis of its own: it is a
//              continuous unknown of every hypothesis.
// Validity:    at most three discrete faults at once; threes only where evidence calls for them (Triples), so that their share of
//              the prior, a few per cent of the pairs', is left out of the sum.
// Assumptions: a second fault is half as frequent beside a first as its rate among breakdowns says, since one fault is
//              enough for a call. On a routine service nothing is wrong in most cases. Rates of fouling are shares of calls;
//              of the stoves without a discrete fault about one in three is fouled past a limit (φ) when it is looked at, so
//              that with the fuel burned since its last service the share of calls that cleaning cures follows.
// Source:      from memory, no source.
// Worked:      by hand in the tests.
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Inference;

/// <summary>What a hypothesis supposes.</summary>
internal enum HypothesisKind
{
    /// <summary>No discrete fault; fouling may still be past its limits.</summary>
    Nothing,
    /// <summary>One discrete fault.</summary>
    Single,
    /// <summary>Two discrete faults.</summary>
    Pair,
    /// <summary>Three discrete faults.</summary>
    Triple,
    /// <summary>A cause that is not listed.</summary>
    Unlisted,
}

/// <summary>A set of discrete faults.</summary>
/// <param name="Kind">Nothing, single, pair, triple or unlisted.</param>
/// <param name="Faults">Indices of the faults into the case's discrete faults, rising.</param>
/// <param name="LnPrior">ln of its probability before any evidence.</param>
internal sealed record Hypothesis(HypothesisKind Kind, int[] Faults, double LnPrior)
{
    /// <summary>Probability, before any evidence, of a cause that is not listed.</summary>
    public const double UnlistedShare = 0.05;

    private const double SoundRate = 4;
    private const double SecondFault = 0.5;
    private const double ServiceFactor = 12;
    private const double FouledShare = 1.0 / 3;

    /// <summary>All hypotheses over a list of discrete faults: nothing, unlisted, singles, pairs.</summary>
    /// <param name="discrete">Discrete faults of the pattern.</param>
    /// <param name="fouling">Fouling faults of the pattern.</param>
    /// <param name="isService">True on a routine service.</param>
    public static IReadOnlyList<Hypothesis> All(IReadOnlyList<Fault> discrete, IReadOnlyList<Fault> fouling, bool isService)
    {
        var n = discrete.Count;
        var none = fouling.Sum(f => f.BaseRatePercent) / FouledShare + SoundRate;
        var rates = discrete.Select(Rate).ToArray();
        var sum = none + rates.Sum();
        if (isService) none *= ServiceFactor;
        var pairs = 0.0;
        for (var i = 0; i < n; i++)
            for (var j = 0; j < i; j++) pairs += Together(discrete[i], discrete[j]) * rates[i] * rates[j] / sum;
        var total = (none + rates.Sum() + pairs) / (1 - UnlistedShare);

        var all = new List<Hypothesis>(2 + n + n * (n - 1) / 2)
        {
            new(HypothesisKind.Nothing, [], Math.Log(none / total)),
            new(HypothesisKind.Unlisted, [], Math.Log(UnlistedShare)),
        };
        for (var i = 0; i < n; i++) all.Add(new(HypothesisKind.Single, [i], Math.Log(rates[i] / total)));
        for (var i = 0; i < n; i++)
            for (var j = i + 1; j < n; j++)
                if (discrete[i].Id != discrete[j].Id) all.Add(new(HypothesisKind.Pair, [i, j], Math.Log(Together(discrete[i], discrete[j]) * rates[i] * rates[j] / sum / total)));
        return all;
    }

    /// <summary>Three faults at once; null where two of them are one.</summary>
    /// <param name="discrete">Discrete faults of the pattern.</param>
    /// <param name="all">All hypotheses up to pairs.</param>
    /// <param name="faults">The three, rising.</param>
    public static Hypothesis? Three(IReadOnlyList<Fault> discrete, IReadOnlyList<Hypothesis> all, int[] faults)
    {
        var (a, b, c) = (discrete[faults[0]], discrete[faults[1]], discrete[faults[2]]);
        var together = Together(a, b) * Together(a, c) * Together(b, c) / SecondFault;
        if (together == 0) return null;
        // Prior of a single over its rate: the whole weight of the list; the rates' own sum is that of All.
        var alone = all.First(h => h.Kind == HypothesisKind.Single);
        var whole = Math.Exp(alone.LnPrior) / Rate(discrete[alone.Faults[0]]);
        var sum = Sum(all, discrete, whole);
        return new Hypothesis(HypothesisKind.Triple, faults, Math.Log(together * Rate(a) * Rate(b) * Rate(c) / (sum * sum) * whole));
    }

    private static double Rate(Fault fault) => Math.Max(fault.BaseRatePercent, 1e-3);

    // The sum of all rates, from any pair's prior, which has it as its divisor.
    private static double Sum(IReadOnlyList<Hypothesis> all, IReadOnlyList<Fault> discrete, double whole)
    {
        var pair = all.First(h => h.Kind == HypothesisKind.Pair);
        var (a, b) = (discrete[pair.Faults[0]], discrete[pair.Faults[1]]);
        return Together(a, b) * Rate(a) * Rate(b) * whole / Math.Exp(pair.LnPrior);
    }

    // One fault is not two: it outlasted its cure or it did not.
    private static double Together(Fault a, Fault b) => a.Id == b.Id ? 0 : SecondFault * Factor(a, b.Id) * Factor(b, a.Id);

    private static double Factor(Fault fault, string cause)
    {
        foreach (var c in fault.CausedBy)
        {
            if (c.Fault == cause) return c.Factor;
        }
        return 1;
    }
}
