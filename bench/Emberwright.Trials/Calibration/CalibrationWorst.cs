using System.Globalization;
using System.Text;
using Emberwright.Diagnosis;

namespace Emberwright.Trials.Calibration;

/// <summary>Lists where statements were most wrong: by fault, and stove by stove with what draws it again.</summary>
internal static class CalibrationWorst
{
    private const double NearlySure = 0.95;

    /// <summary>Writes the list.</summary>
    public static string Of(IReadOnlyList<CalibrationRow> rows)
    {
        var text = new StringBuilder();
        void Line(FormattableString line) => text.AppendLine(line.ToString(CultureInfo.InvariantCulture));
        var ordinary = rows.Where(r => r.Mismatch == 1).ToArray();
        foreach (var rung in Enum.GetValues<Rung>())
        {
            Line($"## {rung}: faults by bias (stated − there)");
            var by = from row in ordinary
                     let says = row.Says.First(s => s.Rung == rung)
                     from fault in says.Probabilities.Keys.Union(row.Truth)
                     let p = says.Probabilities.GetValueOrDefault(fault)
                     let so = row.Truth.Contains(fault)
                     group (p, so) by fault into g
                     let bias = g.Sum(x => x.p - (x.so ? 1 : 0))
                     orderby Math.Abs(bias) descending
                     select (g.Key, Stated: g.Sum(x => x.p), So: g.Count(x => x.so));
            foreach (var (fault, stated, so) in by.Take(14)) Line($"- {fault}: stated {stated:0.0}, there {so}");
            Line($"");
        }

        Line($"## Stated at 95 % and above, and wrong");
        foreach (var row in ordinary)
        {
            foreach (var says in row.Says)
                foreach (var (fault, p) in says.Probabilities.Where(x => x.Value >= NearlySure && x.Key is not (Suspect.Nothing or Suspect.Unlisted) && !row.Truth.Contains(x.Key)))
                    Line($"- {row.Pattern} seed {row.Seed} index {row.Index} at {says.Rung}: {fault} {p:0.000}; there: {string.Join(", ", row.Truth)}{(says.Misfit ? "; misfit said" : "")}");
        }

        return text.ToString();
    }
}
