using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>One part with what lies on the van now.</summary>
/// <param name="Part">The part.</param>
/// <param name="Count">Last count less what was fitted since; null when nobody counted. Below nought says that the count was wrong.</param>
/// <param name="CountedOn">When it was counted.</param>
/// <param name="Fitted">How many visits fitted since then.</param>
public sealed record OnVan(Part Part, int? Count, DateTimeOffset? CountedOn, int Fitted)
{
    /// <summary>How many to order so that enough lie on the van; 0 when enough do.</summary>
    public int ToOrder => Part.Keep is { } keep ? Math.Max(0, keep - Math.Max(0, Count ?? 0)) : 0;

    /// <summary>The number to order: the one that took its place, if any.</summary>
    public string? OrderNumber => string.IsNullOrEmpty(Part.SupersededBy) ? Part.Number : Part.SupersededBy;
}

/// <summary>What lies on the van: counted, less what visits fitted since.</summary>
public static class VanStock
{
    /// <summary>Every part on the list.</summary>
    /// <param name="book">The firm's book.</param>
    /// <param name="visits">All visits.</param>
    public static IReadOnlyList<OnVan> Of(FirmBook book, IEnumerable<VisitSummary> visits)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(visits);
        var used = visits.SelectMany(v => v.Parts).Where(p => p.IsFitted && !string.IsNullOrEmpty(p.Number)).ToLookup(p => Plain(p.Number), p => p.At);
        var counts = book.Of<Counted>().GroupBy(c => book.Into("part", c.Body.Part)).ToDictionary(g => g.Key, g => g.Last());
        return [.. book.Parts.Select(part => Of(part, counts.GetValueOrDefault(part.Id), used))];
    }

    /// <summary>Parts that visits name by number and the book does not know.</summary>
    /// <param name="book">The firm's book.</param>
    /// <param name="visits">All visits.</param>
    public static IReadOnlyList<PartUsed> Unknown(FirmBook book, IEnumerable<VisitSummary> visits)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(visits);
        var known = book.Parts.Concat(book.PutAway.OfType<Part>()).SelectMany(Numbers).ToHashSet();
        return [.. visits.SelectMany(v => v.Parts).Where(p => !string.IsNullOrEmpty(p.Number) && !known.Contains(Plain(p.Number))).DistinctBy(p => Plain(p.Number))];
    }

    private static OnVan Of(Part part, Fact<Counted>? count, ILookup<string, DateTimeOffset> used)
    {
        var fitted = Numbers(part).Distinct().SelectMany(n => used[n]).Count(at => count is null || at > count.At);
        return new(part, count is null ? null : count.Body.Count - fitted, count?.At, fitted);
    }

    private static IEnumerable<string> Numbers(Part part) => new[] { part.Number, part.Id }.Where(n => !string.IsNullOrEmpty(n)).Select(Plain);

    private static string Plain(string? text) => string.Concat((text ?? "").Where(char.IsLetterOrDigit)).ToLowerInvariant();
}
