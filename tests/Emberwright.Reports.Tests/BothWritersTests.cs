using System.Globalization;
using System.Xml.Linq;
using Emberwright.Reports.Fonts;
using Emberwright.Reports.Pictures;
using PdfSharp.Drawing;
using UglyToad.PdfPig.Core;
using Xunit;

namespace Emberwright.Reports.Tests;

/// <summary>A picture stands the same on screen and on paper: each text and each corner at the same place.</summary>
public class BothWritersTests
{
    private const double Scale = 0.75;
    private const double Left = 40;
    private const double Top = 30;

    public static TheoryData<string> Names => [.. Gallery.Scenes.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Texts_begin_at_the_same_place(string name)
    {
        var scene = Gallery.Scenes[name]();
        var (page, height) = Print(scene);
        var starts = page.Letters.Select(l => (Value: l.Value.Replace("\u00A0", " "), X: l.StartBaseLine.X, Y: height - l.StartBaseLine.Y)).ToList();
        foreach (var (words, spot) in Texts(Svg(scene)))
        {
            var at = OnPaper(scene, spot);
            Assert.True(starts.Any(s => words.Replace("\u00A0", " ").StartsWith(s.Value, StringComparison.Ordinal) && Math.Abs(s.X - at.X) < 0.2 && Math.Abs(s.Y - at.Y) < 0.2),
                $"'{words}' stands at {at} on screen, not on paper.");
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Corners_lie_at_the_same_place(string name)
    {
        var scene = Gallery.Scenes[name]();
        var (page, height) = Print(scene);
        var points = page.Paths.SelectMany(p => p).SelectMany(s => s.Commands).SelectMany(c => c switch
        {
            PdfSubpath.Move m => [m.Location],
            PdfSubpath.Line l => [l.From, l.To],
            _ => Array.Empty<PdfPoint>(),
        }).Select(p => (p.X, Y: height - p.Y)).ToList();
        foreach (var corner in Corners(Svg(scene)))
        {
            var at = OnPaper(scene, corner);
            Assert.True(points.Any(p => Math.Abs(p.X - at.X) < 0.05 && Math.Abs(p.Y - at.Y) < 0.05), $"The corner {at} of the screen is not on paper.");
        }
    }

    private static Spot OnPaper(Scene scene, Spot s) => new(Left + (s.X - scene.View.X) * Scale, Top + (s.Y - scene.View.Y) * Scale);

    private static (UglyToad.PdfPig.Content.Page Page, double Height) Print(Scene scene)
    {
        EmbeddedFonts.Install();
        using var document = new PdfSharp.Pdf.PdfDocument();
        var sheet = document.AddPage();
        (sheet.Width, sheet.Height) = (XUnitPt.FromPoint(612), XUnitPt.FromPoint(792));
        using (var graphics = XGraphics.FromPdfPage(sheet)) PdfWriter.Draw(graphics, scene, Left, Top, Scale);
        using var file = new MemoryStream();
        document.Save(file);
        return (UglyToad.PdfPig.PdfDocument.Open(file.ToArray()).GetPage(1), 792);
    }

    private static XElement Svg(Scene scene) => XDocument.Parse(SvgWriter.Inline(scene)).Root!;

    private static List<(string Value, Spot At)> Texts(XElement svg) => svg.Descendants().Where(e => e.Name.LocalName == "text").Select(e =>
    {
        var size = Number(e, "font-size");
        var face = (string?)e.Attribute("font-weight") == "600" ? Typeface.SemiBold : Typeface.Regular;
        var width = face.Width(Printable.Text(e.Value), size);
        var x = Number(e, "x") - (string?)e.Attribute("text-anchor") switch { "middle" => width / 2, "end" => width, _ => 0 };
        var (dx, dy) = Moved(e);
        return (e.Value, new Spot(x + dx, Number(e, "y") + dy));
    }).Where(t => t.Item1.Length > 0).ToList();

    private static List<Spot> Corners(XElement svg) => svg.Descendants().Where(e => e.Name.LocalName == "path").SelectMany(e =>
    {
        var (dx, dy) = Moved(e);
        var d = ((string)e.Attribute("d")!).TrimEnd('Z')[1..];
        return d.Split('L').Select(p => p.Split(' ')).Select(p => new Spot(Parse(p[0]) + dx, Parse(p[1]) + dy));
    }).ToList();

    private static (double, double) Moved(XElement e)
    {
        double x = 0, y = 0;
        foreach (var g in e.Ancestors())
            if ((string?)g.Attribute("transform") is { } t)
            {
                var parts = t["translate(".Length..^1].Split(' ');
                (x, y) = (x + Parse(parts[0]), y + Parse(parts[1]));
            }

        return (x, y);
    }

    private static double Number(XElement e, string name) => Parse((string)e.Attribute(name)!);

    private static double Parse(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
