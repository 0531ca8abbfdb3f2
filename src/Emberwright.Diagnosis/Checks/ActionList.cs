using Emberwright.Stove;
using Emberwright.Stove.Faults;

namespace Emberwright.Diagnosis.Checks;

/// <summary>All actions: the cleaning of each area, the full service, and one for each remaining way of curing a fault.</summary>
public static class ActionList
{
    /// <summary>Id of the four-area service.</summary>
    public const string FullService = "full-service";

    /// <summary>Whoever breaks a bridge in the hopper fills it up as well.</summary>
    private const string Bridge = "hopper-bridging";

    /// <summary>Mean restriction left by a proper cleaning (from memory, no source).</summary>
    public const double AsLeft = 0.07;

    private static readonly IReadOnlyList<WorkAction> Cleaning =
    [
        Clean("clean-burn-pot", "Clean the burn pot and its holes, seat it", 4, [Parameter.BurnPot],
            ["pot-clogged", "pot-misseated", "pot-turned"]),
        Clean("clean-ash-passages", "Empty and brush the ash passages", 20, [Parameter.AshPassages],
            ["ash-passages-full", "exhaust-cover-leaking"]),
        Clean("clean-exchanger", "Scrape and brush the exchanger", 20, [Parameter.Exchanger, Parameter.Insulation],
            ["exchanger-blocked", "exchanger-fouled", "baffle-misplaced"]),
        Clean("clean-combustion-blower", "Take the combustion blower out and clean wheel and housing, new gasket", 20, [Parameter.Wheel, Parameter.BlowerGasketLeak],
            ["wheel-fouled", "blower-wheel-rubbing", "blower-gasket-leaking"]),
        Clean("clean-room-air-blower", "Clean the room-air blower's inlet, wheel and grille", 15, [Parameter.RoomAir], ["room-blower-dirty"], PatternIds.RoomAirBlower),
        Clean("clean-vent", "Sweep the vent, cap and tee", 25, [Parameter.Vent],
            ["vent-fouled", "nest-in-cap", "tee-full", "terminal-snowed-in", "condensate-in-vent", "cleanout-cap-off"]),
        Clean("clean-tee", "Open and empty the tee, cap back with its seal", 8, [], ["tee-full", "condensate-in-vent", "cleanout-cap-off"]),
        Clean("clean-intake", "Clear the air intake", 10, [Parameter.Intake], ["intake-blocked"]),
        Clean("clean-hose", "Clear sensing hose and tap, off the switch", 5, [Parameter.SensedPressure], ["hose-plugged", "hose-off", "condensate-in-hose"]),
        Clean("clean-igniter-passage", "Clear the igniter's passage, igniter home", 8, [], ["igniter-passage-ashed", "igniter-misplaced"]),
        Clean("clean-proof-disc", "Wipe the proof-of-fire disc and seat it", 6, [Parameter.ProofSensor], ["proof-disc-cold"], PatternIds.ProofDisc),
        Clean("clean-thermocouple", "Scrape the thermocouple's sleeve, push it home", 6, [Parameter.ProofSensor], ["thermocouple-dirty"], [PatternIds.Thermocouple]),
        Clean("clean-exhaust-probe", "Wipe the exhaust probe and seat it", 6, [Parameter.ProofSensor], ["exhaust-probe-sooted"], PatternIds.ExhaustProbe),
        Clean(FullService, "Clean all four areas, pot and sensors", 75,
            [
                Parameter.BurnPot, Parameter.AshPassages, Parameter.Exchanger, Parameter.Insulation, Parameter.Wheel,
                Parameter.RoomAir, Parameter.Vent, Parameter.BlowerGasketLeak, Parameter.Intake,
            ],
            [
                "pot-clogged", "pot-misseated", "pot-turned", "ash-passages-full", "exchanger-blocked", "exchanger-fouled", "baffle-misplaced",
                "wheel-fouled", "room-blower-dirty", "vent-fouled", "nest-in-cap", "tee-full", "terminal-snowed-in", "cleanout-cap-off",
                "igniter-passage-ashed", "igniter-misplaced", "proof-disc-cold", "thermocouple-dirty", "exhaust-probe-sooted",
                "hose-plugged", "hose-off", "condensate-in-hose", "intake-blocked",
            ]),
    ];

