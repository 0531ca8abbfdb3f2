using System.Globalization;
using Emberwright.Stove;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;

namespace Emberwright.Bench;

/// <summary>Writes how each pattern's stove ends with each fault the sequence reaches: the rows of <see cref="BurnOddsTable"/>.</summary>
internal static class BurnOddsRows
{
    /// <summary>Draws sound stoves that run once for a pattern, then ends each fault on the same ones.</summary>
    /// <param name="patternId">Pattern.</param>
    /// <param name="draws">Simulated starts a fault.</param>
    /// <param name="seed">Seed, the same for every row.</param>
    /// <param name="write">Takes each line as soon as it is known.</param>
    internal static void Write(string patternId, int draws, int seed, Action<string> write)
    {
        var stove = new VirtualStove(PatternLibrary.All.Single(p => p.Id == patternId), null, new Site());
        var random = new Random(seed);
        var sound = Enumerable.Range(0, draws).Select(_ => BurnOdds.SoundStove(stove, random)).ToArray();
        foreach (var fault in FaultList.On(patternId).Where(BurnOdds.Reaches))
        {
            var next = 0;
            var odds = BurnOdds.Of(stove, fault, draws, new Random(seed), _ => [.. sound[next++]]);
            write(Line(patternId, fault.Id, odds));
        }
    }

    private static string Line(string pattern, string fault, BurnOdds odds) => string.Join(',',
        [
            pattern, fault, odds.Draws.ToString(CultureInfo.InvariantCulture),
            .. Enum.GetValues<BurnOutcome>().Select(o => Count(odds.Frequency.GetValueOrDefault(o), odds.Draws)),
            string.Join(' ', odds.Alarms.OrderBy(a => a.Key, StringComparer.Ordinal).Select(a => $"{a.Key}:{Count(a.Value, odds.Draws)}")),
        ]);

    private static string Count(double share, int draws) => Math.Round(share * draws).ToString(CultureInfo.InvariantCulture);
}
