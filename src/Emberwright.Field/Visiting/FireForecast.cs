// When should the moments of a test fire come on this stove?
//   The burn sequence is run for stoves as they leave the works, drawn from the pattern's (or card's) spread, with heat wanted
//   for 40 minutes; each moment's time is taken from the run, and the median, the earliest and the latest are shown.
// Units: minutes since the start was pressed; the run-on in minutes since off was pressed.
// Validity: a sound, clean stove; an outcome other than running is left out. Eight draws show the spread, not its tails.
// Source: the burn sequence of the pattern (see BurnSequence); the number of draws is our own choice.
// Worked value: none is published; the picture shows it beside the real one.
using Emberwright.Stove;
using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Patterns;
using Emberwright.Visits;
using Emberwright.Visits.Journal;

namespace Emberwright.Field.Visiting;

/// <summary>Earliest, likely and latest minute of something.</summary>
/// <param name="Earliest">Earliest, min.</param>
/// <param name="Likely">Median, min.</param>
/// <param name="Latest">Latest, min.</param>
public readonly record struct MinuteRange(double Earliest, double Likely, double Latest);

/// <summary>The computed course of a test fire.</summary>
/// <param name="Moments">Minutes since the start for flame and high.</param>
/// <param name="RunOn">Minutes from off to the last blower stopping; null when no run showed it.</param>
public sealed record FireForecast(IReadOnlyDictionary<FireMoment, MinuteRange> Moments, MinuteRange? RunOn)
{
    private const int Draws = 8;
    private const double WantedS = 40 * 60;
    private const double LongestS = 100 * 60;

    /// <summary>Computes it, giving the screen time between runs; null when the stove's pattern is not known.</summary>
    public static async Task<FireForecast?> Of(Visit visit)
    {
        if (visit.Appliance is not { } appliance || PatternLibrary.Find(appliance.Pattern) is not { } pattern) return null;
        var card = appliance.CardJson is { } json ? CardFile.Read(json, out _) : null;
        var stove = new VirtualStove(pattern, card?.Pattern == pattern.Id ? card : null, visit.StoveSite());
        var random = new Random(1);
        var runs = new List<BurnRun>();
        for (var draw = 0; draw < Draws; draw++)
        {
            await Task.Delay(1);
            var run = BurnForecast.Run(stove, BurnOdds.SoundStove(stove, random), new BurnScenario { WantedUntilS = WantedS }, LongestS);
            if (run.Outcome == BurnOutcome.Runs) runs.Add(run);
        }
        return From(runs);
    }

    /// <summary>Reads the moments out of runs.</summary>
    /// <param name="runs">Runs of sound stoves, heat wanted for the first 40 minutes.</param>
    public static FireForecast From(IReadOnlyList<BurnRun> runs)
    {
        var moments = new Dictionary<FireMoment, MinuteRange>();
        if (Range(runs, sample => sample.Readings.Burning) is { } flame) moments[FireMoment.Flame] = flame;
        if (Range(runs, sample => sample.State == BurnState.High) is { } high) moments[FireMoment.High] = high;
        var stopped = Range(runs, sample => sample.TimeS > WantedS && sample.Running is { CombustionShare: 0, RoomAirShare: 0 });
        return new(moments, stopped is { } at ? new(at.Earliest - WantedS / 60, at.Likely - WantedS / 60, at.Latest - WantedS / 60) : null);
    }

    private static MinuteRange? Range(IReadOnlyList<BurnRun> runs, Func<BurnSample, bool> shows)
    {
        var minutes = runs.Select(run => run.Samples.FirstOrDefault(shows)).OfType<BurnSample>().Select(sample => sample.TimeS / 60).Order().ToArray();
        return minutes.Length == 0 ? null : new(minutes[0], minutes[minutes.Length / 2], minutes[^1]);
    }
}
