using System.Globalization;
using Emberwright.Stove;
using Emberwright.Stove.Patterns;

namespace Emberwright.Trials;

/// <summary>What the command line asks for.</summary>
/// <param name="Stoves">Stoves per pattern.</param>
/// <param name="Patterns">Patterns.</param>
/// <param name="Seed">Seed of the trial.</param>
/// <param name="Part">Which shard, counted from 1.</param>
/// <param name="Of">How many shards.</param>
/// <param name="Rows">Folder of the rows.</param>
/// <param name="Out">Folder of table and picture.</param>
/// <param name="TableOnly">True writes table and picture from the rows there are.</param>
/// <param name="Draws">Draws of each explanation in importance sampling.</param>
/// <param name="Only">Name of the one policy that visits; null sends all.</param>
internal sealed record Options(int Stoves, IReadOnlyList<Pattern> Patterns, int Seed, int Part, int Of, string Rows, string Out, bool TableOnly, int Draws = 100_000, string? Only = null)
{
    /// <summary>How it is called.</summary>
    public const string Usage = """
        calibration | visits | visit | worst | sampling
          --stoves N       hidden stoves per pattern (2000); of visit, the number of the one stove
          --pattern ID     a pattern's id, or all (all)
          --seed N         seed of the trial (1)
          --shard I/N      do only part I of N (1/1); run N processes with the same folder
          --rows DIR       where rows are kept; a run goes on where it stood (bench/results/rows)
          --out DIR        where table and picture are written (bench/results)
          --draws N        draws of each explanation in importance sampling (100000)
          --only POLICY    only one policy visits; its rows make no table
          --table          only write table and picture from the rows there are
        """;

    /// <summary>Reads the arguments after the command.</summary>
    /// <exception cref="InputException">An argument makes no sense.</exception>
    public static Options Read(IReadOnlyList<string> args)
    {
        var options = new Options(2000, PatternLibrary.All, 1, 1, 1, Path.Combine("bench", "results", "rows"), Path.Combine("bench", "results"), false);
        for (var k = 0; k < args.Count; k++)
        {
            if (args[k] == "--table")
            {
                options = options with { TableOnly = true };
                continue;
            }

            if (k + 1 >= args.Count) throw new InputException(args[k], "no value follows", Usage);
            var value = args[++k];
            options = args[k - 1] switch
            {
                "--stoves" => options with { Stoves = Number(args[k - 1], value, 0, 1_000_000) },
                "--pattern" => options with { Patterns = value == "all" ? PatternLibrary.All : [PatternLibrary.All.FirstOrDefault(p => p.Id == value) ?? throw new InputException("--pattern", $"'{value}' names none", $"Give all or one of {string.Join(", ", PatternLibrary.All.Select(p => p.Id))}.")] },
                "--seed" => options with { Seed = Number(args[k - 1], value, 0, int.MaxValue) },
                "--draws" => options with { Draws = Number(args[k - 1], value, 100, 10_000_000) },
                "--shard" => Sharded(options, value),
                "--rows" => options with { Rows = value },
                "--only" => options with { Only = value },
                "--out" => options with { Out = value },
                _ => throw new InputException(args[k - 1], "is not known", Usage),
            };
        }

        return options;
    }

    private static Options Sharded(Options options, string value)
    {
        var cut = value.Split('/');
        if (cut.Length != 2) throw new InputException("--shard", $"'{value}' is not I/N", "Give for instance 1/2.");
        var of = Number("--shard", cut[1], 1, 1000);
        return options with { Part = Number("--shard", cut[0], 1, of), Of = of };
    }

    private static int Number(string name, string value, int low, int high) =>
        int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= low && number <= high
            ? number
            : throw new InputException(name, $"'{value}' is no whole number from {low} to {high}", "Correct it.");
}
