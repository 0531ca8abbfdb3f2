using System.Runtime.CompilerServices;
using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Planning;
using Emberwright.Diagnosis.Rates;
using Emberwright.Stove.Patterns;
using Emberwright.Visits;

namespace Emberwright.Field.Visiting;

/// <summary>Runs the engine on a visit in the browser, in slices short enough that the screen keeps moving.</summary>
public static class Engine
{
    // A screen is drawn every 16 ms; what is left of that belongs to the browser.
    private static readonly TimeSpan Slice = TimeSpan.FromMilliseconds(8);

    // One visit is open at a time; of another stove they begin anew by themselves.
    private static readonly Workings Workings = new();

    private static readonly TimeSpan Rest = TimeSpan.FromSeconds(1.5);

    /// <summary>Version of the engine, as the seal names it.</summary>
    public static string Version { get; } = typeof(Findings).Assembly.GetName().Version!.ToString(3);

    /// <summary>What is found of a visit: a first conclusion from single faults, then the whole. Nothing when its stove has no known pattern.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="rates">Gives the firm's own rates of a pattern; null goes by the catalogue.</param>
    /// <param name="cancellation">Cancelled when the visit has changed meanwhile.</param>
    public static async IAsyncEnumerable<Findings> Find(Visit visit, Func<string, PatternRates?> rates, [EnumeratorCancellation] CancellationToken cancellation)
    {
        if (visit.Appliance is not { } appliance || PatternLibrary.Find(appliance.Pattern) is not { } pattern) yield break;
        await Task.Delay(1, cancellation);
        var began = TimeProvider.System.GetTimestamp();
        foreach (var (_, findings) in Findings.Steps(visit, pattern, [], rates: rates(pattern.Id), workings: Workings))
        {
            if (findings is not null)
            {
                // Planned here in slices: whoever looks at it first would plan it in one go.
                var shown = findings;
                foreach (var planned in findings.ImprovingSteps())
                {
                    if (planned is not null)
                    {
                        shown = planned;
                        break;
                    }

                    if (TimeProvider.System.GetElapsedTime(began) < Slice) continue;
                    await Task.Delay(1, cancellation);
                    began = TimeProvider.System.GetTimestamp();
                }

                yield return shown;
            }

            if (findings is null && TimeProvider.System.GetElapsedTime(began) < Slice) continue;
            await Task.Delay(1, cancellation);
            began = TimeProvider.System.GetTimestamp();
        }
    }

    /// <summary>
    /// The same findings with a next check that looks further ahead, each better than the one before; it begins when the hand has
    /// rested, so that the bar at the bottom does not change under a thumb that is on its way.
    /// </summary>
    /// <param name="findings">The whole conclusion.</param>
    /// <param name="cancellation">Cancelled when the visit has changed meanwhile.</param>
    public static async IAsyncEnumerable<Findings> Improve(Findings findings, [EnumeratorCancellation] CancellationToken cancellation)
    {
        await Task.Delay(Rest, cancellation);
        var began = TimeProvider.System.GetTimestamp();
        foreach (var better in findings.ImprovingSteps())
        {
            if (better is not null) yield return better;
            else if (TimeProvider.System.GetElapsedTime(began) < Slice) continue;
            await Task.Delay(1, cancellation);
            began = TimeProvider.System.GetTimestamp();
        }
    }

    /// <summary>What is worth asking the customer, telling, agreeing and bringing, from what is concluded so far.</summary>
    public static CallPlan Plan(Findings findings) => Call.Plan(findings.Catalogue, Tariff.Default, findings.Posterior, findings.Situation);
}
