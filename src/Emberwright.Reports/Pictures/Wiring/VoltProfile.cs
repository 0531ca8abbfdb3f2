using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pictures.Wiring;

/// <summary>
/// The level of volts beside the chain: upright while nothing drops, a step where something does. A step across an
/// open part is the cliff. Dashed where it is only expected.
/// </summary>
internal sealed class VoltProfile(WiringInput input, double zeroX, double fullX)
{
    /// <summary>Words and numbers above; returns where the chain may begin.</summary>
    public double DrawHead(List<Shape> shapes, double y, double textX)
    {
        var words = new Lettering(12);
        var lines = Words.Wrap(input.VoltsTo, zeroX - 18 - textX, words);
        for (var i = 0; i < lines.Count; i++) shapes.Add(new Text(new(textX, y + 14 + 15 * i), lines[i], words));
        var low = y + 14 + 15 * (lines.Count - 1);
        shapes.Add(new Text(new(zeroX, low), $"0 {input.Unit}", words, Anchor.Middle));
        shapes.Add(new Text(new(fullX, low), $"{WiringWords.Volts(input.SupplyV)} {input.Unit}", words, Anchor.Middle));
        return low + 14;
    }

    /// <summary>Draws axes, level, cliff, readings.</summary>
    public void Draw(List<Shape> shapes, List<WiringRow> rows, double top, double bottom)
    {
        shapes.Add(new Line(new(zeroX, top), new(zeroX, bottom), WiringSigns.Dotted));
        shapes.Add(new Line(new(fullX, top), new(fullX, bottom), WiringSigns.Dotted));
        var points = rows.Select((row, i) => (row, i)).Where(r => r.row.Item is WiringPoint p && WiringPicture.Level(p) is not null).ToList();
        for (var k = 1; k < points.Count; k++) DrawBetween(shapes, rows, points[k - 1].i, points[k].i);
        foreach (var (row, _) in points)
        {
            var point = (WiringPoint)row.Item;
            if (point.ReadV is not { } read) continue;
            var at = new Spot(X(read), row.Y);
            if (!WiringWords.IsOut(input, point))
            {
                shapes.Add(new Circle(at, 5.5, Roles.InBefore));
                continue;
            }

            shapes.Add(new Line(new(X(point.ExpectV!.Value), row.Y), at, Roles.Plumb));
            shapes.Add(Marks.Diamond(at, 7));
        }
    }

    private void DrawBetween(List<Shape> shapes, List<WiringRow> rows, int from, int to)
    {
        var (upper, lower) = ((WiringPoint)rows[from].Item, (WiringPoint)rows[to].Item);
        var (a, b) = (WiringPicture.Level(upper)!.Value, WiringPicture.Level(lower)!.Value);
        var between = rows[(from + 1)..to].Where(r => r.Item is WiringPart).ToList();
        var open = between.FirstOrDefault(r => r.Item is WiringPart { State: PartState.Open });
        var step = open ?? between.FirstOrDefault(r => r.Item is WiringPart { Kind: PartKind.Motor or PartKind.Heater }) ?? between.FirstOrDefault();
        var y = step?.Y ?? (rows[from].Y + rows[to].Y) / 2;
        var known = upper.ReadV is not null && lower.ReadV is not null;
        var steps = Math.Abs(a - b) > input.SupplyV / 5;
        if (steps && open is { Item: WiringPart { AsItShould: false } })
        {
            shapes.Add(new Line(new(X(a), rows[from].Y), new(X(a), y), known ? WiringSigns.Volts : Roles.Supposed));
            shapes.Add(new Line(new(X(b), y), new(X(b), rows[to].Y), known ? WiringSigns.Volts : Roles.Supposed));
            var (left, right) = (Math.Min(X(a), X(b)), Math.Max(X(a), X(b)));
            shapes.Add(new Line(new(left - 2.5, y), new(right + 2.5, y), WiringSigns.Cliff));
            var value = $"{WiringWords.Volts(Math.Abs(a - b))} {input.Unit}";
            var end = right - 6;
            shapes.Add(new Text(new(end, y - 7), Say.Of("circuit.across"), WiringSigns.Words, Anchor.End));
            shapes.Add(new Text(new(end - WiringSigns.Words.Width(Say.Of("circuit.across")), y - 7), value, WiringSigns.Strong, Anchor.End));
        }
        else
        {
            shapes.Add(new Polyline([new(X(a), rows[from].Y), new(X(a), y), new(X(b), y), new(X(b), rows[to].Y)], known ? WiringSigns.Volts : Roles.Supposed));
        }
    }

    private double X(double volts) => zeroX + Math.Clamp(volts / input.SupplyV, -0.15, 1.2) * (fullX - zeroX);
}
