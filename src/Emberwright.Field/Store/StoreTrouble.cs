namespace Emberwright.Field.Store;

/// <summary>What the phone's store may refuse, in plain words with what to do.</summary>
public static class StoreTrouble
{
    /// <summary>True when there is no room left.</summary>
    /// <param name="message">What the browser said.</param>
    public static bool IsFull(string message) =>
        message.Contains("quota", StringComparison.OrdinalIgnoreCase) || message.Contains("no room", StringComparison.OrdinalIgnoreCase);

    /// <summary>The words. Whatever was recorded before is kept in every case.</summary>
    /// <param name="message">What the browser said.</param>
    public static string Words(string message) =>
        IsFull(message) ? "Not saved: this phone has no room left. All earlier steps are kept. Free some space, then do this step again."
        : message.Contains("older version", StringComparison.Ordinal) ? "Not saved: Emberwright is open in another tab with an older version. Close that tab, then do this step again."
        : message.Contains("gone", StringComparison.Ordinal) ? "Not saved: the browser has cleared its store meanwhile. Hand over the visit file now: it still holds everything shown here."
        : "Not saved: the phone refused to write. All earlier steps are kept. Do this step again.";
}
