// Is a question on the telephone still worth asking, once what is wrong is nearly plain?
// Equation: D(w) = (P(danger) ≥ 0.1, P(they can cure it themselves) ≥ 0.5, {parts with P(needed) ≥ 0.1}); settled where one cause, or
//           one set of parts to bring, has P ≥ 0.9; then a question is asked only if Σ_{o: D(w|o) ≠ D(w)} P(o) ≥ 0.1.
// Symbols: w weights of the explanations, o answers of the question.
// Validity: any posterior; while nothing is settled every question that pays is asked.
// Assumptions: a call arranges three things: whether the stove stays off, what the customer tries, what goes on the van.
// Source: value of information only through decisions: Howard, IEEE Trans. SSC-2 (1966) 22 (from memory); bounds from memory.
// Worked: a code that names the igniter at 0.95: no answer to "when does it happen" takes the igniter off the van.
using Emberwright.Diagnosis.Checks;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Planning;

/// <summary>What a call arranges under given weights: the stove stays off, the customer can cure it, parts to bring as bits.</summary>
/// <param name="StaysOff">True when what is suspected can hurt people.</param>
/// <param name="ByCustomer">True when it is probably cured by what may be told on the telephone.</param>
/// <param name="Parts">Parts worth bringing, a bit for each fault that needs a new one.</param>
internal readonly record struct Arrangement(bool StaysOff, bool ByCustomer, ulong Parts)
{
    private const double Dangerous = 0.1;
    private const double Probably = 0.5;
    private const double Needed = 0.1;
    private const double Settled = 0.9;
    private const double Moved = 0.1;

    /// <summary>What is arranged under given weights.</summary>
    public static Arrangement Of(Board board, double[] weights)
    {
        var (danger, byCustomer) = (0.0, 0.0);
        var needed = new Dictionary<string, (double P, int First)>(StringComparer.Ordinal);
        for (var f = 0; f < board.Faults.Count; f++)
        {
            var (fault, p) = (board.Faults[f], board.Of(f, weights));
            if (fault.SafetyStop is not null) danger += p;
            if (PhoneFixes.For(fault.Id) is not null) byCustomer += p;
            if (PartOf(fault) is not { } part) continue;
            var known = needed.GetValueOrDefault(part, (0, f));
            needed[part] = (known.P + p, known.First);
        }

        var parts = needed.Values.Where(n => n.P >= Needed).Aggregate(0UL, (bits, n) => bits | 1UL << n.First);
        return new Arrangement(danger >= Dangerous, byCustomer >= Probably, parts);
    }

    /// <summary>True when one cause, or one set of parts, is all but certain.</summary>
    public static bool IsSettled(Board board, IReadOnlyList<Explanation> explanations, Catalogue catalogue) =>
        board.Marginal.Any(p => p >= Settled)
        || explanations.GroupBy(e => e.Unlisted ? "?" : string.Join(' ', e.Faults.Select(catalogue.Fault).OfType<Fault>().Select(PartOf).OfType<string>().Distinct().Order(StringComparer.Ordinal)), StringComparer.Ordinal)
            .Any(g => g.Key.Length > 0 && g.Sum(e => e.Weight) >= Settled);

    /// <summary>True when an answer may well change what is arranged.</summary>
    public static bool MayChange(Option option, Board board)
    {
        if (option.Outcomes is null) return false;
        var now = Of(board, board.Start.Weights);
        return board.Results(option, board.Start).Where(r => Of(board, r.After.Weights) != now).Sum(r => r.Probability) >= Moved;
    }

    private static string? PartOf(Fault fault) => fault.Remedy is { Kind: RemedyKind.Replace, PartCost: > 0 } ? ActionList.CureOf(fault.Id) : null;
}
