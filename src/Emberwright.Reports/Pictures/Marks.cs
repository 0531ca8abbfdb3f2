using System.Collections.Immutable;

namespace Emberwright.Reports.Pictures;

/// <summary>The marks for values, drawn the same in every picture.</summary>
internal static class Marks
{
    /// <summary>A value outside its band.</summary>
    public static Shape Diamond(Spot at, double radius) => new Polygon(
        [new(at.X, at.Y - radius), new(at.X + radius, at.Y), new(at.X, at.Y + radius), new(at.X - radius, at.Y)], Roles.Out);

    /// <summary>A value inside its band, hollow before the work, full after.</summary>
    public static Shape Dot(Spot at, double radius, bool full) => new Circle(at, radius, full ? Roles.InNow : Roles.InBefore);

    /// <summary>A value known earlier.</summary>
    public static Shape EarlierBar(Spot at, double halfWidth) => new Rect(new Box(at.X - halfWidth, at.Y - 2.5, 2 * halfWidth, 5), Roles.Earlier);

    /// <summary>Size of a tag in reverse around its lines.</summary>
    public static (double Width, double Height) TagSize(string? value, string word) => value is null
        ? (Roles.TagStrong.Width(word) + 10, 17)
        : (Math.Max(Roles.TagValue.Width(value), Roles.TagWord.Width(word)) + 14, 38);

    /// <summary>A tag in reverse: the word alone, or the value above its word.</summary>
    public static ImmutableArray<Shape> Tag(Box box, string? value, string word) => value is null
        ? [new Rect(box, Roles.Tag, 2), new Text(new(box.Centre.X, box.Y + 12.5), word, Roles.TagStrong, Anchor.Middle)]
        : [new Rect(box, Roles.Tag, 2),
            new Text(new(box.Centre.X, box.Y + 16), value, Roles.TagValue, Anchor.Middle),
            new Text(new(box.Centre.X, box.Y + 32), word, Roles.TagWord, Anchor.Middle)];
}
