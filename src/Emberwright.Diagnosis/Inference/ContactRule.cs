// Question:    how far is a contact from closing, by what it senses?
// Equations:   vacuum switch: z = (v − T·e^θ)/s;  disc that closes warm: z = (t + d − T)/s;  disc that opens hot: z = (T − t)/s.
// Symbols:     v vacuum at its hose, Pa below room; T where it acts, Pa or °C; θ drift, ln; t temperature it sits in, °C; d offset of
//              what it senses, K; s blur (tolerance, differential, how well its place is known), Pa or K.
// Validity:    temperatures on a settled fire only; the proof-of-fire and the fan disc sit in the exhaust's temperature, the high-limit
//              disc halfway between room and warm air, the safety thermostat in the flow.
// Assumptions: discs hold ±3 to 5 K and go back 8 to 17 K cooler than they act; on low a disc that closed on high may still stand
//              closed, so there its point lies anywhere between. The place is known to 5 K (from memory, no source).
// Source:      common practice, no source.
// Worked:      proof disc 49 °C, exhaust 40 °C on high: z = −9/√(4² + 5²) = −1.41, closed 8 times in 100.
using System.Collections.Immutable;
using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Controls.Sequence;

namespace Emberwright.Diagnosis.Inference;

/// <summary>A contact of the circuit that follows a quantity of the model.</summary>
/// <param name="Contact">Id of the contact.</param>
/// <param name="Sensed">What it senses.</param>
/// <param name="Slope">Change of the deviate z with the quantity sensed, 1/Pa or 1/K.</param>
/// <param name="At">Value of the quantity sensed at which it acts; negative for a vacuum.</param>
/// <param name="Drift">What moves that point, or null: the switch's threshold (a factor e^θ) or the disc's offset (K).</param>
internal sealed record ContactRule(string Contact, Observable Sensed, double Slope, double At, Parameter? Drift)
{
    private const double ToleranceK = 4;
    private const double PlaceK = 5;
    private const double LimitShare = 0.5;

    /// <summary>How many quantities its deviate is made of.</summary>
    public int Size => Drift is null ? 1 : 2;

    /// <summary>The rules of a stove's contacts in a condition: vacuum always, temperatures on a settled fire.</summary>
    public static ImmutableArray<ContactRule> Of(Wiring wiring, StoveCase stove, Condition condition)
    {
        var rules = ImmutableArray.CreateBuilder<ContactRule>();
        var program = CardProgram.Of(stove.Pattern, stove.Card);
        foreach (var contact in wiring.Components.OfType<Interlock>())
        {
            if (contact.Kind == ContactKind.VacuumSwitch)
            {
                rules.Add(Vacuum(contact.Id, stove, condition));
            }
            else if (condition is { Fire: FireState.Low or FireState.High, Opening: OpeningState.Closed } && program.Setting(contact.Id) is { } setting
                && Disc(contact, setting, stove, condition) is { } disc)
            {
                rules.Add(disc);
            }
        }
        return rules.ToImmutable();
    }

    /// <summary>z: how far it is past closing, in standard deviations; its slopes by the quantity sensed and by the drift.</summary>
    public double Deviate(ReadOnlySpan<double> values, Span<double> slopes)
    {
        slopes[0] = Slope;
        if (Drift != Parameter.SwitchThreshold)
        {
            if (Drift is not null) slopes[1] = Slope;
            return Slope * (values[0] + (Drift is null ? 0 : values[1]) - At);
        }
        var at = At * Math.Exp(Math.Min(values[1], 5));
        slopes[1] = -Slope * at;
        return Slope * (values[0] - at);
    }

    /// <summary>The quantities of its deviate, in order.</summary>
    public IEnumerable<Quantity> Quantities(int epoch)
    {
        yield return Quantity.Of(epoch, Sensed);
        if (Drift is { } parameter) yield return Quantity.Of(epoch, parameter);
    }

    internal static ContactRule Vacuum(string contact, StoveCase stove, Condition condition)
    {
        var acts = stove.Card?.SwitchClosesPa ?? stove.Pattern.Switch.ClosesPa;
        return new(contact, new Observable(Measure.Pressure, Places.SwitchHose, condition), -1 / Math.Max(1, 0.12 * acts), -acts, Parameter.SwitchThreshold);
    }

    private static ContactRule? Disc(Interlock contact, ContactSetting setting, StoveCase stove, Condition condition)
    {
        var exhaust = new Observable(Measure.Temperature, Places.Collar, condition);
        var stream = new Observable(Measure.Temperature, Places.WarmAir, condition);
        var room = stove.Site.RoomC ?? ReferenceDay.RoomC;
        var settled = condition.Fire == FireState.High;
        var between = settled ? 0 : (setting.ActsAt - setting.ReleasesAt) / Math.Sqrt(12);
        var closesAt = settled ? setting.ActsAt : (setting.ActsAt + setting.ReleasesAt) / 2;
        var blur = Math.Sqrt(ToleranceK * ToleranceK + PlaceK * PlaceK + between * between);
        return contact.Kind switch
        {
            ContactKind.ProofDisc => new(contact.Id, exhaust, 1 / blur, closesAt, Parameter.ProofSensor),
            ContactKind.FanDisc => new(contact.Id, exhaust, 1 / blur, closesAt, null),
            ContactKind.LimitDisc => new(contact.Id, stream, -LimitShare / blur, room + (setting.ActsAt - room) / LimitShare, null),
            ContactKind.SafetyThermostat => new(contact.Id, stream, -1 / blur, setting.ActsAt, null),
            ContactKind.VacuumSwitch or ContactKind.LidSwitch or ContactKind.DoorSwitch or ContactKind.Thermostat => null,
        };
    }
}
