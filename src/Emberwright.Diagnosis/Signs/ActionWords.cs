namespace Emberwright.Diagnosis.Signs;

/// <summary>
/// The words by which deeds are told. Each line is a set of words that must all be there; | stands between words of which
/// one will do. The first line that fits names the action, so the more particular ones stand first.
/// </summary>
internal static class ActionWords
{
    private const string Cleaned = "cleaned|clean|scraped|brushed|emptied|swept|wiped|cleared|vacuumed|blown|opened|unblocked";
    private const string Renewed = "replaced|new|fitted|renewed|swapped|exchanged|replace";

    private static readonly IReadOnlyList<(string Action, Words[][] All)> Lines =
    [
        Line("full-service", "four|all areas"), Line("full-service", "full service"), Line("full-service", "complete|full cleaning|clean"),
        Line("replace-vacuum-switch", "vacuum|pressure switch " + Renewed),
        Line("replace-high-limit-disc", "limit disc " + Renewed),
        Line("cure-high-limit-tripped", "limit|disc|overheat reset|pressed|clicks|click"),
        Line("replace-proof-disc", "proof disc|sensor " + Renewed),
        Line("clean-proof-disc", "proof disc|sensor " + Cleaned),
        Line("clean-proof-disc", "disc screwed|tightened|wiped|seated|refitted|" + Cleaned),
        Line("replace-thermocouple", "thermocouple " + Renewed),
        Line("clean-thermocouple", "thermocouple|sleeve " + Cleaned + "|pushed|home|seated"),
        Line("cure-thermocouple-reversed", "thermocouple|leads reversed|swapped|changed|turned"),
        Line("replace-exhaust-probe", "exhaust|flue probe|sensor " + Renewed),
        Line("clean-exhaust-probe", "probe " + Cleaned + "|reseated|seated"),
        Line("cure-sensor-hoses-swapped", "hoses changed|swapped|exchanged|reversed|crossed"),
        Line("replace-pressure-sensor", "pressure sensor " + Renewed),
        Line("clean-hose", "hose " + Cleaned + "|refitted|refit|fitted|back|dried|renewed|replaced|cut|pushed"),
        Line("replace-igniter", "igniter " + Renewed),
        Line("clean-igniter-passage", "igniter passage|tube|hole " + Cleaned), Line("cure-igniter-misplaced", "igniter pushed|home"),
        Line("replace-feed-motor", "feed|auger motor " + Renewed),
        Line("cure-coupling-loose", "coupling|pin|screw tightened|tight|renewed|replaced"),
        Line("cure-feed-jam", "auger|flight|feed freed|cleared|drawn|unjammed|removed"), Line("cure-feed-jam", "hopper emptied"),
        Line("cure-hopper-bridging", "bridge|wall|hollow broken|breaks|broke|stick"), Line("cure-hopper-bridging", "hopper filled|refilled|filled"),
        Line("replace-combustion-blower", "combustion|exhaust|draft|draught blower|fan " + Renewed),
        Line("replace-blower-gasket", "blower|flange gasket " + Renewed),
        Line("clean-combustion-blower", "combustion|exhaust|draft|draught blower|fan|wheel " + Cleaned),
        Line("replace-room-air-blower", "room|convection|distribution|warm blower|fan " + Renewed),
        Line("clean-room-air-blower", "room|convection|distribution|warm blower|fan " + Cleaned),
        Line("cure-agitator-jammed", "clinker broken|out|cleared"), Line("cure-agitator-jammed", "agitator freed|cleared|turned"),
        Line("clean-ash-passages", "ash passages|traps|chamber|covers " + Cleaned),
        Line("clean-exchanger", "exchanger|fins|tubes " + Cleaned),
        Line("clean-tee", "tee " + Cleaned), Line("cure-cleanout-cap-off", "cap back|fitted|refitted|sealed"),
        Line("clean-vent", "vent|flue|chimney|cap|terminal|pipe|nest " + Cleaned + "|removed"),
        Line("cure-pot-turned", "pot turned|reversed|right"), Line("clean-burn-pot", "pot|holes|grate " + Cleaned + "|drilled|seated|reseated"),
        Line("cure-terminal-snowed-in", "snow|ice cleared|removed"),
        Line("clean-intake", "intake|inlet|screen " + Cleaned), Line("cure-damper-stuck", "damper freed|set|opened|adjusted"),
        Line("replace-door-gasket", "door gasket|rope|seal " + Renewed), Line("cure-door-latch-loose", "latch|hinge set|adjusted|tightened"),
        Line("cure-lid-switch-open", "lid|hinge straightened|bent|adjusted"), Line("cure-lid-switch-open", "lid switch " + Renewed),
        Line("cure-outside-air-hose-off", "outside|air hose refitted|clamped|connected|fitted|back"),
        Line("replace-board", "board " + Renewed), Line("cure-fuse-blown", "fuse " + Renewed),
        Line("cure-connector-loose", "connector|plug|terminal|spade pushed|crimped|renewed|tightened"),
        Line("cure-thermostat-open", "thermostat batteries|cable|wire|thermostat mended|new|replaced|repaired"),
        Line("cure-air-lock", "bled|bleed"), Line("cure-pump-seized", "rotor|pump freed|free|turned"), Line("replace-pump", "pump " + Renewed),
        Line("cure-water-valve-shut", "valve|valves opened|open"), Line("cure-water-pressure-low", "filled|topped bar|up|pressure"),
        Line("cure-safety-thermostat-tripped", "safety thermostat reset|pressed"),
        Line("cure-settings-wrong", "settings|parameters|trim|feed set|reset|lowered|raised|corrected"),
    ];

    /// <summary>Id of the first action that fits, or null.</summary>
    public static string? Find(Words text, Func<string, bool> exists) => Lines
        .Where(l => exists(l.Action) && l.All.All(any => any.Any(text.Say)))
        .Select(l => l.Action)
        .FirstOrDefault();

    private static (string, Words[][]) Line(string action, string pattern) =>
        (action, [.. pattern.Split(' ').Select(any => any.Split('|').Select(Words.Of).ToArray())]);
}
