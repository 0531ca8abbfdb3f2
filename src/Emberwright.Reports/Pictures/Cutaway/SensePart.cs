using Emberwright.Reports.Wording;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Patterns;

namespace Emberwright.Reports.Pictures.Cutaway;

/// <summary>What watches the stove: the vacuum switch or pressure sensor on its hose, discs, probes, lid and door switches.</summary>
internal static class SensePart
{
    public static void Draw(Draught on, CutawayFrame f, Pattern pattern)
    {
        Hose(on, f, pattern);
        foreach (var (component, name, at) in Places(f))
            if (pattern.Wiring.HasComponent(component)) Sensor(on, name, at);
        if (pattern.Wiring.HasComponent(ComponentIds.Thermocouple)) Thermocouple(on, f);
    }

    private static (string Component, string Name, Spot At)[] Places(CutawayFrame f) =>
    [
        (ComponentIds.ProofDisc, Say.Of("section.proof-of-fire-disc"), new(f.Blower.X - 14, f.Blower.Y + 17)),
        (ComponentIds.HighLimitDisc, Say.Of("section.high-limit-disc"), f.Hopper.Bottom > 200 ? new(214, 254) : new(f.AirWay.Right + 6, f.Hopper.Bottom + 8)),
        (ComponentIds.LidSwitch, Say.Of("section.lid-switch"), new(f.Hopper.X + 9, f.Hopper.Y + 5)),
        (ComponentIds.DoorSwitch, Say.Of("section.door-switch"), new(f.Body.X + 9, f.Firebox.Y + 1)),
        (ComponentIds.ExhaustProbe, Say.Of("section.exhaust-probe"), new(f.Outlet.X - 12, f.Outlet.Y - 11)),
        (ComponentIds.WaterProbe, Say.Of("section.water-probe"), new(f.AirWay.Right, f.Exchanger.Y + 20)),
        (ComponentIds.SafetyThermostat, Say.Of("section.safety-thermostat"), new(f.AirWay.Right, f.Exchanger.Y + 38)),
    ];

    private static void Sensor(Draught on, string name, Spot at)
    {
        on.Sensors.Add(new(name, at));
    }

    private static void Thermocouple(Draught on, CutawayFrame f)
    {
        var tip = new Spot(f.Pot.X + 11, f.Pot.Y - 9);
        var head = new Spot(f.AirWay.Right + 8, f.Pot.Y - 9);
        on.Part(new Line(tip, head, CutawayRoles.Wall), new Circle(tip, 2.6, CutawayRoles.Solid));
        on.Sensors.Add(new(Say.Of("section.thermocouple"), head));
    }

    private static void Hose(Draught on, CutawayFrame f, Pattern pattern)
    {
        var sensor = pattern.Wiring.HasComponent(ComponentIds.PressureSensor);
        if (!sensor && !pattern.Wiring.HasComponent(ComponentIds.VacuumSwitch)) return;
        var port = pattern.Ports.FirstOrDefault(p => p.Id == pattern.Switch.SensePort);
        if (port is null || f.Of(port.Node) is not { } from) return;
        var box = f.Hopper.Bottom > 200 ? new Box(f.AirWay.Right + 4, 230, 20, 14) : new Box(f.AirWay.Right + 24, f.Pot.Y - 14, 20, 14);
        var bend = Math.Min(f.AirWay.Right + 12, box.X - 4);
        on.Part(new Polyline([from, new(bend, from.Y), new(bend, box.Centre.Y), new(box.X, box.Centre.Y)], CutawayRoles.Hose));
        on.Part(new Rect(box, CutawayRoles.Part, 2));
        if (sensor) on.Part(new Text(new(box.Centre.X, box.Y + 11), "Pa", new Lettering(10, true, Token.Ink), Anchor.Middle));
        else on.Part(new Line(new(box.X + 4, box.Y + 10), new(box.Right - 5, box.Y + 4), CutawayRoles.Wall), new Circle(new(box.X + 4, box.Y + 10), 1.5, CutawayRoles.Solid), new Circle(new(box.Right - 4, box.Y + 10), 1.5, CutawayRoles.Solid));
        on.Sensors.Add(new(sensor ? Say.Of("section.pressure-sensor-hose-to-the", Say.Term(port.Name)) : Say.Of("section.vacuum-switch-hose-to-the", Say.Term(port.Name)), new(box.Right + 6, box.Centre.Y)));
    }
}
