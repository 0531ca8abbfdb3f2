using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pictures.Wiring;

/// <summary>
/// The meter at the foot: where the leads go, how the knob stands, what it shows, what any other value would mean.
/// The lead of the upper point takes the outer lane, so leads never cross.
/// </summary>
internal static class MeterBlock
{
    private const double OuterX = 6;
    private const double InnerX = 17;

    /// <summary>Draws from <paramref name="top"/> down; returns how far down it came.</summary>
    public static double Draw(List<Shape> shapes, WiringInput input, MeterReading meter, List<WiringRow> rows, double top, double right)
    {
        var left = Math.Min(150, right * 0.42);
        var meaning = Words.Wrap(meter.Meaning, right - left - 26, WiringSigns.Words);
        var height = 82 + 18 * meaning.Count;
        height = Math.Max(height, 118);
        var a = rows.First(r => r.Item.Id == meter.LeadA);
        var b = rows.First(r => r.Item.Id == meter.LeadB);
        var aIsUpper = a.Y <= b.Y;
        double outerY = top + 96, innerY = top + 56;
        DrawLead(shapes, (aIsUpper ? a : b).Y, OuterX, outerY, left);
        DrawLead(shapes, (aIsUpper ? b : a).Y, InnerX, innerY, left);
        shapes.Add(new Text(new(30, top + 18), Say.Of("circuit.this-reading"), WiringSigns.Strong));
        shapes.Add(new Text(new(30, innerY - 8), LeadWords(aIsUpper ? "B" : "A", aIsUpper ? b : a), WiringSigns.Words));
        shapes.Add(new Text(new(30, outerY - 8), LeadWords(aIsUpper ? "A" : "B", aIsUpper ? a : b), WiringSigns.Words));
        if (meter.EitherWay) shapes.Add(new Text(new(30, outerY + 19), Say.Of("circuit.either-way-round"), WiringSigns.Words));

        shapes.Add(new Rect(Box.Between(left, top, right, top + height), WiringSigns.Meter, 6));
        shapes.Add(new Rect(Box.Between(left + 13, top + 13, right - 13, top + 59), WiringSigns.Glass, 2));
        shapes.Add(new Text(new(left + 22, top + 46), meter.Value ?? "—", WiringSigns.Display));
        shapes.Add(new Text(new(right - 22, meter.Expect is null ? top + 44 : top + 33), meter.Setting, WiringSigns.Words, Anchor.End));
        if (meter.Expect is not null) shapes.Add(new Text(new(right - 22, top + 50), Say.Of("circuit.expect", meter.Expect), WiringSigns.Words, Anchor.End));
        for (var i = 0; i < meaning.Count; i++)
            shapes.Add(new Text(new(left + 13, top + 82 + 18 * i), meaning[i], WiringSigns.Words));
        return Math.Max(top + height, outerY + 22);
    }

    private static string LeadWords(string lead, WiringRow row) => Say.Of("circuit.lead-on", lead, ((WiringPoint)row.Item).Number);

    private static void DrawLead(List<Shape> shapes, double pointY, double lane, double meterY, double meterX)
    {
        var tip = WiringPicture.WireX - 13;
        shapes.Add(new Polyline([new(meterX, meterY), new(lane, meterY), new(lane, pointY), new(tip - 8, pointY)], WiringSigns.Lead));
        shapes.Add(new Polygon([new(tip, pointY), new(tip - 11, pointY - 5), new(tip - 11, pointY + 5)], WiringSigns.Pin));
    }
}
