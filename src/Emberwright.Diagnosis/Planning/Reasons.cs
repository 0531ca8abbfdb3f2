using System.Globalization;

namespace Emberwright.Diagnosis.Planning;

/// <summary>Why an option is recommended, as one sentence.</summary>
internal static class Reasons
{
    private const double WorthNaming = 0.04;
    private const double Gone = 0.25;

    /// <summary>The sentence.</summary>
    public static string For(Option option, Board board, Catalogue catalogue)
    {
        if (option.Remedies is { } fault) return Remedy(fault.Name, board.Marginal[IndexOf(board, fault.Id)], option);
        if (option.Action is not null && (option.LikelyCures || option.Outcomes is { Likelihood.Count: 1 })) return Cleaning(option, board, catalogue);
        if (option.Outcomes is not { } outcomes) return "Nothing is left that would tell more.";
        var suspects = Enumerable.Range(0, board.Faults.Count).Where(f => board.Marginal[f] >= WorthNaming).OrderByDescending(f => board.Marginal[f]).Take(6).ToList();
        var pair = Separated(suspects, outcomes, board);
        var text = pair is { } p
            ? $"Because it separates {Name(board, p.A)} from {Name(board, p.B)} in {Minutes(option.Minutes)}"
            : Settled(outcomes, board) is { } f ? $"Because it settles {Name(board, f)} in {Minutes(option.Minutes)}"
            : $"Because it tells most for {Minutes(option.Minutes)}";
        return text + Ruled(suspects, outcomes, board) + ".";
    }

    private static string Remedy(string name, double probability, Option option) =>
        $"Because {Lower(name)} is found ({Percent(probability)}) and this cures it in {Minutes(option.Minutes)}.";

    private static string Cleaning(Option option, Board board, Catalogue catalogue)
    {
        var cured = catalogue.Action(option.Action!)?.Cures ?? [];
        var first = Enumerable.Range(0, board.Faults.Count).Where(f => cured.Contains(board.Faults[f].Id)).OrderByDescending(f => board.Marginal[f]).FirstOrDefault(-1);
        return first < 0 ? $"Because it takes {Minutes(option.Minutes)} and may be all it needs." : $"Because it cures {Name(board, first)} in {Minutes(option.Minutes)}.";
    }

    private static (int A, int B)? Separated(List<int> suspects, OutcomeTable outcomes, Board board)
    {
        (int A, int B)? best = null;
        var most = 0.02;
        foreach (var a in suspects)
        {
            foreach (var b in suspects)
            {
                if (board.Marginal[a] < board.Marginal[b] || a == b) continue;
                var apart = outcomes.Likelihood.Sum(l => Math.Abs(board.Given(a, l) - board.Given(b, l)))
                    / outcomes.Likelihood.Sum(l => board.Given(a, l) + board.Given(b, l));
                var worth = apart * board.Marginal[a] * board.Marginal[b];
                if (apart > 0.25 && worth > most * 0.05)
                {
                    if (best is null || worth > most) (best, most) = ((a, b), worth);
                }
            }
        }

        return best;
    }

    /// <summary>The fault whose probability the results move most.</summary>
    private static int? Settled(OutcomeTable outcomes, Board board)
    {
        var (best, most) = ((int?)null, 0.0);
        for (var f = 0; f < board.Faults.Count; f++)
        {
            var moved = 0.0;
            foreach (var likelihood in outcomes.Likelihood)
            {
                var after = board.After(likelihood, out var p);
                moved += (outcomes.Drawn ? 1.0 / outcomes.Likelihood.Count : p) * Math.Abs(board.Of(f, after) - board.Marginal[f]);
            }

            if (moved > most) (best, most) = (f, moved);
        }

        return best;
    }

    private static string Ruled(List<int> suspects, OutcomeTable outcomes, Board board)
    {
        if (outcomes.Drawn) return "";
        var (said, most) = ("", 0.0);
        for (var r = 0; r < outcomes.Likelihood.Count; r++)
        {
            var after = board.After(outcomes.Likelihood[r], out var p);
            var gone = suspects.Where(f => board.Of(f, after) < Gone * board.Marginal[f]).ToList();
            var worth = p * gone.Sum(f => board.Marginal[f]);
            if (gone.Count == 0 || worth <= most) continue;
            var names = string.Join(" and ", gone.Take(2).Select(f => Lower(board.Faults[f].Name)));
            (said, most) = ($"; if {Lower(outcomes.Words[r])}, {names} {(gone.Count == 1 ? "is" : "are")} out", worth);
        }

        return said;
    }

    private static int IndexOf(Board board, string id)
    {
        for (var f = 0; f < board.Faults.Count; f++)
        {
            if (board.Faults[f].Id == id) return f;
        }

        return 0;
    }

    private static string Name(Board board, int f) => $"{Lower(board.Faults[f].Name)} ({Percent(board.Marginal[f])})";

    private static string Percent(double p) => string.Create(CultureInfo.InvariantCulture, $"{100 * p:F0} %");

    private static string Minutes(double minutes) => minutes < 1.5 ? "a minute" : string.Create(CultureInfo.InvariantCulture, $"{minutes:F0} minutes");

    internal static string Lower(string words) =>
        words.Length > 1 && char.IsUpper(words[0]) && !char.IsUpper(words[1]) ? char.ToLowerInvariant(words[0]) + words[1..] : words;
}
