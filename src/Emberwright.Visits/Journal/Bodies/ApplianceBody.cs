using Emberwright.Stove.Patterns;

namespace Emberwright.Visits.Journal;

/// <summary>Which stove it is.</summary>
/// <param name="Pattern">Pattern id, e.g. <c>damper-insert</c>.</param>
/// <param name="Name">What the household or the firm calls it.</param>
/// <param name="Maker">Maker, as on the label.</param>
/// <param name="Model">Model, as on the label.</param>
/// <param name="Serial">Serial number.</param>
/// <param name="Label">Further words of the rating label.</param>
/// <param name="CardName">Name of a stove card kept elsewhere.</param>
/// <param name="CardJson">A stove card written into the visit, as JSON.</param>
public sealed record ApplianceBody(
    string Pattern, string? Name = null, string? Maker = null, string? Model = null, string? Serial = null,
    string? Label = null, string? CardName = null, string? CardJson = null) : EntryBody
{
    /// <inheritdoc/>
    public override string Kind => "appliance";

    internal static ApplianceBody Read(BodyReader r)
    {
        var card = r.RawObject("card");
        return new(r.Required("pattern", "Name the pattern, such as damper-insert."), r.Text("name"), r.Text("maker"), r.Text("model"),
            r.Text("serial"), r.Text("label"), card is null ? r.Text("card") : null, card);
    }

    /// <summary>The same stove with a card, on one line as a journal needs it.</summary>
    public ApplianceBody With(StoveCard card)
    {
        ArgumentNullException.ThrowIfNull(card);
        return this with { Pattern = card.Pattern, CardName = null, CardJson = BodyWriter.Object(w => w.Members(CardFile.Write(card))) };
    }

    internal override void Write(BodyWriter w)
    {
        w.Text("pattern", Pattern);
        w.Text("name", Name);
        w.Text("maker", Maker);
        w.Text("model", Model);
        w.Text("serial", Serial);
        w.Text("label", Label);
        w.Text("card", CardName);
        w.Raw("card", CardJson);
    }
}
