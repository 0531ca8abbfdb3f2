using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>
/// Tells stoves apart across visits. Maker and serial number do; where the label was not read, the household does; a
/// visit that names neither stands alone. It is not the stove's record in the firm's book, which may join two keys.
/// </summary>
public static class StoveKey
{
    /// <summary>The key of a visit's stove.</summary>
    public static string Of(Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return Of(visit.Appliance?.Maker, visit.Appliance?.Serial, PersonalWords.Known(visit.Customer?.Name), PersonalWords.Known(visit.Customer?.Address)) ?? "visit/" + visit.Id;
    }

    /// <summary>The key of a stove by its label or, without one, by its household; null when neither is known.</summary>
    public static string? Of(string? maker, string? serial, string? customer, string? address) =>
        Plain(serial) is { Length: > 0 } number ? $"{Plain(maker)}/{number}"
        : Plain(customer).Length + Plain(address).Length > 0 ? $"house/{Plain(customer)}/{Plain(address)}"
        : null;

    // Letters and digits only: labels are copied with and without hyphens.
    internal static string Plain(string? text) => string.Concat((text ?? "").Where(char.IsLetterOrDigit)).ToLowerInvariant();
}
