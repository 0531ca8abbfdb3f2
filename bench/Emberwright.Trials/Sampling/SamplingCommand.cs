using System.Diagnostics;
using System.Text.Json;
using Emberwright.Trials.Generator;

namespace Emberwright.Trials.Sampling;

/// <summary>Works the fixed cases by importance sampling and keeps what it found, for the tests to hold diagnosis against.</summary>
internal static class SamplingCommand
{
    private const string Name = "sampling";
    private const int Likeliest = 8;

    /// <summary>Samples this shard's cases; then, when all are there, writes the golden file.</summary>
    public static int Run(Options options)
    {
        var shard = new Shard<FixedCase>(options.Rows, Name, options.Part, options.Of, TrialJson.Default.FixedCase);
        var done = Read(options);
        var watch = Stopwatch.StartNew();
        var failed = options.TableOnly ? 0 : shard.Run(
            k => done.Any(c => c.Number == k),
            [.. Enumerable.Range(0, FixedCases.Count).Select<int, Func<FixedCase>>(k => () => Sample(FixedCases.Draw(k), options.Draws))],
            count => Console.Error.WriteLine($"{count} cases, {watch.Elapsed.TotalSeconds / count:0} s each"));
        var rows = Read(options).OrderBy(c => c.Number).ToArray();
        Directory.CreateDirectory(options.Out);
        File.WriteAllLines(Path.Combine(options.Out, "sampling.jsonl"), rows.Select(r => JsonSerializer.Serialize(r, TrialJson.Default.FixedCase)));
        Console.WriteLine($"{rows.Length} of {FixedCases.Count} cases, fewest effective draws {rows.SelectMany(r => r.Explanations).Select(e => e.Effective).DefaultIfEmpty(0).Min():0}");
        return failed > 0 ? 1 : 0;
    }

    private static FixedCase Sample(FixedCase drawn, int draws)
    {
        var open = OpenCase.Of(FixedCases.Stove(drawn.Pattern, drawn.OutdoorC), drawn.Evidence());
        var explanations = new List<SampledExplanation>();
        foreach (var (name, mode, _) in open.Explanations().Take(Likeliest))
        {
            var (ln, effective) = new ImportanceSampler(mode, open.File.Model).Evidence(draws, Chance.Of("sampling", drawn.Number, name));
            explanations.Add(new(name, Math.Round(ln, 4), Math.Round(effective)));
        }

        return drawn with { Explanations = explanations, Draws = draws };
    }

    private static IReadOnlyList<FixedCase> Read(Options options) => Shard<FixedCase>.ReadAll(options.Rows, Name, TrialJson.Default.FixedCase);
}
