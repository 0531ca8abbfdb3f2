namespace Emberwright.Stove.Patterns.Anatomies;

/// <summary>A pattern's anatomy as a card corrects it: what the card says replaces the pattern's, the rest stays.</summary>
public static class CardedAnatomy
{
    /// <summary>The anatomy of the make and model on the card.</summary>
    /// <param name="pattern">The family.</param>
    /// <param name="card">Its card, or null.</param>
    public static Anatomy Of(Pattern pattern, StoveCard? card)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        return card is null
            ? pattern.Anatomy
            : pattern.Anatomy with
            {
                Panels = [.. pattern.Anatomy.Panels.Select(p => Corrected(p, card)), .. Own(card)],
                Gaskets = [.. pattern.Anatomy.Gaskets.Select(g => Corrected(g, card)), .. OwnGaskets(pattern.Anatomy, card)],
            };
    }

    private static AccessPanel Corrected(AccessPanel panel, StoveCard card) =>
        card.Access.FirstOrDefault(a => a.Panel == panel.Id) is not { } said
            ? panel
            : panel with
            {
                Where = said.Where,
                Fasteners = said.Fastening.Count > 0 ? said.Fastening : panel.Fasteners,
                FastenersNote = said.Fasteners,
                Origin = Origin.OnCard,
            };

    private static IEnumerable<AccessPanel> Own(StoveCard card) => card.Access.Where(a => a.Panel.Length == 0).Select((a, i) =>
        new AccessPanel($"card-{i + 1}", "panel on the card", a.Where, AreaNames.Of(a.Area).Replace('-', ' '), a.Fastening, [a.Area], [], Origin.OnCard)
        {
            FastenersNote = a.Fasteners.Length > 0 || a.Fastening.Count > 0 ? a.Fasteners : "not said",
        });

    private static Gasket Corrected(Gasket gasket, StoveCard card) =>
        card.Gaskets.FirstOrDefault(g => g.Seat == gasket.Id) is not { } said
            ? gasket
            : gasket with
            {
                Where = Said(said.Where, gasket.Where),
                Material = Said(said.Material, gasket.Material),
                Size = Said(said.Size, gasket.Size),
                Side = said.Side ?? gasket.Side,
                Origin = Origin.OnCard,
            };

    private static IEnumerable<Gasket> OwnGaskets(Anatomy anatomy, StoveCard card) =>
        card.Gaskets.Where(g => anatomy.Gaskets.All(own => own.Id != g.Seat)).Select(g =>
            new Gasket(g.Seat, g.Where, GasketForm.Sheet, g.Material, g.Size, g.Side ?? SealingSide.Suction, "it is torn, hard or missing", Origin.OnCard));

    private static string Said(string card, string pattern) => card.Length > 0 ? card : pattern;
}
