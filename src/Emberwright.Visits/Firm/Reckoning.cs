// What does a visit cost the customer so far, and is that within what was agreed?
//   total = minutes · price of a minute + Σ price of each part fitted or ordered
// Symbols: minutes as stated for each piece of work; prices from the firm's book, in its currency.
// Validity: what has no price in the book is named and not counted; without a price of a minute labour is not counted.
// Assumptions: a travel or diagnosis fee is agreed as words and is not added.
// Source: common practice, no source.
// Worked: 45 min at 1.25 and a part at 38.50 come to 94.75.
using System.Globalization;
using System.Text.RegularExpressions;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>What a visit comes to so far, beside the limit agreed.</summary>
/// <param name="Minutes">Minutes stated.</param>
/// <param name="Labour">What they cost; null when the book has no price of a minute.</param>
/// <param name="Parts">What the parts with a price cost.</param>
/// <param name="Unpriced">Parts without a price.</param>
/// <param name="Limit">What the customer agreed to at most, in the firm's currency; null when nothing was agreed as a sum.</param>
public sealed partial record Reckoning(double Minutes, double? Labour, double Parts, IReadOnlyList<string> Unpriced, double? Limit)
{
    /// <summary>A consent to what looking for the fault costs.</summary>
    public const string Fee = "diagnosis fee";

    /// <summary>A consent to the most that may be spent without asking again.</summary>
    public const string UpTo = "limit";

    /// <summary>A consent to an estimate of all that is to be done.</summary>
    public const string Estimate = "estimate";

    /// <summary>A consent to more than was agreed before.</summary>
    public const string Change = "change";

    /// <summary>What is counted, in the firm's currency.</summary>
    public double Total => (Labour ?? 0) + Parts;

    /// <summary>True when what is counted has passed what was agreed.</summary>
    public bool IsPastLimit => Limit is { } most && Total > most;

    /// <summary>Reckons a visit.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="book">The firm's book.</param>
    public static Reckoning Of(Visit visit, FirmBook book)
    {
        ArgumentNullException.ThrowIfNull(visit);
        ArgumentNullException.ThrowIfNull(book);
        var minutes = visit.Labour.Sum(l => l.Body.Minutes);
        var charged = visit.Of<PartBody>().Select(p => p.Body).Where(p => p.Use is not ("removed" or "returned") && p.From != PartSource.Customer)
            .Select(p => (Words: $"{p.Part} {p.Number}".Trim(), Price: PriceOf(p, book))).ToArray();
        var limit = visit.Of<ConsentBody>().LastOrDefault(c => c.Body.Given && c.Body.About is UpTo or Estimate or Change && SumIn(c.Body.Amount) is not null);
        return new(
            minutes, book.Firm.PerMinute is { } price ? minutes * price : null, charged.Sum(c => c.Price ?? 0),
            [.. charged.Where(c => c.Price is null).Select(c => c.Words)], SumIn(limit?.Body.Amount));
    }

    /// <summary>The price of a part in the book, by its number, the number that took its place, or its name; null when it has none.</summary>
    public static double? PriceOf(PartBody part, FirmBook book)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(book);
        return book.Parts.FirstOrDefault(known =>
            part.Number is { Length: > 0 } number ? Same(known.Number, number) || Same(known.SupersededBy, number) : Same(known.Name, part.Part))?.Price;
    }

    /// <summary>The sum in words such as "250 USD" or "up to $1,200"; null when there is none.</summary>
    public static double? SumIn(string? words) =>
        words is not null && Number().Match(words) is { Success: true } found && double.TryParse(found.Value.Replace(",", "", StringComparison.Ordinal), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var sum) ? sum : null;

    private static bool Same(string? one, string other) => string.Equals(one?.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase);

    [GeneratedRegex(@"\d+(,\d{3})*(\.\d+)?")]
    private static partial Regex Number();
}
