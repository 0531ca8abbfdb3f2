using System.Globalization;
using System.Text;
using Emberwright.Reports.Fonts;

namespace Emberwright.Reports.Pictures;

/// <summary>
/// Writes a scene as SVG. Colours are the page's custom properties (<c>var(--ink)</c>), so the picture follows
/// the page's theme; standing alone it brings its own light and dark values. A group that can be tapped
/// carries <c>data-tap</c> with what it stands for, and an id with the scene's prefix.
/// </summary>
public static class SvgWriter
{
    /// <summary>For a page of the app: takes its tokens from the page, needs no style of its own.</summary>
    public static string Inline(Scene scene) => Write(scene, "");

    /// <summary>As a file of its own, or an image: light and dark values inside.</summary>
    public static string Alone(Scene scene)
    {
        var tokens = string.Concat(Enum.GetValues<Token>().Where(t => t != Token.Firm).Select(t =>
            $"{Palette.Property(t)}:light-dark(#{Palette.Light(t):x6},#{Palette.Dark(t):x6});"));
        return Write(scene, $"<style>svg:root{{color-scheme:light dark;background:var(--sheet);font-kerning:none;{tokens}}}</style>\n");
    }

    private static string Write(Scene scene, string style)
    {
        var svg = new StringBuilder();
        var v = scene.View;
        svg.Append($"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"{N(v.X)} {N(v.Y)} {N(v.Width)} {N(v.Height)}\" role=\"img\" ");
        svg.Append($"aria-labelledby=\"{scene.Id}-title\" aria-describedby=\"{scene.Id}-desc\" font-family=\"{Typeface.Family}, system-ui, sans-serif\">\n");
        svg.Append($"<title id=\"{scene.Id}-title\">{Escape(scene.Title)}</title>\n<desc id=\"{scene.Id}-desc\">{Escape(scene.Description)}</desc>\n");
        svg.Append(style);
        foreach (var shape in scene.Shapes) Write(svg, scene.Id, shape);
        return svg.Append("</svg>\n").ToString();
    }

    private static void Write(StringBuilder svg, string prefix, Shape shape)
    {
        switch (shape)
        {
            case Line l:
                svg.Append($"<path{Paint(l.Role)} d=\"M{P(l.From)}L{P(l.To)}\"/>\n");
                break;
            case Polyline p:
                svg.Append($"<path{Paint(p.Role)} d=\"M{string.Join('L', p.Points.Select(P))}\"/>\n");
                break;
            case Polygon p:
                svg.Append($"<path{Paint(p.Role)} d=\"M{string.Join('L', p.Points.Select(P))}Z\"/>\n");
                break;
            case Rect r:
                var round = r.Radius > 0 ? $" rx=\"{N(r.Radius)}\"" : "";
                svg.Append($"<rect{Paint(r.Role)} x=\"{N(r.Box.X)}\" y=\"{N(r.Box.Y)}\" width=\"{N(r.Box.Width)}\" height=\"{N(r.Box.Height)}\"{round}/>\n");
                break;
            case Mosaic m:
                svg.Append($"<path{Paint(m.Role)} d=\"{string.Concat(m.Boxes.Select(b => $"M{N(b.X)} {N(b.Y)}h{N(b.Width)}v{N(b.Height)}h{N(-b.Width)}z"))}\"/>\n");
                break;
            case Circle c:
                svg.Append($"<circle{Paint(c.Role)} cx=\"{N(c.Centre.X)}\" cy=\"{N(c.Centre.Y)}\" r=\"{N(c.Radius)}\"/>\n");
                break;
            case Text t:
                var weight = t.Lettering.SemiBold ? " font-weight=\"600\"" : "";
                var anchor = t.Anchor switch { Anchor.Start => "", Anchor.Middle => " text-anchor=\"middle\"", Anchor.End => " text-anchor=\"end\"" };
                svg.Append($"<text x=\"{N(t.At.X)}\" y=\"{N(t.At.Y)}\" font-size=\"{N(t.Lettering.Size)}\"{weight}{anchor} fill=\"var({Palette.Property(t.Lettering.Colour)})\">{Escape(t.Words)}</text>\n");
                break;
            case Photo p:
                var kind = p.File.Length > 1 && p.File[0] == 0xFF ? "jpeg" : "png";
                svg.Append($"<image x=\"{N(p.Box.X)}\" y=\"{N(p.Box.Y)}\" width=\"{N(p.Box.Width)}\" height=\"{N(p.Box.Height)}\" href=\"data:image/{kind};base64,{Convert.ToBase64String(p.File.AsSpan())}\"><title>{Escape(p.Words)}</title></image>\n");
                break;
            case Group g:
                svg.Append("<g");
                if (g.Id is not null) svg.Append($" id=\"{prefix}-{Escape(g.Id)}\"");
                if (g.Tap is not null) svg.Append($" data-tap=\"{Escape(g.Tap)}\"");
                var scale = g.Scale == 1 ? "" : $" scale({g.Scale.ToString("0.####", CultureInfo.InvariantCulture)})";
                if (g.Dx != 0 || g.Dy != 0 || scale.Length > 0) svg.Append($" transform=\"translate({N(g.Dx)} {N(g.Dy)}){scale}\"");
                svg.Append('>');
                if (g.Title is not null) svg.Append($"<title>{Escape(g.Title)}</title>");
                svg.Append('\n');
                foreach (var inner in g.Shapes) Write(svg, prefix, inner);
                svg.Append("</g>\n");
                break;
            default:
                throw new NotSupportedException($"The SVG writer does not know the shape {shape.GetType().Name}. Add it beside the others.");
        }
    }

    private static string Paint(Role role)
    {
        var fill = role.Fill is { } f ? $"var({Palette.Property(f)})" : "none";
        var made = $" class=\"{role.Name}\" fill=\"{fill}\"";
        if (role == Roles.Hit) made += " pointer-events=\"all\"";
        if (role.Stroke is { } s) made += $" stroke=\"var({Palette.Property(s)})\" stroke-width=\"{N(role.Width)}\"";
        if (role.Dash > 0) made += $" stroke-dasharray=\"{N(role.Dash)} {N(role.Gap)}\"";
        return made;
    }

    private static string P(Spot s) => $"{N(s.X)} {N(s.Y)}";

    internal static string N(double value)
    {
        var rounded = Math.Round(value, 2, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0.##", CultureInfo.InvariantCulture);
    }

    private static string Escape(string text)
    {
        var made = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
            made.Append(rune.Value switch
            {
                '&' => "&amp;",
                '<' => "&lt;",
                '>' => "&gt;",
                '"' => "&quot;",
                < 0x20 or 0xFFFE or 0xFFFF => " ",
                _ => rune.ToString(),
            });
        return made.ToString();
    }
}
