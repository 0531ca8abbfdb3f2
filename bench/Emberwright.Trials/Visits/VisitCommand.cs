using System.Diagnostics;
using Emberwright.Stove.Patterns;

namespace Emberwright.Trials.Visits;

/// <summary>Runs the planner's trials and writes what they found.</summary>
internal static class VisitCommand
{
    private const string Name = "visits";

    /// <summary>Runs this shard's part, then writes table and picture from the rows of all shards.</summary>
    public static int Run(Options options)
    {
        var failed = options.TableOnly ? 0 : Work(options);
        var rows = Read(options);
        if (options.Only is not null) return failed > 0 ? 1 : 0;
        Directory.CreateDirectory(options.Out);
        File.WriteAllText(Path.Combine(options.Out, "visits.md"), VisitTable.Of(rows));
        File.WriteAllText(Path.Combine(options.Out, "visits.svg"), VisitPicture.Of(rows));
        Console.WriteLine(VisitTable.Of(rows));
        return failed > 0 ? 1 : 0;
    }

    private static IReadOnlyList<VisitRow> Read(Options options) =>
        [.. Shard<VisitRow>.ReadAll(options.Rows, Name, TrialJson.Default.VisitRow).Where(r => r.Seed == options.Seed && options.Patterns.Any(p => p.Id == r.Pattern)).DistinctBy(r => (r.Pattern, r.Index))];

    private static int Work(Options options)
    {
        var shard = new Shard<VisitRow>(options.Rows, Name, options.Part, options.Of, TrialJson.Default.VisitRow);
        var done = Read(options).Select(r => (r.Pattern, r.Index)).ToHashSet();
        var work = (from index in Enumerable.Range(0, options.Stoves) from pattern in options.Patterns select (pattern, index)).ToList();
        var watch = Stopwatch.StartNew();
        return shard.Run(
            k => done.Contains((work[k].pattern.Id, work[k].index)),
            [.. work.Select<(Pattern pattern, int index), Func<VisitRow>>(w => () => VisitTrial.Run(w.pattern, options.Seed, w.index, options.Only))],
            count =>
            {
                if (count % 10 == 0) Console.Error.WriteLine($"{count} stoves, {watch.Elapsed.TotalSeconds / count:0.00} s each");
            });
    }
}
