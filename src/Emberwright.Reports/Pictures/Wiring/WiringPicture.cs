using System.Collections.Immutable;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pictures.Wiring;

/// <summary>
/// The wiring picture: the circuit runs down, volts run right. Question it answers: where along the chain is the
/// cliff? It lies level with the open part, and its length is the voltage across it.
/// </summary>
public static class WiringPicture
{
    internal const double WireX = 44;
    private const double TextX = 74;
    private const double PointReach = 13;

    /// <summary>Draws the chain; as long as it needs to be.</summary>
    /// <param name="input">What to show.</param>
    /// <param name="width">Width of the picture, picture units; at least 320.</param>
    /// <exception cref="ArgumentException">The input cannot be drawn; the message names the field.</exception>
    public static Scene Draw(WiringInput input, double width = 374)
    {
        input.Check();
        var right = Math.Max(width, 320) - 16;
        var shapes = new List<Shape>();
        var y = 0.0;
        if (input.Live) y = DrawCaution(shapes, input, right) + 16;
        var profile = new VoltProfile(input, right - 118, right - 26);
        if (input.Live)
        {
            y = profile.DrawHead(shapes, y, TextX);
        }

        var top = y;
        var measure = (input.Live ? right - 118 - 12 : right) - TextX;
        var rows = Place(input, measure, ref y);
        DrawWire(shapes, input, rows);
        if (input.Live) profile.Draw(shapes, rows, top - 4, y + 6);
        foreach (var row in rows) shapes.Add(DrawRow(input, row));
        if (input.Meter is { } meter) y = MeterBlock.Draw(shapes, input, meter, rows, y + 26, right);
        return new Scene(input.Id, Box.Between(-8, -8, right + 8, y + 10), input.Title, WiringWords.Describe(input), [.. shapes]);
    }

    private static double DrawCaution(List<Shape> shapes, WiringInput input, double right)
    {
        var lines = Words.Wrap(input.CautionDetail, right - TextX, WiringSigns.Words);
        var title = Words.Wrap(input.Caution, right - TextX, WiringSigns.Strong);
        var height = 22 + 18 * (lines.Count + title.Count);
        shapes.Add(new Rect(new(1, 1, right - 2, height), Roles.Heed, 3));
        shapes.AddRange(WiringSigns.Warning(16, 1 + (height - 34) / 2));
        for (var i = 0; i < title.Count; i++) shapes.Add(new Text(new(66, 25 + 18 * i), title[i], WiringSigns.Strong));
        for (var i = 0; i < lines.Count; i++) shapes.Add(new Text(new(66, 26 + 18 * (title.Count + i)), lines[i], WiringSigns.Words));
        return height + 1;
    }

    private static List<WiringRow> Place(WiringInput input, double measure, ref double y)
    {
        var rows = new List<WiringRow>();
        foreach (var item in input.Chain)
        {
            List<string> name = [], detail = [];
            double reach, text;
            if (item is WiringPart part)
            {
                name = Words.Wrap(part.Name, measure, WiringSigns.Strong);
                detail = part.Detail is null ? [] : Words.Wrap(part.Detail, measure, WiringSigns.Words);
                var extra = part.IsWronglyOpen ? 26 : 0;
                var ohms = !input.Live && (part.ExpectOhms ?? part.ReadOhms) is not null ? 17 : 0;
                text = 18 * name.Count + 17 * detail.Count + extra + ohms;
                reach = WiringSigns.Reach(part);
            }
            else
            {
                reach = PointReach;
                text = 0;
            }

            var half = Math.Max(reach, text / 2);
            rows.Add(new(item, y + half, reach, y + half - text / 2, name, detail));
            y += 2 * half + 14;
        }

        y -= 14;
        return rows;
    }

    private static void DrawWire(List<Shape> shapes, WiringInput input, List<WiringRow> rows)
    {
        for (var i = 1; i < rows.Count; i++)
        {
            double from = rows[i - 1].Y + rows[i - 1].Reach, to = rows[i].Y - rows[i].Reach;
            if (input.Live && IsLive(input, rows, i))
            {
                shapes.Add(new Line(new(WireX, from), new(WireX, to), WiringSigns.LiveWire));
                shapes.Add(new Line(new(WireX, from), new(WireX, to), WiringSigns.Core));
            }
            else
            {
                shapes.Add(new Line(new(WireX, from), new(WireX, to), WiringSigns.DeadWire));
            }
        }
    }

