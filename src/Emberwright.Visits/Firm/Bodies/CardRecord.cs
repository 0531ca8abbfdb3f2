using Emberwright.Stove.Patterns;
using Emberwright.Visits.Journal;

namespace Emberwright.Visits.Firm;

/// <summary>A stove card the firm keeps for all stoves of one make and model. A visit that uses it holds its own copy.</summary>
/// <param name="Id">Id: <see cref="IdOf"/>.</param>
/// <param name="Json">The card, as a card file states it, on one line.</param>
public sealed record CardRecord(string Id, string? Json = null) : RecordBody(Id)
{
    /// <inheritdoc/>
    public override string Kind => "card";

    /// <inheritdoc/>
    public override string Title => Card is { } card ? card.Name.Length > 0 ? card.Name : card.Pattern : Id;

    /// <summary>The card; null when it cannot be read.</summary>
    public StoveCard? Card => Json is null ? null : CardFile.Read(Json, out _);

    /// <summary>The id of a card: there is one of each construction and name.</summary>
    public static string IdOf(StoveCard card)
    {
        ArgumentNullException.ThrowIfNull(card);
        return $"{card.Pattern}/{StoveKey.Plain(card.Name)}";
    }

    /// <summary>The record that keeps a card.</summary>
    public static CardRecord Of(StoveCard card) => new(IdOf(card), OneLine(CardFile.Write(card)));

    internal static CardRecord Read(BodyReader r)
    {
        var json = r.RawObject("card");
        if (json is not null && CardFile.Read(json, out var problems) is null)
            json = r.Report<string>("card", "", string.Join(' ', problems.Select(p => $"{p.Path}: {p.Message}")), "Take the card in again from its file.");
        return new(ReadId(r), json);
    }

    private protected override void WriteMembers(BodyWriter w) => w.Raw("card", Json);

    private static string OneLine(string json) => BodyWriter.Object(w => w.Members(json));
}
