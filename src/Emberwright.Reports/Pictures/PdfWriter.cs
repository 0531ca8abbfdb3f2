using Emberwright.Reports.Fonts;
using Emberwright.Reports.Wording;
using PdfSharp.Drawing;

namespace Emberwright.Reports.Pictures;

/// <summary>
/// Writes a scene onto a page of a PDF file, with the print palette and the same geometry as on screen.
/// </summary>
public static class PdfWriter
{
    /// <summary>Draws the scene so that the upper left corner of its view lies at a place of the page.</summary>
    /// <param name="page">The page's graphics, in points from its upper left corner.</param>
    /// <param name="scene">What to draw.</param>
    /// <param name="left">Distance from the left edge, pt.</param>
    /// <param name="top">Distance from the upper edge, pt.</param>
    /// <param name="scale">Points per picture unit.</param>
    /// <param name="firm">The firm's colour, 0xRRGGBB; null takes ink.</param>
    public static void Draw(XGraphics page, Scene scene, double left, double top, double scale, int? firm = null)
    {
        EmbeddedFonts.Install();
        var pen = new PagePen(page, left - scene.View.X * scale, top - scene.View.Y * scale, scale, firm);
        foreach (var shape in scene.Shapes) Draw(pen, shape);
    }

    private static void Draw(PagePen pen, Shape shape)
    {
        switch (shape)
        {
            case Line l:
                pen.Page.DrawLine(pen.Stroke(l.Role)!, pen.At(l.From), pen.At(l.To));
                break;
            case Polyline p:
                pen.Page.DrawLines(pen.Stroke(p.Role)!, [.. p.Points.Select(pen.At)]);
                break;
            case Polygon p:
                pen.Page.DrawPolygon(pen.Stroke(p.Role), pen.Fill(p.Role), [.. p.Points.Select(pen.At)], XFillMode.Winding);
                break;
            case Rect { Role.Fill: null, Role.Stroke: null } or Circle { Role.Fill: null, Role.Stroke: null }:
                break;
            case Rect { Radius: > 0 } r:
                var corner = new XSize(2 * r.Radius * pen.Scale, 2 * r.Radius * pen.Scale);
                pen.Page.DrawRoundedRectangle(pen.Stroke(r.Role), pen.Fill(r.Role), pen.In(r.Box), corner);
                break;
            case Rect r:
                pen.Page.DrawRectangle(pen.Stroke(r.Role), pen.Fill(r.Role), pen.In(r.Box));
                break;
            case Mosaic m:
                var path = new XGraphicsPath { FillMode = XFillMode.Winding };
                foreach (var box in m.Boxes) path.AddRectangle(pen.In(box));
                pen.Page.DrawPath(pen.Stroke(m.Role), pen.Fill(m.Role), path);
                break;
            case Circle c:
                pen.Page.DrawEllipse(pen.Stroke(c.Role), pen.Fill(c.Role), pen.In(new Box(c.Centre.X - c.Radius, c.Centre.Y - c.Radius, 2 * c.Radius, 2 * c.Radius)));
                break;
            case Text t:
                pen.Write(t);
                break;
            case Photo p:
                pen.Place(p);
                break;
            case Group g:
                foreach (var inner in g.Shapes) Draw(pen.Within(g), inner);
                break;
            default:
                throw new NotSupportedException($"The PDF writer does not know the shape {shape.GetType().Name}. Add it beside the others.");
        }
    }

    private readonly record struct PagePen(XGraphics Page, double Left, double Top, double Scale, int? Firm)
    {
        public PagePen Within(Group g) => this with { Left = Left + g.Dx * Scale, Top = Top + g.Dy * Scale, Scale = Scale * g.Scale };

        public XPoint At(Spot s) => new(Left + s.X * Scale, Top + s.Y * Scale);

        public XRect In(Box b) => new(Left + b.X * Scale, Top + b.Y * Scale, b.Width * Scale, b.Height * Scale);

        public XPen? Stroke(Role role) => role.Stroke is not { } token ? null : new XPen(Colour(token), role.Width * Scale)
        {
            DashStyle = role.Dash > 0 ? XDashStyle.Custom : XDashStyle.Solid,
            DashPattern = role.Dash > 0 ? [role.Dash / role.Width, role.Gap / role.Width] : [],
        };

        public XSolidBrush? Fill(Role role) => role.Fill is { } token ? new XSolidBrush(Colour(token)) : null;

        public void Write(Text text)
        {
            var words = Printable.Text(text.Words);
            if (words.Length == 0) return;
            var font = new XFont(Typeface.Family, text.Lettering.Size * Scale, text.Lettering.SemiBold ? XFontStyleEx.Bold : XFontStyleEx.Regular);
            Page.DrawString(words, font, new XSolidBrush(Colour(text.Lettering.Colour)), At(new Spot(text.Left, text.At.Y)), XStringFormats.BaseLineLeft);
        }

        public void Place(Photo photo)
        {
            var room = In(photo.Box);
            XImage image;
            try
            {
                image = XImage.FromStream(new MemoryStream([.. photo.File]));
            }
            catch (Exception e) when (e is not OutOfMemoryException)
            {
                // Whatever is wrong with one photo, the report is still due.
                var words = new Lettering(Math.Min(9, photo.Box.Height / 3));
                Draw(this, new Rect(photo.Box, Roles.Axis));
                Draw(this, new Text(new(photo.Box.Centre.X, photo.Box.Centre.Y + 3), Say.Of("photos.photo-cannot-be-read"), words, Anchor.Middle));
                return;
            }

            using var shown = image;
            var shrink = Math.Min(room.Width / image.PixelWidth, room.Height / image.PixelHeight);
            var (w, h) = (image.PixelWidth * shrink, image.PixelHeight * shrink);
            Page.DrawImage(image, room.X + (room.Width - w) / 2, room.Y + (room.Height - h) / 2, w, h);
        }

        private XColor Colour(Token token) => XColor.FromArgb(0xff << 24 | (token == Token.Firm && Firm is { } own ? own & 0xffffff : Palette.Print(token)));
    }
}
