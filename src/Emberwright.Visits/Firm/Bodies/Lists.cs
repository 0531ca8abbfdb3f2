namespace Emberwright.Visits.Firm;

/// <summary>Equality of lists that may be absent, for records that hold one.</summary>
internal static class Lists
{
    public static bool Same<T>(IReadOnlyList<T>? a, IReadOnlyList<T>? b) => a is null ? b is null : b is not null && a.SequenceEqual(b);
}
