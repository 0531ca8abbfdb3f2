// How does a pattern's stove end with a fault, without simulating it now?
// Equation: the counts of BurnOdds over a fixed number of starts, computed beforehand and kept as rows; a frequency p of n starts has
//   the standard error √(p(1 − p)/n).
// Validity: the pattern's own stove without a card, at the reference site; a fault without a row is one the sequence does not reach.
// Assumptions: as BurnOdds.
// Source: the simulation itself; `burn-odds` of the bench writes the rows, a test draws some of them again.
// Worked value: 20 of 24 starts that fed nothing are a frequency of 0.83 ± 0.08.

using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;

namespace Emberwright.Stove.Controls.Sequence;

/// <summary>The odds of each way a start ends, per pattern and fault, computed beforehand.</summary>
public static class BurnOddsTable
{
    private const string Resource = "Emberwright.Stove.burn-odds.csv";

    private static readonly Lazy<FrozenDictionary<(string Pattern, string Fault), BurnOdds>> Rows = new(Read);

    /// <summary>Pattern and fault of every row.</summary>
    public static IEnumerable<(string Pattern, string Fault)> Keys => Rows.Value.Keys;

    /// <summary>The odds of a fault on a pattern; null where the sequence does not reach.</summary>
    /// <param name="patternId">Id of the pattern.</param>
    /// <param name="faultId">Id of the fault.</param>
    public static BurnOdds? Of(string patternId, string faultId) => Rows.Value.GetValueOrDefault((patternId, faultId));

    private static FrozenDictionary<(string Pattern, string Fault), BurnOdds> Read()
    {
        using var stream = typeof(BurnOddsTable).Assembly.GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"The resource '{Resource}' is missing from the program; build it again.");
        using var reader = new StreamReader(stream);
        var rows = new Dictionary<(string, string), BurnOdds>();
        while (reader.ReadLine() is { } line)
        {
            if (line.Length == 0 || line[0] == '#') continue;
            var cells = line.Split(',');
            var draws = Number(cells[2]);
            rows.Add((cells[0], cells[1]), new BurnOdds(draws,
                Enum.GetValues<BurnOutcome>().Select((outcome, i) => (outcome, Count: Number(cells[3 + i]))).Where(o => o.Count > 0)
                    .ToImmutableDictionary(o => o.outcome, o => (double)o.Count / draws),
                cells[^1].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(a => a.Split(':'))
                    .ToImmutableDictionary(a => a[0], a => (double)Number(a[1]) / draws)));
        }
        return rows.ToFrozenDictionary();
    }

    private static int Number(string cell) => int.Parse(cell, CultureInfo.InvariantCulture);
}
