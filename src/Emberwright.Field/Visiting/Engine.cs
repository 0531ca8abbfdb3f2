using System.Runtime.CompilerServices;
using Emberwright.Diagnosis;
using Emberwright.Stove.Patterns;
using Emberwright.Visits;

namespace Emberwright.Field.Visiting;

/// <summary>Runs the engine on a visit in the browser, in slices short enough that the screen keeps moving.</summary>
public static class Engine
{
    // A screen draws every 16 ms; what is left of that belongs to the browser.
    private static readonly TimeSpan Slice = TimeSpan.FromMilliseconds(8);

    /// <summary>Version of the engine, as the seal names it.</summary>
    public static string Version { get; } = typeof(StoveCase).Assembly.GetName().Version!.ToString(3);

    /// <summary>What is concluded from a visit: a first conclusion from single faults, then the whole. Nothing when its stove has no known pattern.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="cancellation">Cancelled when the visit has changed meanwhile.</param>
    public static async IAsyncEnumerable<Reckoned> Reckon(Visit visit, [EnumeratorCancellation] CancellationToken cancellation)
    {
        if (visit.Appliance is not { } appliance || PatternLibrary.Find(appliance.Pattern) is not { } pattern) yield break;
        var catalogue = Catalogue.For(pattern.Id);
        var evidence = visit.Evidence();
        await Task.Delay(1, cancellation);
        var began = TimeProvider.System.GetTimestamp();
        foreach (var step in Diagnose.Steps(visit.Case(pattern), evidence, catalogue))
        {
            if (step is { Beliefs: { } beliefs, Posterior: { } posterior })
            {
                await Task.Delay(1, cancellation);
                yield return new Reckoned(beliefs, new NextCheck(null, []), step.Stage == DiagnosisStage.Done);
            }
            if (TimeProvider.System.GetElapsedTime(began) < Slice) continue;
            await Task.Delay(1, cancellation);
            began = TimeProvider.System.GetTimestamp();
        }
    }
}
