using Emberwright.Stove.Patterns;
using Emberwright.Visits;

namespace Emberwright.Field.Identifying;

/// <summary>A stove card as it stands in a visit: on one line, inside the appliance's entry.</summary>
public static class CardText
{
    /// <summary>The card of a visit; an empty one of its pattern when it has none, null when no pattern is known.</summary>
    public static StoveCard? Of(Visit visit)
    {
        if (visit.Appliance is not { } appliance || PatternLibrary.Find(appliance.Pattern) is not { } pattern) return null;
        var read = appliance.CardJson is { } json ? CardFile.Read(json, out _) : null;
        return read?.Pattern == pattern.Id
            ? read
            : new StoveCard { Pattern = pattern.Id, Name = string.Join(' ', new[] { appliance.Maker, appliance.Model }.Where(word => !string.IsNullOrEmpty(word))) };
    }

    /// <summary>The name of a card's file.</summary>
    public static string FileName(StoveCard card)
    {
        ArgumentNullException.ThrowIfNull(card);
        return string.Concat((card.Name.Length > 0 ? card.Name : card.Pattern).ToLowerInvariant().Replace(' ', '-').Where(c => char.IsLetterOrDigit(c) || c == '-')) + ".card.json";
    }

    /// <summary>How much a card holds, in a line.</summary>
    public static string Holds(StoveCard card)
    {
        ArgumentNullException.ThrowIfNull(card);
        var parts = new (int Count, string One, string Many)[]
        {
            (card.Healthy.Count, T("CardText.healthy-value"), T("CardText.healthy-values")), (card.Codes.Count, T("CardText.alarm-code"), T("CardText.alarm-codes")), (card.Access.Count, T("CardText.panel"), T("CardText.panels")),
            (card.Parts.Count, T("CardText.rating"), T("CardText.ratings")), (card.Parameters.Count, "setting", "settings"), (card.Documents.Count, T("CardText.document"), T("CardText.documents")),
        };
        return parts.Any(p => p.Count > 0) ? string.Join(", ", parts.Where(p => p.Count > 0).Select(p => $"{p.Count} {(p.Count == 1 ? p.One : p.Many)}")) + "." : T("CardText.construction-and-name-only");
    }
}
