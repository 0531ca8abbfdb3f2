using System.Globalization;
using Emberwright.Stove;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;

namespace Emberwright.Bench;

/// <summary>Writes how each pattern's stove ends with each fault the sequence reaches: the rows of <see cref="BurnOddsTable"/>.</summary>
internal static class BurnOddsRows
{
    private const int Seed = 1;

    /// <summary>The whole file: every pattern in the order of the library.</summary>
    /// <param name="draws">Simulated starts a fault.</param>
    /// <param name="write">Takes each line as soon as it is known.</param>
    internal static void WriteAll(int draws, Action<string> write)
    {
        write($"# pattern,fault,starts,dead,never-starts,no-feed,never-lights,lights-then-stops,stops-later,runs,alarms; written by: dotnet run -c Release --project bench/Emberwright.Bench -- burn-odds all {draws}");
        foreach (var pattern in PatternLibrary.All) Write(pattern.Id, draws, write);
    }

    /// <summary>Draws sound stoves that run once for a pattern, then ends each fault on the same ones, on all cores; the rows do not depend on how many.</summary>
    /// <param name="patternId">Pattern.</param>
    /// <param name="draws">Simulated starts a fault.</param>
    /// <param name="write">Takes each line as soon as it is known.</param>
    internal static void Write(string patternId, int draws, Action<string> write)
    {
        var stove = new VirtualStove(PatternLibrary.All.Single(p => p.Id == patternId), null, new Site());
        var random = new Random(Seed);
        var sound = Enumerable.Range(0, draws).Select(_ => BurnOdds.SoundStove(stove, random)).ToArray();
        var lines = FaultList.On(patternId).Where(BurnOdds.Reaches).AsParallel().AsOrdered()
            .WithMergeOptions(ParallelMergeOptions.NotBuffered)
            .Select(fault => Line(patternId, fault.Id, Odds(stove, fault, sound)));
        foreach (var line in lines) write(line);
    }

    private static BurnOdds Odds(VirtualStove stove, Fault fault, double[][] sound)
    {
        var next = 0;
        return BurnOdds.Of(stove, fault, sound.Length, new Random(Seed), _ => [.. sound[next++]]);
    }

    private static string Line(string pattern, string fault, BurnOdds odds) => string.Join(',',
        [
            pattern, fault, odds.Draws.ToString(CultureInfo.InvariantCulture),
            .. Enum.GetValues<BurnOutcome>().Select(o => Count(odds.Frequency.GetValueOrDefault(o), odds.Draws)),
            string.Join(' ', odds.Alarms.OrderBy(a => a.Key, StringComparer.Ordinal).Select(a => $"{a.Key}:{Count(a.Value, odds.Draws)}")),
        ]);

    private static string Count(double share, int draws) => Math.Round(share * draws).ToString(CultureInfo.InvariantCulture);
}
