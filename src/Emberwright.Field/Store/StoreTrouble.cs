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
        IsFull(message) ? T("StoreTrouble.not-saved-this-phone-has-no")
        : message.Contains("older version", StringComparison.Ordinal) ? T("StoreTrouble.not-saved-emberwright-is-open-in")
        : message.Contains("gone", StringComparison.Ordinal) ? T("StoreTrouble.not-saved-the-browser-has-cleared")
        : T("StoreTrouble.not-saved-the-phone-refused-to");
}
