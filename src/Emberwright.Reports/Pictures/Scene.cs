using System.Collections.Immutable;
using Emberwright.Reports.Fonts;

namespace Emberwright.Reports.Pictures;

/// <summary>
/// A drawing as plain data: shapes with roles instead of colours. It is drawn once and written twice,
/// by <see cref="SvgWriter"/> for screens and <see cref="PdfWriter"/> for paper.
/// </summary>
/// <param name="Id">Prefix of every id in the picture, unique on its page: lower case, digits, hyphens.</param>
/// <param name="View">The part of the plane that is shown, in picture units.</param>
/// <param name="Title">What the picture is, for those who do not see it.</param>
/// <param name="Description">What it says, in sentences, with every figure.</param>
/// <param name="Shapes">Shapes from back to front.</param>
public sealed record Scene(string Id, Box View, string Title, string Description, ImmutableArray<Shape> Shapes);

/// <summary>How a shape is painted: fill and outline by meaning. The name becomes the shape's class on screen.</summary>
/// <param name="Name">Role in the picture, e.g. <c>band</c>.</param>
/// <param name="Fill">Inside; null leaves it empty.</param>
/// <param name="Stroke">Outline; null has none.</param>
/// <param name="Width">Width of the outline, picture units.</param>
/// <param name="Dash">Length of a dash, picture units; 0 is a full line.</param>
/// <param name="Gap">Length of the gap between dashes.</param>
public sealed record Role(string Name, Token? Fill = null, Token? Stroke = null, double Width = 1, double Dash = 0, double Gap = 0);

/// <summary>Where a text's spot lies on its baseline.</summary>
public enum Anchor
{
    /// <summary>At its left end.</summary>
    Start,
    /// <summary>At its middle.</summary>
    Middle,
    /// <summary>At its right end.</summary>
    End,
}

/// <summary>Size, weight and ink of a text.</summary>
/// <param name="Size">Letter size (one em), picture units.</param>
/// <param name="SemiBold">True for the heavier of our two weights.</param>
/// <param name="Colour">The ink.</param>
public sealed record Lettering(double Size, bool SemiBold = false, Token Colour = Token.Ink2)
{
    /// <summary>The weight's typeface.</summary>
    public Typeface Face => SemiBold ? Typeface.SemiBold : Typeface.Regular;

    /// <summary>Width of a text as it will be drawn, picture units.</summary>
    public double Width(string text) => Face.Width(Printable.Text(text), Size);
}

/// <summary>One thing in a picture.</summary>
public abstract record Shape;

/// <summary>A straight line.</summary>
public sealed record Line(Spot From, Spot To, Role Role) : Shape;

/// <summary>An open path of straight pieces.</summary>
public sealed record Polyline(ImmutableArray<Spot> Points, Role Role) : Shape;

/// <summary>A closed path of straight pieces.</summary>
public sealed record Polygon(ImmutableArray<Spot> Points, Role Role) : Shape;

/// <summary>An upright rectangle.</summary>
/// <param name="Box">Where.</param>
/// <param name="Role">How.</param>
/// <param name="Radius">Radius of its corners, picture units.</param>
public sealed record Rect(Box Box, Role Role, double Radius = 0) : Shape;

/// <summary>Rectangles filled as one path: viewers round the edges of a lone rectangle to whole pixels, but not those of a path.</summary>
/// <param name="Boxes">Where.</param>
/// <param name="Role">How.</param>
public sealed record Mosaic(ImmutableArray<Box> Boxes, Role Role) : Shape;

/// <summary>A circle.</summary>
public sealed record Circle(Spot Centre, double Radius, Role Role) : Shape;

/// <summary>One line of text.</summary>
/// <param name="At">Its spot on the baseline.</param>
/// <param name="Words">The text; what the font lacks is drawn as a box on paper.</param>
/// <param name="Lettering">Size, weight, ink.</param>
/// <param name="Anchor">Which part of the text lies at the spot.</param>
public sealed record Text(Spot At, string Words, Lettering Lettering, Anchor Anchor = Anchor.Start) : Shape
{
    /// <summary>Left end of the text, picture units.</summary>
    public double Left => Anchor switch
    {
        Anchor.Start => At.X,
        Anchor.Middle => At.X - Lettering.Width(Words) / 2,
        Anchor.End => At.X - Lettering.Width(Words),
    };
}

/// <summary>A photo, logo or signature as a file.</summary>
/// <param name="File">PNG or JPEG.</param>
/// <param name="Box">Where; the file's own proportions are kept inside it.</param>
/// <param name="Words">What it shows.</param>
public sealed record Photo(ImmutableArray<byte> File, Box Box, string Words) : Shape;

/// <summary>Shapes that belong together.</summary>
/// <param name="Shapes">Shapes from back to front.</param>
/// <param name="Dx">Moved to the right by, picture units.</param>
/// <param name="Dy">Moved down by, picture units.</param>
/// <param name="Id">Id without the scene's prefix; null when nothing needs to find it.</param>
/// <param name="Tap">What a tap on it means to the app, e.g. a port's or test point's id; null when it cannot be tapped.</param>
/// <param name="Title">What it is, for those who do not see it.</param>
/// <param name="Scale">Size of its units in the picture around it.</param>
public sealed record Group(ImmutableArray<Shape> Shapes, double Dx = 0, double Dy = 0, string? Id = null, string? Tap = null, string? Title = null, double Scale = 1) : Shape;
