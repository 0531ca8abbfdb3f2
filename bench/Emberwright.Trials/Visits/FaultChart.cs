using System.Collections.Frozen;

namespace Emberwright.Trials.Visits;

/// <summary>One step of the chart.</summary>
/// <param name="Words">In words.</param>
/// <param name="Does">Checks and actions that are done.</param>
/// <param name="Finds">Faults it finds where they are there, and cures.</param>
internal sealed record ChartStep(string Words, IReadOnlyList<string> Does, IReadOnlyList<string> Finds);

/// <summary>A fixed fault chart, kept as data beside the program.</summary>
internal static class FaultChart
{
    private const string Resource = "Emberwright.Trials.fault-chart.txt";

    private static readonly Lazy<FrozenDictionary<string, IReadOnlyList<ChartStep>>> Steps = new(() => Parse(Text()));

    /// <summary>The steps for a complaint; none for one that the chart does not know.</summary>
    public static IReadOnlyList<ChartStep> For(string complaint) => Steps.Value.GetValueOrDefault(complaint) ?? [];

    /// <summary>Every complaint the chart knows.</summary>
    public static IEnumerable<string> Complaints => Steps.Value.Keys;

    /// <summary>Reads the chart's text.</summary>
    /// <exception cref="FormatException">A line is neither a comment, a complaint nor a step.</exception>
    public static FrozenDictionary<string, IReadOnlyList<ChartStep>> Parse(string text)
    {
        var all = new Dictionary<string, IReadOnlyList<ChartStep>>();
        List<ChartStep>? steps = null;
        foreach (var line in text.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Where(l => l[0] != '#'))
        {
            if (line[0] == '*')
            {
                steps = [];
                foreach (var complaint in Words(line[1..])) all.Add(complaint, steps);
                continue;
            }

            var cells = line.Split('|', StringSplitOptions.TrimEntries);
            if (cells.Length != 3 || steps is null) throw new FormatException($"'{line}' is no step of the chart; write words | what is done | what it finds.");
            steps.Add(new ChartStep(cells[0], Words(cells[1]), Words(cells[2])));
        }

        return all.ToFrozenDictionary();
    }

    private static string[] Words(string cell) => cell.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static string Text()
    {
        using var stream = typeof(FaultChart).Assembly.GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"The resource '{Resource}' is missing; build it again.");
        return new StreamReader(stream).ReadToEnd();
    }
}