    private static readonly IReadOnlyList<WorkAction> Renewing =
    [
        Renew("replace-vacuum-switch", "Replace the vacuum switch", "vacuum-switch-open", "vacuum-switch-drifted", "vacuum-switch-closed"),
        Renew("replace-high-limit-disc", "Replace the high-limit disc", "high-limit-bad"),
        Renew("replace-proof-disc", "Replace the proof-of-fire disc", "proof-disc-bad", "proof-disc-closed", "proof-disc-cold"),
        Renew("replace-thermocouple", "Replace the thermocouple", "thermocouple-open", "thermocouple-dirty", "thermocouple-reversed"),
        Renew("replace-exhaust-probe", "Replace the exhaust probe", "exhaust-probe-drifted", "exhaust-probe-open", "exhaust-probe-sooted"),
        Renew("replace-pressure-sensor", "Replace the pressure sensor", "pressure-sensor-zero", "pressure-sensor-dead"),
        Renew("replace-igniter", "Replace the igniter", "igniter-dead", "igniter-weak", "igniter-to-earth", "igniter-misplaced"),
        Renew("replace-feed-motor", "Replace the feed motor with its gearbox", "feed-motor-dead", "feed-motor-weak", "feed-gearbox-stripped", "coupling-loose", "feed-mount-loose"),
        Renew("replace-combustion-blower", "Replace the combustion blower with its gasket",
            "combustion-blower-slow", "combustion-blower-seized", "combustion-blower-dead", "combustion-blower-intermittent", "blower-wheel-rubbing",
            "wheel-fouled", "blower-gasket-leaking", "blower-connector-loose"),
        Renew("replace-blower-gasket", "Replace the combustion blower's gasket", "blower-gasket-leaking"),
        Renew("replace-room-air-blower", "Replace the room-air blower", "room-blower-dead", "room-blower-slow", "room-blower-dirty"),
        Renew("replace-door-gasket", "Replace the door gasket", "door-gasket-leaking"),
        Renew("replace-pump", "Replace the circulating pump", "pump-dead", "pump-seized"),
        Renew("replace-board", "Replace the control board, parameters saved first",
            "board-dead", "feed-output-dead", "feed-output-stuck-on", "igniter-output-dead", "combustion-output-dead", "room-air-output-dead", "pump-output-dead"),
    ];

    /// <summary>Every action of every pattern.</summary>
    public static IReadOnlyList<WorkAction> All { get; } =
    [
        .. Cleaning, .. Renewing,
        .. FaultList.All.Where(f => Shared(f) is null).Select(Cure),
    ];

    /// <summary>Id of the action that is one fault's own remedy.</summary>
    /// <param name="faultId">Fault id.</param>
    public static string CureOf(string faultId) =>
        (FaultList.All.FirstOrDefault(f => f.Id == faultId) is { } fault ? Shared(fault)?.Id : null) ?? $"cure-{faultId}";

    /// <summary>The actions that can be done on a pattern.</summary>
    /// <param name="patternId">Pattern id.</param>
    public static IReadOnlyList<WorkAction> On(string patternId) => [.. All.Where(a => a.IsOn(patternId))];

    private static WorkAction Clean(
        string id, string name, double minutes, Parameter[] redraws, string[] cures, IReadOnlyList<string>? patterns = null) =>
        new(id, name, RemedyKind.Clean, minutes, id is FullService or "clean-combustion-blower" ? 8 : 0, [.. redraws.Select(Anew)], cures,
            id is FullService or "clean-vent" ? [Cautions.MakeSafe, Cautions.Ash, Cautions.Ladder, Cautions.Fibre] : [Cautions.MakeSafe, Cautions.Ash, Cautions.Fibre],
            patterns ?? []);

    private static WorkAction? Shared(Fault fault) => fault.Remedy.Kind switch
    {
        RemedyKind.Clean => Cleaning.Where(a => a.Id != FullService && a.Cures.Contains(fault.Id)).MinBy(a => a.Minutes),
        RemedyKind.Replace => Renewing.FirstOrDefault(a => a.Cures.Contains(fault.Id)),
        RemedyKind.Reset or RemedyKind.Adjust or RemedyKind.Advise => null,
    };

    private static WorkAction Renew(string id, string name, params string[] cures)
    {
        var faults = cures.Select(c => FaultList.All.Single(f => f.Id == c)).ToList();
        var shared = faults.Where(f => f.Remedy.Kind == RemedyKind.Replace).Select(f => f.Patterns).ToList();
        IReadOnlyList<string> patterns = shared.Any(p => p.Count == 0) ? [] : [.. shared.SelectMany(p => p).Distinct()];
        return new(id, name, RemedyKind.Replace, faults[0].Remedy.Minutes, faults[0].Remedy.PartCost,
            [.. faults.SelectMany(Redrawn).Distinct()], cures, faults[0].Remedy.Cautions, patterns);
    }

    private static IEnumerable<Redraw> Redrawn(Fault fault) =>
        fault.Shifts.Select(s => Anew(s.Parameter)).Concat(fault.Fouling is { } f ? [Anew(f.Parameter)] : []);

    private static WorkAction Cure(Fault fault) =>
        new($"cure-{fault.Id}", fault.Remedy.Words, fault.Remedy.Kind, fault.Remedy.Minutes, fault.Remedy.PartCost,
            [.. Redrawn(fault)],
            fault.Id == Bridge ? [fault.Id, "hopper-empty"] : [fault.Id], fault.Remedy.Cautions, fault.Patterns);

    private static Redraw Anew(Parameter parameter) => new(parameter, parameter switch
    {
        Parameter.Intake or Parameter.BurnPot or Parameter.Exchanger or Parameter.AshPassages or Parameter.Vent or Parameter.Wheel
            or Parameter.RoomAir => AsLeft,
        Parameter.BlowerSpeed or Parameter.DoorLeak or Parameter.AshDoorLeak or Parameter.LidLeak or Parameter.ExhaustLeak
            or Parameter.BlowerGasketLeak or Parameter.VentLeak or Parameter.Insulation or Parameter.Feed or Parameter.Moisture
            or Parameter.Wind or Parameter.House or Parameter.Supply or Parameter.SensedPressure or Parameter.SwitchThreshold
            or Parameter.SensorZero or Parameter.ProofSensor => null,
    });
}
