using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;
using static Emberwright.Diagnosis.Checks.Writing;

namespace Emberwright.Diagnosis.Checks;

/// <summary>Pressures, flue gas, temperatures, speed and feed.</summary>
internal static class AirMeasurements
{
    private static Observable Pa(string place, Condition condition) => new(Stove.Measure.Pressure, place, condition);

    public static IReadOnlyList<Check> Checks { get; } =
    [
        Measure("firebox-pressure", "Firebox pressure, fan only", 5, FanOnly, [Pa(Places.Firebox, Condition.FanOnly)]),
        Measure("blower-inlet-pressure", "Blower inlet pressure, fan only", 4, FanOnly, [Pa(Places.BlowerInlet, Condition.FanOnly)]),
        Measure("collar-pressure", "Vent collar pressure, fan only", 4, FanOnly, [Pa(Places.Collar, Condition.FanOnly)], "Never drill listed vent: use a spare tee cap with a barb."),
        Measure("three-state-test", "Three-state test at the firebox: closed, door open, intake stopped, blower off", 10, FanOnly,
            [Pa(Places.Firebox, Condition.FanOnly), Pa(Places.Firebox, Condition.DoorOpen), Pa(Places.Firebox, Condition.IntakeStopped), Pa(Places.Firebox, Condition.BlowerOff)]),
        Measure("three-state-all-ports", "Three-state test at firebox, blower inlet and collar", 16, FanOnly,
            [
                .. from state in new[] { Condition.FanOnly, Condition.DoorOpen, Condition.IntakeStopped, Condition.BlowerOff }
                   from port in new[] { Places.Firebox, Places.BlowerInlet, Places.Collar }
                   select Pa(port, state),
            ]),
        Measure("firebox-intake-stopped", "Firebox pressure, air intake stopped", 3, FanOnly, [Pa(Places.Firebox, Condition.IntakeStopped)]),
        Measure("firebox-blower-off", "Firebox pressure, blower off, for two minutes", 3, ColdOnSite, [Pa(Places.Firebox, Condition.BlowerOff)]),
        Measure("switch-hose-pressure", "Vacuum at the switch end of the hose, fan only", 4, FanOnly | CheckNeeds.PanelsOff, [Pa(Places.SwitchHose, Condition.FanOnly)], Cautions.Live, Cautions.HoseOff),
        Measure("house-pressure", "House against outdoors, fans and hood on, windows shut", 6, CheckNeeds.OnSite, []) with { Signs = ["house-pressure"] },
        Measure("flue-oxygen", "Flue O2, CO2 and CO on high, after 30 minutes", 12, Fire,
            [new(Stove.Measure.Oxygen, Places.Flue, Condition.HighBurn), new(Stove.Measure.CarbonMonoxide, Places.Flue, Condition.HighBurn)], Cautions.Hot, Cautions.Monoxide),
        Measure("exhaust-temperature", "Exhaust temperature at the collar, on high", 4, Fire, [new(Stove.Measure.Temperature, Places.Collar, Condition.HighBurn)], Cautions.Hot),
        Measure("warm-air-temperature", "Warm air at the grille, on high", 3, Fire, [new(Stove.Measure.Temperature, Places.WarmAir, Condition.HighBurn)], Cautions.Hot) with { Patterns = PatternIds.RoomAirBlower },
        Measure("room-monoxide", "CO in the room, on high, instrument zeroed outdoors", 30, Fire, [new(Stove.Measure.CarbonMonoxide, Places.Room, Condition.HighBurn)], Cautions.Monoxide) with { Signs = ["room-monoxide"] },
        Measure("warm-air-monoxide", "CO in the warm air, on high and again after shutdown", 20, Fire, [], Cautions.Monoxide, Cautions.Hot) with { Signs = ["warm-air-monoxide"] },
        Measure("flange-monoxide", "CO beside the blower's flange while it burns", 5, Fire | CheckNeeds.PanelsOff, [], Cautions.Monoxide, Cautions.Live, Cautions.Hot) with { Signs = ["flange-monoxide"] },
        Measure("combustion-blower-speed", "Combustion blower's speed by tachometer", 5, FanOnly | CheckNeeds.PanelsOff, [new(Stove.Measure.Speed, ComponentIds.CombustionBlower, Condition.FanOnly)], Cautions.Live) with { Signs = ["combustion-blower-run"] },
        Measure("weigh-feed", "Catch and weigh the feed, five minutes on high", 10, FanOnly, [new(Stove.Measure.Feed, Places.Feed, Condition.HighBurn)]),
        Try("tape-hopper-seam", "Tape the hopper's seam and watch the firebox vacuum", 4, FanOnly, ["hopper-tape", "lid-seal"]),
        Try("oxygen-fan-test", "Switch the room-air blower off and on and watch flue O2: does it rise?", 6, Fire, ["oxygen-fan"], Cautions.Monoxide),
        Try("window-open-test", "Open a window and look again", 5, CheckNeeds.OnSite, ["window-open"]),
        Try("hood-on-test", "Hood and fans on, windows shut: look again", 6, FanOnly, ["hood-on"], Cautions.Monoxide),
        Try("dry-bag-test", "Burn a known dry bag", 30, Fire, ["dry-bag"]),
    ];
}
