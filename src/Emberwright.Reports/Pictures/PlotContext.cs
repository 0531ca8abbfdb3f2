using System.Collections.Immutable;
using OxyPlot;

namespace Emberwright.Reports.Pictures;

/// <summary>
/// Lets the plotting library draw into our scenes, so that a plot has our letters and roles and stands the same on screen and
/// paper. Colours are looked up by the palette's light values; one that is not there becomes ink.
/// </summary>
internal sealed class PlotContext : RenderContextBase
{
    private static readonly Dictionary<OxyColor, Token> Tokens = Enum.GetValues<Token>().Where(t => t != Token.Firm).GroupBy(Colour).ToDictionary(same => same.Key, same => same.First());
    private readonly List<Shape> _shapes = [];
    private int _clips;

    /// <summary>What was drawn.</summary>
    public ImmutableArray<Shape> Shapes => [.. _shapes];

    /// <summary>A token as the library's colour.</summary>
    public static OxyColor Colour(Token token) => OxyColor.FromUInt32(0xff000000u | (uint)Palette.Light(token));

    public override void DrawEllipse(OxyRect rect, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode) =>
        _shapes.Add(new Circle(new(rect.Center.X, rect.Center.Y), rect.Width / 2, RoleOf(fill, stroke, thickness, null)));

    public override void DrawLine(IList<ScreenPoint> points, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin)
    {
        if (points.Count > 1 && thickness > 0 && TokenOf(stroke) is not null) _shapes.Add(new Polyline([.. points.Select(At)], RoleOf(OxyColors.Undefined, stroke, thickness, dashArray)));
    }

    public override void DrawPolygon(IList<ScreenPoint> points, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin) =>
        _shapes.Add(new Polygon([.. points.Select(At)], RoleOf(fill, stroke, thickness, dashArray)));

    public override void DrawText(ScreenPoint p, string text, OxyColor fill, string fontFamily, double fontSize, double fontWeight, double rotation, HorizontalAlignment horizontalAlignment, VerticalAlignment verticalAlignment, OxySize? maxSize)
    {
        if (string.IsNullOrEmpty(text)) return;
        var lettering = new Lettering(fontSize, fontWeight > 500, TokenOf(fill) ?? Token.Ink);
        // Ascenders of our face reach 0.72 em; the library places a box, we a baseline.
        var down = verticalAlignment switch { VerticalAlignment.Top => 0.82, VerticalAlignment.Middle => 0.36, _ => -0.1 };
        var anchor = horizontalAlignment switch { HorizontalAlignment.Left => Anchor.Start, HorizontalAlignment.Center => Anchor.Middle, _ => Anchor.End };
        _shapes.Add(new Text(new(p.X, p.Y + down * fontSize), text.Replace('-', '−'), lettering, anchor));
    }

    public override OxySize MeasureText(string text, string fontFamily, double fontSize, double fontWeight) =>
        string.IsNullOrEmpty(text) ? new(0, 0) : new(new Lettering(fontSize, fontWeight > 500).Width(text), fontSize * 1.2);

    // Our plots keep inside their area, so nothing needs to be cut; the library only wants its calls counted.
    public override void PushClip(OxyRect clippingRectangle) => _clips++;

    public override void PopClip() => _clips--;

    public override int ClipCount => _clips;

    private static Spot At(ScreenPoint p) => new(p.X, p.Y);

    private static Role RoleOf(OxyColor fill, OxyColor stroke, double thickness, double[]? dash) =>
        new("plot", TokenOf(fill), thickness > 0 ? TokenOf(stroke) : null, Math.Max(thickness, 0.1), dash is { Length: > 1 } ? dash[0] * thickness : 0, dash is { Length: > 1 } ? dash[1] * thickness : 0);

    private static Token? TokenOf(OxyColor colour) => colour.IsInvisible() || colour.IsUndefined() || colour.IsAutomatic() ? null : Tokens.GetValueOrDefault(colour, Token.Ink);
}
