using Emberwright.Stove.Faults;
using static Emberwright.Diagnosis.Checks.Writing;

namespace Emberwright.Diagnosis.Checks;

/// <summary>Checks of the water side.</summary>
internal static class WaterChecks
{
    private static readonly IReadOnlyList<string> Hydronic = [PatternIds.Hydronic];

    public static IReadOnlyList<Check> Checks { get; } =
    [
        .. new[]
        {
            Look("feel-pump", "Pump in its test mode, hand on it: motion, flow, gurgling", 2, CheckNeeds.OnSite | CheckNeeds.Powered, ["pump-feel"], Cautions.Water),
            Look("feel-return", "Flow and return pipe once warm", 5, Fire, ["return-pipe"], Cautions.Water),
            Look("look-water-valves", "Look at valves and strainer of the circuit", 5, CheckNeeds.OnSite, ["water-valves"], Cautions.Water),
            Look("read-water-gauge", "Read the system pressure, cold", 1, ColdOnSite, ["water-gauge"]),
            Look("watch-pressure-swing", "System pressure cold and hot", 25, Fire, ["pressure-swing", "relief"], Cautions.Water),
            Look("look-relief", "Look at the relief valve's outlet", 2, CheckNeeds.OnSite, ["relief"], Cautions.Water),
            Look("look-water-leak", "Look for water: firebox, ash pan, pipework", 4, ColdOnSite, ["water-leak"], Cautions.Water),
            Look("look-safety-thermostat", "Look at the safety thermostat's button", 2, CheckNeeds.OnSite, ["safety-thermostat-button"], Cautions.FindWhy),
            Look("look-jacket", "Look at the jacket's walls in the firebox", 3, ColdOnSite, ["jacket"], Cautions.Ash),
            Look("return-valve-temperatures", "Return valve: pipe temperatures either side as it warms", 12, Fire, ["return-valve", "return-pipe"], Cautions.Water),
            Look("compare-water-probe", "Water temperature shown against a thermometer on the flow", 4, CheckNeeds.OnSite, ["water-shown"], Cautions.Water),
            Try("press-vessel-valve", "Press the expansion vessel's valve: air or water?", 3, ColdOnSite, ["vessel-tap"], Cautions.Water),
            Try("bleed-circuit", "Cooled: bleed the high point and the pump", 10, ColdOnSite, ["bleed"], Cautions.Water) with { Cures = ["air-lock"], Action = ActionList.CureOf("air-lock") },
            Try("hold-pressure", "Isolate the stove and hold its water pressure twenty minutes", 22, ColdOnSite, ["hold-pressure"], Cautions.Water),
            Try("free-pump-rotor", "Free the pump's rotor through its end screw", 8, Opened, ["pump-feel"], Cautions.MakeSafe, Cautions.Water) with
            { Cures = ["pump-seized"], Action = ActionList.CureOf("pump-seized") },
        }.Select(c => c with { Patterns = Hydronic }),
    ];
}
