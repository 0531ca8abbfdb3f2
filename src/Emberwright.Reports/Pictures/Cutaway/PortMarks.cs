using System.Collections.Immutable;
using Emberwright.Reports.Wording;
using Emberwright.Stove.Patterns;

namespace Emberwright.Reports.Pictures.Cutaway;

/// <summary>The ports where a gauge joins, lettered in the order of the air; each can be tapped.</summary>
internal static class PortMarks
{
    public const double Radius = 9;

    /// <summary>The ports that the section has a place for, with letter and place.</summary>
    public static ImmutableArray<(string Letter, Port Port, Spot At)> Of(CutawayFrame f, Pattern pattern) =>
        [.. pattern.Ports.Select(p => (Port: p, At: f.Of(p.Node))).Where(p => p.At is not null)
            .Select((p, i) => (((char)('A' + i)).ToString(), p.Port, p.At!.Value))];

    public static void Draw(Draught on, CutawayFrame f, Pattern pattern)
    {
        foreach (var (letter, port, at) in Of(f, pattern))
            on.Mark(new Group([new Circle(at, 22, Roles.Hit), .. Sign(letter, at)], Id: port.Id, Tap: port.Id, Title: Say.Of("section.port-a-gauge-joins-here", letter, Say.Term(port.Name))));
    }

    /// <summary>Switches and probes, each under its number.</summary>
    public static void Sensors(Draught on)
    {
        for (var i = 0; i < on.Sensors.Count; i++)
            on.Mark(new Group(Sensor(i + 1, on.Sensors[i].At), Id: $"sensor-{i + 1}", Title: on.Sensors[i].Words));
    }

    /// <summary>The full disc with its number.</summary>
    public static ImmutableArray<Shape> Sensor(int number, Spot at) =>
        [new Circle(at, 7, CutawayRoles.Numbered), new Text(new(at.X, at.Y + 4), $"{number}", CutawayRoles.Number, Anchor.Middle)];

    /// <summary>The ring with its letter.</summary>
    public static ImmutableArray<Shape> Sign(string letter, Spot at) =>
        [new Circle(at, Radius, CutawayRoles.Port), new Text(new(at.X, at.Y + 4), letter, Roles.Name, Anchor.Middle)];
}
