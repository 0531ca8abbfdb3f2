namespace Emberwright.Stove.Patterns;

/// <summary>Feed and speeds of every state of the fire.</summary>
internal static class BurnLevels
{
    /// <summary>All five states: cold the blower runs at its curve's speed with no fuel and no warm stream.</summary>
    /// <param name="origin">Where the numbers come from.</param>
    /// <param name="igniting">Feed, kg/h, and speed ratio while igniting.</param>
    /// <param name="low">The same at the lowest setting.</param>
    /// <param name="high">The same at the highest setting.</param>
    /// <param name="shutdown">The same while the fire burns out.</param>
    /// <param name="lowStream">Share of the warm stream in every state with fire but the highest.</param>
    public static IReadOnlyDictionary<FireState, BurnLevel> Of(
        Origin origin, (double Feed, double Speed) igniting, (double Feed, double Speed) low, (double Feed, double Speed) high,
        (double Feed, double Speed) shutdown, double lowStream = 0.6) => new Dictionary<FireState, BurnLevel>
        {
            [FireState.Cold] = new(0, 1.0, 0, origin),
            [FireState.Igniting] = new(igniting.Feed, igniting.Speed, lowStream, origin),
            [FireState.Low] = new(low.Feed, low.Speed, lowStream, origin),
            [FireState.High] = new(high.Feed, high.Speed, 1, origin),
            [FireState.Shutdown] = new(shutdown.Feed, shutdown.Speed, lowStream, origin),
        };
}