    // The piece of wire above row i. It takes the level of the test point it touches, else of the last one above it
    // that no open part separates from it; what is not known counts as live.
    private static bool IsLive(WiringInput input, List<WiringRow> rows, int i)
    {
        var limit = Math.Min(input.SupplyV / 10, 25);
        if (rows[i].Item is WiringPoint below && Level(below) is { } b) return Math.Abs(b) > limit;
        for (var k = i - 1; k >= 0; k--)
        {
            if (rows[k].Item is WiringPoint above) return Level(above) is not { } a || Math.Abs(a) > limit;
            if (rows[k].Item is WiringPart { State: PartState.Open } or WiringPart { Kind: PartKind.Motor or PartKind.Heater }) return true;
        }

        return true;
    }

    internal static double? Level(WiringPoint p) => p.ReadV ?? p.ExpectV;

    private static Group DrawRow(WiringInput input, WiringRow row)
    {
        var made = new List<Shape>();
        string title;
        if (row.Item is WiringPoint point)
        {
            made.Add(new Circle(new(WireX, row.Y), PointReach, WiringSigns.Point));
            made.Add(new Text(new(WireX, row.Y + 5), point.Number, WiringSigns.Number, Anchor.Middle));
            DrawLevel(made, input, point, row.Y + 5);
            title = Say.Of("circuit.test-point", point.Number);
        }
        else
        {
            var part = (WiringPart)row.Item;
            made.AddRange(WiringSigns.Sign(part, WireX, row.Y));
            var y = row.TextTop;
            if (part.IsWronglyOpen)
            {
                var width = WiringSigns.Reverse.Width(Say.Of("circuit.open-here")) + 16;
                made.Add(new Rect(new(TextX, y, width, 23), Roles.Tag, 2));
                made.Add(new Text(new(TextX + 8, y + 17), Say.Of("circuit.open-here"), WiringSigns.Reverse));
                y += 26;
            }

            foreach (var line in row.Name) made.Add(new Text(new(TextX, (y += 18) - 4), line, WiringSigns.Strong));
            foreach (var line in row.Detail) made.Add(new Text(new(TextX, (y += 17) - 4), line, WiringSigns.Words));
            if (!input.Live) DrawExpectRead(made, part.ExpectOhms, part.ReadOhms, part.OhmsOut, y + 13, null);
            title = part.Name;
        }

        made.Add(new Rect(Box.Between(WireX - 24, row.Y - 24, WireX + 24, row.Y + 24), Roles.Hit));
        return new Group([.. made], Id: row.Item.Id, Tap: row.Item.Id, Title: title);
    }

    private static void DrawLevel(List<Shape> made, WiringInput input, WiringPoint p, double y)
    {
        if (!input.Live) DrawExpectRead(made, null, null, false, y, p.Note);
        else DrawExpectRead(made, p.ExpectV is { } e && (p.Note is null || p.ReadV is not null) ? WiringWords.Volts(e) : null, p.ReadV is { } r ? WiringWords.Volts(r) : null, WiringWords.IsOut(input, p), y, p.Note);
    }

    // "expect 120 · read 121 · neutral", with the reading strong, in reverse when it is not as expected.
    private static void DrawExpectRead(List<Shape> made, string? expect, string? read, bool isOut, double y, string? note)
    {
        var x = TextX;
        void Put(string words, Lettering lettering)
        {
            made.Add(new Text(new(x, y), words, lettering));
            x += lettering.Width(words);
        }

        if (expect is not null) Put(Say.Of("circuit.expect-2") + expect, WiringSigns.Words);
        if (read is not null)
        {
            Put(expect is null ? Say.Of("circuit.read-2") : Say.Of("circuit.read"), WiringSigns.Words);
            if (isOut)
            {
                var width = WiringSigns.Reverse.Width(read);
                made.Add(new Rect(new(x + 1, y - 15, width + 10, 20), Roles.Tag, 2));
                x += 6;
                Put(read, WiringSigns.Reverse);
                x += 6;
            }
            else
            {
                Put(read, WiringSigns.Strong);
            }
        }

        if (note is { Length: > 0 }) Put((expect ?? read) is null ? note : "\u00A0· " + note, WiringSigns.Words);
    }
}

/// <summary>One item with its place on the wire.</summary>
/// <param name="Item">Test point or part.</param>
/// <param name="Y">Middle of its sign.</param>
/// <param name="Reach">Half the height of its sign.</param>
/// <param name="TextTop">Top of its words.</param>
/// <param name="Name">Lines of its name.</param>
/// <param name="Detail">Lines under the name.</param>
internal sealed record WiringRow(WiringItem Item, double Y, double Reach, double TextTop, List<string> Name, List<string> Detail);
