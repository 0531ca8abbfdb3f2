using System.Text.Json;

namespace Emberwright.Visits.Journal;

/// <summary>
/// Turns the body of an entry written by an older version into the next version's. An entry's version stands in its
/// member <c>v</c>; without one it is 1. The line itself is never rewritten.
/// </summary>
/// <param name="From">Version it starts from; it yields <paramref name="From"/> + 1.</param>
/// <param name="Convert">Takes kind and body, gives kind and body of the next version.</param>
internal sealed record UpcastStep(int From, Func<string, JsonElement, (string Kind, JsonElement Body)> Convert);

internal static class Upcasting
{
    /// <summary>One step per released version before the current one; version 1 is the first.</summary>
    public static IReadOnlyList<UpcastStep> Released { get; } = [];

    public static (string Kind, JsonElement Body) ToCurrent(IReadOnlyList<UpcastStep> steps, int version, string kind, JsonElement body)
    {
        foreach (var step in steps.Where(s => s.From >= version).OrderBy(s => s.From))
            (kind, body) = step.Convert(kind, body);
        return (kind, body);
    }
}
