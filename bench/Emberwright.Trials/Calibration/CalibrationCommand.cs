using System.Diagnostics;

namespace Emberwright.Trials.Calibration;

/// <summary>Runs the calibration trial and writes what it found.</summary>
internal static class CalibrationCommand
{
    private const string Name = "calibration";

    /// <summary>One stove in so many is drawn a second time with its mismatch doubled.</summary>
    private const int Doubled = 4;

    private static readonly double[] Ordinary = [1];
    private static readonly double[] Both = [1, 2];

    /// <summary>Runs this shard's part, then writes table and picture from the rows of all shards.</summary>
    public static int Run(Options options)
    {
        var failed = options.TableOnly ? 0 : Work(options);
        var rows = Read(options);
        Directory.CreateDirectory(options.Out);
        File.WriteAllText(Path.Combine(options.Out, "calibration.md"), CalibrationTable.Of(rows));
        File.WriteAllText(Path.Combine(options.Out, "calibration.svg"), ReliabilityPicture.Of(rows));
        Console.WriteLine(CalibrationTable.Of(rows));
        return failed > 0 ? 1 : 0;
    }

    /// <summary>Lists the statements that were most wrong, with what draws them again.</summary>
    public static int Worst(Options options)
    {
        Console.WriteLine(CalibrationWorst.Of(Read(options)));
        return 0;
    }

    private static IReadOnlyList<CalibrationRow> Read(Options options) =>
        [.. Shard<CalibrationRow>.ReadAll(options.Rows, Name, TrialJson.Default.CalibrationRow).Where(r => r.Seed == options.Seed && options.Patterns.Any(p => p.Id == r.Pattern)).DistinctBy(r => (r.Pattern, r.Index, r.Mismatch))];

    private static int Work(Options options)
    {
        var shard = new Shard<CalibrationRow>(options.Rows, Name, options.Part, options.Of, TrialJson.Default.CalibrationRow);
        var done = Read(options).Select(r => (r.Pattern, r.Index, r.Mismatch)).ToHashSet();
        var work = (from index in Enumerable.Range(0, options.Stoves)
                    from pattern in options.Patterns
                    from mismatch in index % Doubled == 0 ? Both : Ordinary
                    select (pattern, index, mismatch)).ToList();
        var watch = Stopwatch.StartNew();
        return shard.Run(
            k => done.Contains((work[k].pattern.Id, work[k].index, work[k].mismatch)),
            [.. work.Select<(Stove.Patterns.Pattern pattern, int index, double mismatch), Func<CalibrationRow>>(w => () => CalibrationTrial.Run(w.pattern, options.Seed, w.index, w.mismatch))],
            count =>
            {
                if (count % 20 == 0) Console.Error.WriteLine($"{count} stoves, {watch.Elapsed.TotalSeconds / count:0.00} s each");
            });
    }
}
