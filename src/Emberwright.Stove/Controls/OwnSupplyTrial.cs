using System.Collections.Immutable;

namespace Emberwright.Stove.Controls;

/// <summary>
/// Trying one part on a supply of its own by a test lead: whether it may be tried, how, and what the result proves.
/// Common practice, no source; the appliance's manual and local code take precedence.
/// </summary>
/// <param name="Component">Id of the component.</param>
/// <param name="Allowed">False when this part must never be tried so; <see cref="Cautions"/> says why.</param>
/// <param name="SupplyV">Voltage of the test lead, V; null when not allowed.</param>
/// <param name="LeadFuseA">Fuse in the lead, A; null when not allowed.</param>
/// <param name="LongestS">Longest time, s; null when not allowed.</param>
/// <param name="ExpectedA">Current of a sound part, A; null when not allowed.</param>
/// <param name="RunsWhenSound">Probability that a sound part runs (or glows).</param>
/// <param name="RunsThoughFaulty">Probability that a part that fails in use still runs so, cold and unloaded.</param>
/// <param name="IfItRuns">What running proves.</param>
/// <param name="IfItDoesNot">What not running proves.</param>
/// <param name="Cautions">What can hurt, at this step.</param>
public sealed record OwnSupplyTrial(
    string Component, bool Allowed, double? SupplyV, double? LeadFuseA, double? LongestS, double? ExpectedA,
    double RunsWhenSound, double RunsThoughFaulty, string IfItRuns, string IfItDoesNot, ImmutableArray<string> Cautions)
{
    private static readonly ImmutableArray<string> Mains =
    [
        "Stove unplugged and proved dead; both leads of the part off the board, so that nothing is fed backwards.",
        "Fused lead on a residual-current device; its voltage is the one on the part's label.",
        "Clip on first, plug in last, pull the plug before touching anything.",
    ];

    /// <summary>Trials for every load, sensor and contact of a wiring.</summary>
    /// <param name="wiring">The circuit.</param>
    public static ImmutableArray<OwnSupplyTrial> For(Wiring wiring) =>
        [.. wiring.Components.Select(part => Of(wiring, part)).OfType<OwnSupplyTrial>()];

    private static OwnSupplyTrial? Of(Wiring wiring, WiringComponent part) => part switch
    {
        Motor { Id: ComponentIds.CombustionAuxiliary } => Never(part.Id, "An auxiliary winding runs only through its run capacitor; try the whole blower."),
        Motor m => new OwnSupplyTrial(m.Id, true, wiring.Mains.NominalV, LeadFuse(m.StalledA), 120, m.RunningA, 0.99,
            m.Id == ComponentIds.FeedMotor ? 0.35 : 0.5,
            "The motor turns cold and unloaded. It may still fail hot or under load; if it stood in the stove, look at what feeds it or what it drives.",
            "The motor or its lead is at fault, or it is stuck: turn it by hand, then read its winding.",
            [.. Mains, "Either way round: alternating current has no polarity here.", Moving(m.Id)]),
        Igniter i => new OwnSupplyTrial(i.Id, true, i.RatedV, LeadFuse(i.RatedW / i.RatedV), 90, i.RatedW / i.RatedV, 0.99, 0.15,
            "The igniter heats; whether its heat reaches the fuel is another matter (passage, pot turned round).",
            "The igniter or its lead is open: read its resistance.",
            [.. Mains, "At most 90 s, never out of its tube on anything that burns; it stays hot enough to injure for minutes."]),
        Thermocouple or ResistanceProbe or PressureSensor or LowVoltageSupply =>
            Never(part.Id, "A sensor or low-voltage part: mains destroys it and the board. Read its signal instead."),
        Interlock { Kind: ContactKind.Thermostat } => Never(part.Id, "A low-voltage loop: join its terminals on the stove for a moment instead."),
        Interlock => Never(part.Id, "A safety contact is read, never fed or bridged."),
        PlainResistance { Id: ComponentIds.SpeedSensor } => Never(part.Id, "A 5 V sensor: mains destroys it. Read its signal while the blower turns."),
        _ => null,
    };

    private static OwnSupplyTrial Never(string component, string why) => new(
        component, false, null, null, null, null, 0, 0, "Not to be tried.", "Not to be tried.", [why]);

    // The next usual fuse above the stalled current, so that a jam does not blow it but a short does.
    private static double LeadFuse(double mostA) => new double[] { 1, 2, 3, 5 }.First(a => a >= Math.Min(5, 1.2 * mostA));

    private static string Moving(string id) => id switch
    {
        ComponentIds.FeedMotor => "Fingers out of the auger: uncouple it first if the motor alone is to be judged.",
        ComponentIds.CirculatingPump => "Only with the water circuit filled: a dry pump is ruined in seconds.",
        ComponentIds.AgitatorMotor => "Hands out of the burn pot.",
        _ => "Hands, hair and leads clear of the wheel.",
    };
}
