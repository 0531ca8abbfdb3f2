using System.Collections.Immutable;
using System.Globalization;
using Emberwright.Reports.Pictures;
using Emberwright.Reports.Wording;

namespace Emberwright.Reports.Pages;

/// <summary>What all pages of the report share: letterings, rules, and the strips they are made of. Sizes in points.</summary>
internal static class Print
{
    public static readonly Lettering Title = new(14.5, true, Token.Ink);
    public static readonly Lettering Small = new(10.5, Colour: Token.Ink);
    public static readonly Lettering SmallStrong = new(10.5, true, Token.Ink);
    public static readonly Lettering Fine = new(9, Colour: Token.Ink2);
    public static readonly Lettering Foot = new(8.5, Colour: Token.Ink3);

    public static readonly Role Rule = new("rule", null, Token.Ink3, 0.75);
    public static readonly Role Hairline = new("hair", null, Token.Rule, 0.6);
    public static readonly Role Heavy = new("heavy", null, Token.Ink, 1.5);
    public static readonly Role Letterhead = new("letterhead", null, Token.Firm, 2);

    /// <summary>Height of one line of a lettering.</summary>
    public static double LineHeight(Lettering lettering) => Math.Round(lettering.Size * 1.38, 1);

    /// <summary>A paragraph: one strip a line.</summary>
    public static IEnumerable<Strip> Paragraph(string words, double measure, Lettering lettering, double indent = 0, string? sign = null, Lettering? signLettering = null)
    {
        var height = LineHeight(lettering);
        var lines = Words.Pretty(words, measure - indent, lettering);
        for (var i = 0; i < lines.Count; i++)
        {
            var shapes = ImmutableArray.CreateBuilder<Shape>();
            var baseline = height * 0.76;
            if (i == 0 && sign is not null) shapes.Add(new Text(new(indent - 5, baseline), sign, signLettering ?? lettering, Anchor.End));
            shapes.Add(new Text(new(indent, baseline), lines[i], lettering));
            // Two lines are the least that may stand alone at a page's end.
            yield return new Strip(height, shapes.ToImmutable(), KeepWithNext: lines.Count > 2 && (i == 0 || i == lines.Count - 2));
        }
    }

    /// <summary>A heading under a rule.</summary>
    public static Strip Heading(string words, double measure, Lettering lettering) => new(
        lettering.Size + 11,
        [new Line(new(0, 0.5), new(measure, 0.5), Rule), new Text(new(0, lettering.Size + 4.5), words, lettering)],
        KeepWithNext: true);

    /// <summary>Empty height.</summary>
    public static Strip Gap(double height) => new(height, []);

    /// <summary>A picture, shrunk or grown to a width.</summary>
    public static Strip Picture(Scene scene, double width, double most = 1)
    {
        var scale = Math.Min(most, width / scene.View.Width);
        return new Strip(scene.View.Height * scale, [new Group(scene.Shapes, -scene.View.X * scale, -scene.View.Y * scale, Scale: scale)]);
    }

    /// <summary>A word in reverse, its left edge and baseline given; returns it with its width.</summary>
    public static (ImmutableArray<Shape> Shapes, double Width) Flag(string word, double x, double baseline, double size)
    {
        var lettering = new Lettering(size, true, Token.OnEmber);
        var width = lettering.Width(word) + 7;
        return ([new Rect(new Box(x, baseline - size, width, size * 1.3), Roles.Tag, 1.5), new Text(new(x + 3.5, baseline), word, lettering)], width);
    }

    /// <summary>A date as people write it, without a culture: 24 November 2026.</summary>
    public static string Day(DateTimeOffset at) => Say.Day(at);

    /// <summary>A time of day.</summary>
    public static string Time(DateTimeOffset at) => at.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>A share in whole per cent; nothing uncertain is 0 or 100.</summary>
    public static string Percent(double share) => share switch
    {
        > 0 and < 0.01 => "< 1 %",
        > 0.99 and < 1 => "> 99 %",
        _ => Figures.Fixed(share * 100, 0) + " %",
    };
}

/// <summary>The customer's page is set as large as it fits.</summary>
/// <param name="Size">Size of its running text, pt.</param>
internal sealed record FrontType(double Size)
{
    /// <summary>Sizes to try, largest first.</summary>
    public static IReadOnlyList<double> Sizes { get; } = [13, 12.5, 12, 11.5, 11, 10.5];

    public Lettering Body { get; } = new(Size, Colour: Token.Ink);

    public Lettering Head { get; } = new(Size + 0.5, true, Token.Ink);

    public Lettering Lead { get; } = new(Size + 3, Colour: Token.Ink);

    public Lettering Question { get; } = new(Size + 3);

    public Lettering LeadStrong { get; } = new(Size + 3, true, Token.Ink);
}

/// <summary>The page of figures is set as large as it fits.</summary>
/// <param name="Size">Size of its running text, pt.</param>
internal sealed record FigureType(double Size)
{
    /// <summary>Sizes to try, largest first.</summary>
    public static IReadOnlyList<double> Sizes { get; } = [9.5, 9, 8.5, 8, 7.5];

    public Lettering Text { get; } = new(Size, Colour: Token.Ink);

    public Lettering Strong { get; } = new(Size, true, Token.Ink);

    public Lettering Fine { get; } = new(Size, Colour: Token.Ink2);

    public Lettering Foot { get; } = new(Size - 0.5, Colour: Token.Ink3);

    public Lettering Head { get; } = new(Size + 1.5, true, Token.Ink);

    /// <summary>Height of one line.</summary>
    public double Line { get; } = Math.Round(Size * 1.2, 1);

    /// <summary>Baseline of the first line of a row.</summary>
    public double Baseline { get; } = Size + 0.2;

    /// <summary>A heading under a rule.</summary>
    public Strip Heading(string words, double measure)
    {
        var heading = Print.Heading(words, measure, Head);
        return heading with { Height = heading.Height - 3 };
    }

    /// <summary>Height of a row of so many lines.</summary>
    public double Row(int lines) => 1.5 + Line * lines;

    /// <summary>A word in reverse.</summary>
    public (ImmutableArray<Shape> Shapes, double Width) Flag(string word, double x) => Print.Flag(word, x, Baseline, Size - 0.5);
}
