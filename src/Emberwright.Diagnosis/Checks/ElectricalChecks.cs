using Emberwright.Stove;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Faults;
using static Emberwright.Diagnosis.Checks.Writing;

namespace Emberwright.Diagnosis.Checks;

/// <summary>Volts, ohms, amps, and parts tried on their own supply.</summary>
internal static class ElectricalChecks
{

    public static IReadOnlyList<Check> Checks { get; } =
    [
        Measure("supply-voltage", "Volts at the socket, stove starting", 3, CheckNeeds.OnSite | CheckNeeds.Powered, [Volts(Places.Supply)], Cautions.Live) with { Signs = ["supply-idle"] },
        Measure("supply-voltage-loaded", "Volts at the stove with igniter, blowers and whatever shares its supply all on; then at the panel", 5, CheckNeeds.OnSite | CheckNeeds.Powered, [], Cautions.Live) with
        { Signs = ["supply-loaded", "panel-volts"] },
        Measure("board-supply-voltage", "Volts at the board behind the fuse", 3, Live, [Volts(ComponentIds.Fuse)], Cautions.Live) with { Signs = ["fuse"] },
        Measure("vacuum-switch-voltage", "Volts across the vacuum switch while the board calls for feed", 3, Live, [Volts(ComponentIds.VacuumSwitch)], Cautions.Live, Cautions.NoBridge) with { Patterns = PatternIds.VacuumSwitch },
        Measure("vacuum-switch-both", "Volts across the vacuum switch and vacuum at its hose, together", 6, Live,
            [Volts(ComponentIds.VacuumSwitch), new(Stove.Measure.Pressure, Places.SwitchHose, Condition.FanOnly)], Cautions.Live, Cautions.NoBridge) with
        { Patterns = PatternIds.VacuumSwitch },
        Measure("high-limit-voltage", "Volts across the high-limit disc while the board calls for feed", 3, Live, [Volts(ComponentIds.HighLimitDisc)], Cautions.Live, Cautions.NoBridge) with { Patterns = PatternIds.HighLimit },
        Measure("lid-switch-voltage", "Volts across the lid switch, lid shut, while the board calls", 3, Live, [Volts(ComponentIds.LidSwitch)], Cautions.Live, Cautions.NoBridge) with { Patterns = PatternIds.LidSwitch },
        Measure("door-switch-voltage", "Volts across the door switch, door shut, while the board calls", 3, Live, [Volts(ComponentIds.DoorSwitch)], Cautions.Live, Cautions.NoBridge) with { Patterns = PatternIds.DoorSwitch },
        Measure("proof-disc-voltage", "Volts across the proof-of-fire disc on a hot stove", 4, CheckNeeds.OnSite | CheckNeeds.PanelsOff | CheckNeeds.Powered | CheckNeeds.Burning,
            [new(Stove.Measure.Voltage, ComponentIds.ProofDisc, Condition.HighBurn)], Cautions.Live, Cautions.NoBridge, Cautions.Hot) with
        { Patterns = PatternIds.ProofDisc },
        Measure("feed-motor-voltage", "Volts at the feed motor in a pulse", 3, Live, [Volts(ComponentIds.FeedMotor)], Cautions.Live),
        Measure("feed-output-voltage", "Volts at the board's feed output, loaded, while it calls", 4, Live, [Volts(ComponentIds.FeedOutput), Volts(ComponentIds.FeedMotor)], Cautions.Live),
        Measure("igniter-output-voltage", "Volts at the igniter while the board calls", 3, Live, [Volts(ComponentIds.Igniter)], Cautions.Live),
        Measure("combustion-output-voltage", "Volts at the combustion blower while the board calls", 3, Live, [Volts(ComponentIds.CombustionBlower)], Cautions.Live),
        Measure("room-air-output-voltage", "Volts at the room-air blower on high", 3, CheckNeeds.OnSite | CheckNeeds.PanelsOff | CheckNeeds.Powered, [new(Stove.Measure.Voltage, ComponentIds.RoomAirBlower, Condition.HighBurn)], Cautions.Live) with
        { Patterns = PatternIds.RoomAirBlower },
        Measure("feed-motor-current", "Feed motor's current in a pulse, by clamp", 3, Live, [Amps(ComponentIds.FeedMotor)], Cautions.Live),
        Measure("igniter-current", "Igniter's current, by clamp", 3, Live, [Amps(ComponentIds.Igniter)], Cautions.Live),
        Measure("combustion-blower-current", "Combustion blower's current, by clamp", 3, Live, [Amps(ComponentIds.CombustionBlower)], Cautions.Live),
        Measure("igniter-ohms", "Igniter's resistance, unplugged", 6, Opened, [Ohms(ComponentIds.Igniter)], Cautions.MakeSafe),
        Measure("feed-motor-ohms", "Feed motor's winding, unplugged", 5, Opened, [Ohms(ComponentIds.FeedMotor)], Cautions.MakeSafe),
        Measure("combustion-blower-ohms", "Combustion blower's winding, unplugged", 5, Opened, [Ohms(ComponentIds.CombustionBlower)], Cautions.MakeSafe),
        Measure("room-blower-ohms", "Room-air blower's winding, unplugged", 5, Opened, [Ohms(ComponentIds.RoomAirBlower)], Cautions.MakeSafe) with { Patterns = PatternIds.RoomAirBlower },
        Measure("high-limit-ohms", "High-limit disc's resistance, leads off", 4, Opened, [Ohms(ComponentIds.HighLimitDisc)], Cautions.MakeSafe) with { Patterns = PatternIds.HighLimit },
        Measure("fuse-ohms", "Fuse's resistance, taken out", 3, Opened, [Ohms(ComponentIds.Fuse)], Cautions.MakeSafe),
        Measure("thermostat-ohms", "Resistance of the thermostat pair off the stove, thermostat calling", 4, CheckNeeds.OnSite, [Ohms(ComponentIds.Thermostat)]),
        Measure("thermocouple-ohms", "Thermocouple's resistance off the board", 3, Opened, [Ohms(ComponentIds.Thermocouple)], Cautions.MakeSafe) with { Patterns = [PatternIds.Thermocouple] },
        Measure("thermocouple-millivolts", "Thermocouple's millivolts at the board, ten minutes after flame", 12, Fire | CheckNeeds.PanelsOff, [], Cautions.Live, Cautions.Hot) with
        { Patterns = [PatternIds.Thermocouple], Signs = ["thermocouple-millivolts"] },
        Measure("exhaust-probe-ohms", "Exhaust probe's resistance at a known temperature, against its table", 5, Opened, [Ohms(ComponentIds.ExhaustProbe)], Cautions.MakeSafe) with { Patterns = PatternIds.ExhaustProbe },
        Measure("exhaust-probe-compare", "Exhaust temperature shown against a thermometer beside the probe", 6, Fire, [], Cautions.Hot) with
        { Patterns = PatternIds.ExhaustProbe, Signs = ["exhaust-shown"] },
        Measure("pressure-sensor-zero", "Pressure shown with the hoses off and the blower stopped", 2, Opened & ~CheckNeeds.Unplugged | CheckNeeds.Powered, [], Cautions.HoseOff) with
        { Patterns = [PatternIds.Sealed], Signs = ["zero-shown"] },
        Measure("pressure-sensor-both", "Pressure shown and a gauge teed into the sensor's hose, together", 4, Live, [], Cautions.Live) with
        { Patterns = [PatternIds.Sealed], Signs = ["draught-shown"] },
        Measure("pressure-sensor-volts", "Pressure sensor's supply and output, hoses off", 4, Live, [new(Stove.Measure.Voltage, ComponentIds.PressureSensor, Condition.BlowerOff)], Cautions.Live) with
        { Patterns = [PatternIds.Sealed] },
        Measure("pump-current", "Circulating pump's current in its test mode", 3, Live, [new(Stove.Measure.Current, ComponentIds.CirculatingPump, Condition.HighBurn)], Cautions.Live) with { Patterns = [PatternIds.Hydronic] },
        Measure("pump-output-voltage", "Volts at the circulating pump in its test mode", 3, Live, [new(Stove.Measure.Voltage, ComponentIds.CirculatingPump, Condition.HighBurn)], Cautions.Live) with { Patterns = [PatternIds.Hydronic] },
        Measure("safety-thermostat-voltage", "Volts across the safety thermostat while the board calls", 3, Live, [Volts(ComponentIds.SafetyThermostat)], Cautions.Live, Cautions.NoBridge) with { Patterns = [PatternIds.Hydronic] },
        Measure("water-probe-ohms", "Water probe's resistance at a known temperature", 5, Opened, [Ohms(ComponentIds.WaterProbe)], Cautions.MakeSafe, Cautions.Water) with { Patterns = [PatternIds.Hydronic], Signs = ["water-shown"] },
        Measure("agitator-motor-ohms", "Agitator motor's winding, unplugged", 5, Opened, [Ohms(ComponentIds.AgitatorMotor)], Cautions.MakeSafe) with { Patterns = [PatternIds.MultiFuel] },
        Measure("agitator-motor-current", "Agitator motor's current, by clamp", 3, Live, [Amps(ComponentIds.AgitatorMotor)], Cautions.Live) with { Patterns = [PatternIds.MultiFuel] },
        Measure("room-air-disc-voltage", "Volts across the room-air disc, hot", 4, Fire | CheckNeeds.PanelsOff, [new(Stove.Measure.Voltage, ComponentIds.RoomAirDisc, Condition.HighBurn)], Cautions.Live, Cautions.Hot) with
        { Patterns = PatternIds.AirDamper },
        Try("igniter-earth-ohms", "Ohms to earth of igniter, blowers and wiring, unplugged", 5, Opened, ["earth-ohms"], Cautions.MakeSafe),
        Measure("run-capacitor-capacitance", "Run capacitor's capacitance, discharged, a lead off", 5, Opened, [new(Stove.Measure.Capacitance, ComponentIds.RunCapacitor, Condition.FanOnly)], Cautions.MakeSafe, Cautions.Discharge) with
        { Patterns = [PatternIds.Sealed, PatternIds.Hydronic] },
        Try("speed-sensor-pulses", "Speed sensor's pulses while the wheel is turned by hand", 6, Live, ["speed-pulses"], Cautions.Live) with { Patterns = PatternIds.ExhaustProbe },
        Try("wiggle-wires", "Move wires and plugs gently with a dry wooden stick while it runs", 4, Live, ["wiggle"], Cautions.Live),
        Try("lid-plunger", "Press the lid switch's plunger, hands clear of live parts", 2, FanOnly, ["lid-plunger"], Cautions.Live, Cautions.NoBridge) with { Patterns = PatternIds.LidSwitch },
        Try("door-plunger", "Press the door switch's plunger, hands clear of live parts", 2, FanOnly, ["door-plunger"], Cautions.Live, Cautions.NoBridge) with { Patterns = PatternIds.DoorSwitch },
        Try("join-thermostat", "Join the thermostat's terminals at the stove for a moment", 3, CheckNeeds.OnSite | CheckNeeds.Powered, ["thermostat-joined"], "Only at a low-voltage pair; take the joining wire away again."),
        Try("hose-off-test", "Take the hose off while it feeds: does the feed stop?", 4, FanOnly | CheckNeeds.PanelsOff, ["hose-off-test"], Cautions.Live) with { Patterns = PatternIds.VacuumSwitch },
        Try("vacuum-switch-pump", "Vacuum switch on a hand pump and gauge: where does it close and open?", 6, Opened, ["switch-pump"], Cautions.MakeSafe, Cautions.HoseOff) with { Patterns = PatternIds.VacuumSwitch },
        Try("disc-hot-plate", "Disc on a hot plate with a thermometer: where does it act?", 10, Opened, ["disc-bench"], Cautions.MakeSafe, Cautions.Hot),
        Try("feed-motor-alone", "Coupling undone: feed motor alone on a fused test lead, held by hand", 8, Opened, ["feed-motor-alone", "coupling"], Cautions.MakeSafe, Cautions.TestLead),
        Try("turn-auger", "Turn the auger by hand, motor off its shaft", 6, Opened, ["auger-hand"], Cautions.MakeSafe, Cautions.Auger),
        Try("combustion-blower-alone", "Combustion blower alone on a fused test lead", 5, Opened, ["combustion-blower-alone"], Cautions.MakeSafe, Cautions.TestLead),
        Try("room-blower-alone", "Room-air blower alone on a fused test lead", 5, Opened, ["room-blower-alone"], Cautions.MakeSafe, Cautions.TestLead) with { Patterns = PatternIds.RoomAirBlower },
        Try("igniter-alone", "Igniter alone on a fused test lead", 5, Opened, ["igniter-alone"], Cautions.MakeSafe, Cautions.TestLead, Cautions.IgniterLead),
        Try("agitator-motor-alone", "Agitator motor alone on a fused test lead", 6, Opened, ["agitator-alone", "agitator-hand"], Cautions.MakeSafe, Cautions.TestLead) with { Patterns = [PatternIds.MultiFuel] },
        Try("turn-agitator", "Break the clinker out, turn the agitator by hand", 8, Opened, ["agitator-hand"], Cautions.MakeSafe, Cautions.Ash) with { Patterns = [PatternIds.MultiFuel] },
        Try("hot-run-to-failure", "Run it on high until it fails, meter on the blower", 60, Fire | CheckNeeds.PanelsOff, ["combustion-blower-run"], Cautions.Live, Cautions.Hot, Cautions.Monoxide),
    ];
}
