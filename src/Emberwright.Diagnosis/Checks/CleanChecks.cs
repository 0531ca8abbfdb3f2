using Emberwright.Stove.Faults;
using static Emberwright.Diagnosis.Checks.Writing;

namespace Emberwright.Diagnosis.Checks;

/// <summary>Cleaning and resetting, which cure and show at once.</summary>
internal static class CleanChecks
{
    public static IReadOnlyList<Check> Checks { get; } =
    [
        new("test-run", "Start it and see whether the complaint is gone", CheckKind.Look, 5, 0, [Cautions.Hot], CheckNeeds.OnSite | CheckNeeds.Powered, [], ["runs-now"], [], []),
        Clean("clean-burn-pot", ["pot-holes", "pot-content", "pot-seat"]),
        Clean("clean-ash-passages", ["ash-passages-look"]),
        Clean("clean-exchanger", ["exchanger-look", "exchanger-coat", "baffle"]),
        Clean("clean-combustion-blower", ["wheel-look", "blower-spin", "blower-gasket"]),
        Clean("clean-room-air-blower", ["room-air-look"]),
        Clean("clean-vent", ["vent-look", "cap-look", "tee-look"]),
        Clean("clean-tee", ["tee-look", "tee-cap"]),
        Clean("clean-intake", ["intake-look"]),
        Clean("clean-hose", ["hose", "hose-bore"]),
        Clean("clean-igniter-passage", ["igniter-passage"]),
        Clean("clean-proof-disc", ["disc-seat"]),
        Clean("clean-thermocouple", ["thermocouple-seat"]),
        Clean("clean-exhaust-probe", ["probe-seat"]),
        Clean(ActionList.FullService,
            ["pot-holes", "ash-passages-look", "exchanger-look", "exchanger-coat", "wheel-look", "vent-look", "cap-look", "tee-look", "hose-bore"]),
        new("reset-high-limit", "Press the high-limit disc's reset: does it click?", CheckKind.Reset, 3, 0, [Cautions.FindWhy, Cautions.NoBridge], ColdOnSite, [],
            ["disc-click"], ["high-limit-tripped"], PatternIds.HighLimit,
            ActionList.CureOf("high-limit-tripped")),
        new("fill-hopper", "Fill the hopper, break a bridge with a wooden stick", CheckKind.Reset, 4, 0, [Cautions.Auger], CheckNeeds.None, [],
            ["hopper"], ["hopper-empty", "hopper-bridging"], [], ActionList.CureOf("hopper-bridging")),
    ];
}
