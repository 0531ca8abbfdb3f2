// What does a check cost in the end when one more check may follow its result?
// T₂(c) = cost(c) + Σ_o P(o)·min{ V(w|o), min_{c′} [ cost(c′) + Σ_{o′} P(o′|o)·V(w|o,o′) ] }.
// Symbols: w weights of the explanations, V expected cost of the fixed order of repair, c′ any of the best second steps.
// Validity: any posterior. T₂ ≤ T, the one-step total, since asking nothing more is among the choices.
// Assumptions: given an explanation, results of different checks are independent; after the second check no more is asked.
// Source: Heckerman, Breese & Rommelse, Decision-theoretic troubleshooting, CACM 38(3), 1995 (from memory).
// Worked: two equal faults at 10 each and a perfect question at 2: T = T₂ = 12; without it 15.
namespace Emberwright.Diagnosis.Planning;

/// <summary>Looks two steps ahead from the best few options, one after the other.</summary>
internal sealed class Lookahead(IBoard board)
{
    private const int Best = 8;

    /// <summary>How many second steps are weighed, pass by pass.</summary>
    private static readonly int[] Widths = [6, 20];

    /// <summary>All options again and again, each time one more of them looking two steps ahead, those that do first; null between two short pieces of work.</summary>
    /// <param name="options">All options, one step ahead.</param>
    /// <param name="weighed">Total by which options are ranked.</param>
    public IEnumerable<IReadOnlyList<Option>?> Over(IReadOnlyList<Option> options, Func<Option, double> weighed)
    {
        List<Option> ranked = [.. options.OrderBy(weighed).ThenBy(o => o.Id, StringComparer.Ordinal)];
        foreach (var width in Widths)
        {
            var seconds = ranked.Select(o => options.First(x => x.Id == o.Id && x.Action == o.Action)).Take(width).ToList();
            for (var at = 0; at < Math.Min(Best, ranked.Count); at++)
            {
                foreach (var deeper in Deeper(ranked[at], seconds))
                {
                    if (deeper is null) yield return null;
                    else ranked[at] = deeper;
                }

                yield return [.. ranked];
            }
        }
    }

    // The option last; null after each second step.
    private IEnumerable<Option?> Deeper(Option first, List<Option> seconds)
    {
        var total = board.CostOf(first, board.Start);
        var (then, most) = ((string?)null, 0.0);
        foreach (var (probability, after, result) in board.Results(first, board.Start))
        {
            var (rest, next) = (board.Remaining(after), (Option?)null);
            foreach (var second in seconds)
            {
                if (second.Id == first.Id || second.Action is not null && second.Action == first.Action) continue;
                var cost = board.CostOf(second, after);
                foreach (var (p, end, _) in board.Results(second, after))
                {
                    if (cost >= rest) break;
                    cost += p * board.Remaining(end);
                }

                if (cost < rest) (rest, next) = (cost, second);
                yield return null;
            }

            total += probability * rest;
            if (next is null || probability <= most) continue;
            most = probability;
            then = first.Outcomes is { Drawn: false, Words.Count: > 1 } o ? $" Then, if {Reasons.Lower(o.Words[result])}: {Reasons.Lower(next.Name)}." : $" Then: {Reasons.Lower(next.Name)}.";
        }

        yield return first with { Total = Math.Min(first.Total, total), Then = then, IsDeep = true };
    }
}
