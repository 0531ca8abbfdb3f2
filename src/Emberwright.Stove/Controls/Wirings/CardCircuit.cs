// What does a model's circuit look like when its card states voltage, ratings, order and kind of its contacts?
// Equation: at another mains voltage V′ a part of the same power has R′ = R(V′/V)², I′ = I·V/V′, C′ = C(V/V′)²; an igniter rated P at V
//   is V²/P hot; stalled currents keep their ratio to the running ones.
// Symbols: V rated voltage (V), R winding or element (Ω), I current (A), C capacitance (F), P power (W).
// Validity: what the card does not state is the pattern's; a set of values that no part can have is an error naming the part.
// Assumptions: a resistance on a nameplate or in a manual is the cold one, read with the plug out.
// Source: Ohm's law.
// Worked value: an igniter of 300 W at 120 V (48 Ω hot) is, at 230 V, 230²/300 = 176.3 Ω hot.

using Emberwright.Stove.Patterns;

namespace Emberwright.Stove.Controls.Wirings;

/// <summary>The circuit of a model: its pattern's, with what the card states.</summary>
public static class CardCircuit
{
    /// <summary>The wiring of a stove.</summary>
    /// <param name="pattern">Its pattern.</param>
    /// <param name="card">Its card, or null for the pattern's own.</param>
    /// <exception cref="CircuitException">The card's values contradict each other or name no part; the message says which.</exception>
    public static Wiring Of(Pattern pattern, StoveCard? card)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        var wiring = pattern.Wiring;
        if (card is null) return wiring;
        var stated = card.Wiring;
        if (stated is not null) wiring = AtSupply(wiring, stated.SupplyV ?? wiring.Mains.NominalV, stated.FrequencyHz ?? wiring.Mains.FrequencyHz);
        foreach (var rating in card.Parts) wiring = wiring.With(Rated(wiring[rating.Component], rating));
        if (stated is null) return wiring;
        foreach (var contact in stated.Contacts) wiring = wiring.With(Stated((Interlock)wiring[contact.Component], contact));
        return stated.FeedOrder.IsEmpty ? wiring : wiring.WithFeedOrder(stated.FeedOrder);
    }

    private static Wiring AtSupply(Wiring wiring, double volts, double hertz)
    {
        var k = volts / wiring.Mains.NominalV;
        foreach (var part in wiring.Components)
        {
            WiringComponent? other = part switch
            {
                MainsSupply m => m with { NominalV = volts, FrequencyHz = hertz },
                Motor m => m with { RatedV = volts, WindingOhm = m.WindingOhm * k * k, RunningA = m.RunningA / k, StalledA = m.StalledA / k },
                Igniter i => i with { RatedV = volts },
                RunCapacitor c => c with { Farad = c.Farad / (k * k) },
                Fuse f => f with { RatedA = f.RatedA / k },
                _ => null,
            };
            if (other is not null && other != part) wiring = wiring.With(other);
        }
        return wiring;
    }

    private static WiringComponent Rated(WiringComponent part, PartRating rating) => part switch
    {
        Igniter i => Heater(i, rating),
        Motor m => m with
        {
            WindingOhm = rating.ResistanceOhm ?? m.WindingOhm,
            RunningA = rating.CurrentA ?? m.RunningA,
            StalledA = rating.CurrentA is { } running ? m.StalledA * running / m.RunningA : m.StalledA,
        },
        RunCapacitor c => c with { Farad = rating.CapacitanceF ?? c.Farad },
        _ => part,
    };

    private static Igniter Heater(Igniter igniter, PartRating rating)
    {
        var watts = rating.PowerW ?? (rating.CurrentA is { } amps ? amps * igniter.RatedV
            : rating.ResistanceOhm is { } cold ? igniter.RatedV * igniter.RatedV / (cold * igniter.HotToCold) : igniter.RatedW);
        var rated = igniter with { RatedW = watts };
        if (rating.ResistanceOhm is not { } ohm) return rated;
        // A wire grows by a few per cent, a ceramic element to two or three times; beyond that label and resistance contradict each other.
        var ratio = rated.HotOhm / ohm;
        var (least, most) = igniter.Kind == IgniterKind.Wire ? (0.85, 1.3) : (0.3, 3.5);
        return ratio >= least && ratio <= most ? rated with { HotToCold = ratio } : throw new CircuitException(
            $"Component '{igniter.Id}': {watts:G4} W at {igniter.RatedV:G4} V is {rated.HotOhm:G4} Ω hot, which {ohm:G4} Ω cold cannot become; allowed here is {rated.HotOhm / most:G4} to {rated.HotOhm / least:G4} Ω.");
    }

    private static Interlock Stated(Interlock contact, CardContact stated) => contact with
    {
        NormallyOpen = stated.NormallyOpen ?? contact.NormallyOpen,
        Reset = stated.Reset ?? contact.Reset,
    };
}
