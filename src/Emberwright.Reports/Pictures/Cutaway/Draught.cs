using System.Collections.Immutable;

namespace Emberwright.Reports.Pictures.Cutaway;

/// <summary>A name beside the section and the place it points at.</summary>
internal sealed record PartName(string Words, Spot At, string? Id = null);

/// <summary>
/// The sheet a section is drawn on: shapes in three layers (stove, flows, marks), the names that point into it, and what
/// is numbered in its key.
/// </summary>
internal sealed class Draught
{
    private readonly List<Shape> _parts = [];
    private readonly List<Shape> _flows = [];
    private readonly List<Shape> _marks = [];

    /// <summary>The names, to be placed beside the section.</summary>
    public List<PartName> Names { get; } = [];

    /// <summary>Switches and probes, numbered in the key.</summary>
    public List<PartName> Sensors { get; } = [];

    /// <summary>All shapes from back to front.</summary>
    public ImmutableArray<Shape> Shapes => [.. _parts, .. _flows, .. _marks];

    public void Part(params IEnumerable<Shape> shapes) => _parts.AddRange(shapes);

    public void Mark(params IEnumerable<Shape> shapes) => _marks.AddRange(shapes);

    public void Name(string words, Spot at, string? id = null) => Names.Add(new(words, at, id));

    /// <summary>Combustion air: a thin line with hollow heads.</summary>
    public void Air(params ImmutableArray<Spot> way) => Flow(way, CutawayRoles.Air, (tip, back, side) => new Polygon([tip, back, side], CutawayRoles.AirHead), 7);

    /// <summary>Flue gas: a thick line with full heads.</summary>
    public void Gas(params ImmutableArray<Spot> way) => Flow(way, CutawayRoles.Gas, (tip, back, side) => new Polygon([tip, back, side], CutawayRoles.GasHead), 9);

    /// <summary>Room air: a dashed line with open heads.</summary>
    public void RoomAir(params ImmutableArray<Spot> way) => Flow(way, CutawayRoles.RoomAir, (tip, back, side) => new Polyline([back, tip, side], CutawayRoles.RoomAirHead), 8);

    /// <summary>Water: a dotted line with open heads.</summary>
    public void Water(params ImmutableArray<Spot> way) => Flow(way, CutawayRoles.Flow, (tip, back, side) => new Polyline([back, tip, side], CutawayRoles.RoomAirHead), 7);

    /// <summary>Points of an arc, angles in degrees clockwise from three o'clock.</summary>
    public static IEnumerable<Spot> Arc(Spot centre, double radius, double from, double to)
    {
        var steps = Math.Max(2, (int)Math.Ceiling(Math.Abs(to - from) / 12));
        for (var i = 0; i <= steps; i++)
        {
            var a = (from + (to - from) * i / steps) * Math.PI / 180;
            yield return new(centre.X + radius * Math.Cos(a), centre.Y + radius * Math.Sin(a));
        }
    }

    /// <summary>The three-part sample of a flow for the key.</summary>
    public static ImmutableArray<Shape> Sample(Action<Draught> draw)
    {
        var sheet = new Draught();
        draw(sheet);
        return sheet.Shapes;
    }

    private void Flow(ImmutableArray<Spot> way, Role line, Func<Spot, Spot, Spot, Shape> head, double size)
    {
        var (a, b) = (way[^2], way[^1]);
        var length = Math.Sqrt((b.X - a.X) * (b.X - a.X) + (b.Y - a.Y) * (b.Y - a.Y));
        var (dx, dy) = ((b.X - a.X) / length, (b.Y - a.Y) / length);
        var foot = new Spot(b.X - dx * size, b.Y - dy * size);
        _flows.Add(new Polyline([.. way[..^1], line.Name == CutawayRoles.Gas.Name || line.Name == CutawayRoles.Air.Name ? foot : b], line));
        _flows.Add(head(b, new(foot.X - dy * size * 0.45, foot.Y + dx * size * 0.45), new(foot.X + dy * size * 0.45, foot.Y - dx * size * 0.45)));
    }
}
