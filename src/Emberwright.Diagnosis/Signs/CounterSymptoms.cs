// Question:    what do a stove's own counters and settings show when a fault has been there for its last few starts?
// Equation:    failed ~ Bin(n, p₀) + Bin(min(m, n), q), m geometric with mean M; a share below 1/20 is few, above 1/5 many.
//              Settings: P(above) = Φ((μ − h)/σ), P(below) = Φ((−h − μ)/σ) for a fault that works through a setting.
//              Wear: outcome weights u·(n_o/n̄)^(β−1), n̄ = Σ u·n_o: a Weibull part fails more often the more it has done.
// Symbols:     n starts counted (50), p₀ share of starts that fail on a sound stove (0.02), q share that fail with the fault
//              (BurnOddsTable: no feed, never lit, stopped before proof), M starts before somebody calls (5); μ, σ the fault's shift
//              of the quantity, ln, h half a step (0.025); u usual share of an outcome, n_o its middle, β Weibull shape.
// Validity:    counters since the last service, or of few starts in all; over thousands of starts a late fault leaves no trace.
// Assumptions: p₀, M, β = 2 for igniters and bearings: from memory, no source.
// Source:      binomial and geometric distributions; Weibull hazard (any reliability text).
// Worked:      q = 1, M = 5, n = 50: five or so failed of fifty, "some" (tested against a simulation).
using Emberwright.Diagnosis.Inference;
using Emberwright.Stove;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Signs;

/// <summary>What faults do to counters and settings, computed where physics reaches.</summary>
internal static class CounterSymptoms
{
    private const int Counted = 50;
    private const double SoundFails = 0.02;
    private const double CallsAfter = 5;
    private const double Least = 0.05;
    private const double HalfStep = 0.025;

    // Middles of the outcomes few, usual, many: starts of igniters, hours of bearings.
    private static readonly double[] Starts = [300, 1300, 3000];
    private static readonly double[] Hours = [1800, 6500, 13_000];

    private static readonly string[] Wearing = ["combustion-blower-slow", "combustion-blower-seized", "combustion-blower-intermittent", "room-blower-slow", "auger-bearing-worn", "feed-gearbox-stripped"];

    /// <summary>The fault with what it does to counters and settings.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="patternId">The pattern it is on.</param>
    public static Fault Added(Fault fault, string patternId) =>
        fault with { Symptoms = [.. fault.Symptoms, .. Failing(fault, patternId), .. Cycling(fault), .. Worn(fault), .. Set(fault)] };

    /// <summary>Shares of few, some and many failed starts when a share q of the last ones fails.</summary>
    internal static double[] Failed(double q)
    {
        var p = new double[3];
        for (var m = 1; m <= Counted; m++)
        {
            var called = m < Counted ? Math.Pow(1 - 1 / CallsAfter, m - 1) / CallsAfter : Math.Pow(1 - 1 / CallsAfter, m - 1);
            for (var bad = 0; bad <= m; bad++)
            {
                var with = called * Binomial(m, bad, q);
                for (var other = 0; bad + other <= Counted; other++) p[Class(bad + other, Counted)] += with * Binomial(Counted - m, other, SoundFails);
            }
        }
        var sum = p.Sum();
        return [.. p.Select(x => x / sum)];
    }

    /// <summary>0 few, 1 some, 2 many.</summary>
    internal static int Class(double failed, double starts) => failed < starts / 20 ? 0 : failed <= starts / 5 ? 1 : 2;

    private static IEnumerable<Symptom> Failing(Fault fault, string patternId)
    {
        if (BurnOddsTable.Of(patternId, fault.Id) is not { } odds) return [];
        var q = odds.NoFeed + odds.LightsThenStops + odds.Frequency.GetValueOrDefault(BurnOutcome.NeverLights);
        return q < Least ? [] : Stated(StoveCounters.Failed, ["few", "some", "many"], Failed(q));
    }

    // Short runs come from what switches the stove off again and again, not from a fault that stops it for good.
    private static IEnumerable<Symptom> Cycling(Fault fault) => fault.Id switch
    {
        "room-probe-bad" => [new(StoveCounters.RunLength, "short", .35)],
        "room-blower-dirty" or "air-lock" or "pump-dead" => [new(StoveCounters.RunLength, "short", .25)],
        _ => [],
    };

    private static IEnumerable<Symptom> Worn(Fault fault)
    {
        if (fault.Id is "igniter-dead" or "igniter-weak") return Stated(StoveCounters.IgniterStarts, ["few", "usual", "many"], Weibull(StoveCounters.IgniterStarts, Starts));
        return Wearing.Contains(fault.Id) ? Stated(StoveCounters.RunHours, ["few", "usual", "many"], Weibull(StoveCounters.RunHours, Hours)) : [];
    }

    private static IEnumerable<Symptom> Set(Fault fault)
    {
        if (fault.Id is not ("feed-trim-high" or "feed-trim-low" or "settings-wrong")) yield break;
        foreach (var (parameter, sign) in new[] { (Parameter.Feed, StoveCounters.FeedTrim), (Parameter.BlowerSpeed, StoveCounters.BlowerTrim) })
        {
            if (fault.Shifts.FirstOrDefault(s => s.Parameter == parameter) is not { } shift) continue;
            var (above, below) = (Normal.Below((shift.Mean - HalfStep) / shift.Sd), Normal.Below((-HalfStep - shift.Mean) / shift.Sd));
            foreach (var symptom in Stated(sign, ["below", "as-card", "above"], [below, 1 - above - below, above])) yield return symptom;
        }
    }

    private static double[] Weibull(string sign, double[] middles)
    {
        var usual = StoveCounters.Signs.Single(s => s.Id == sign).Outcomes.Select(o => o.Usual).ToArray();
        var mean = usual.Zip(middles, (u, n) => u * n).Sum();
        return [.. usual.Zip(middles, (u, n) => u * n / mean)];
    }

    private static IEnumerable<Symptom> Stated(string sign, string[] outcomes, double[] p) =>
        outcomes.Zip(p, (outcome, x) => new Symptom(sign, outcome, 0.001 + 0.984 * x));

    private static double Binomial(int n, int k, double p)
    {
        if (k > n) return 0;
        if (p is 0 or 1) return k == (p == 0 ? 0 : n) ? 1 : 0;
        var ln = k * Math.Log(p) + (n - k) * Math.Log(1 - p);
        for (var i = 1; i <= k; i++) ln += Math.Log((double)(n - k + i) / i);
        return Math.Exp(ln);
    }
}
