using Emberwright.Reports.Pictures;

namespace Emberwright.Field;

/// <summary>Pictures as this phone shows them: the same scenes as on paper, their numbers with the region's decimal sign.</summary>
public static class Drawing
{
    /// <summary>The picture as markup to stand inside a page.</summary>
    public static string Inline(Scene scene)
    {
        ArgumentNullException.ThrowIfNull(scene);
        return SvgWriter.Inline(Local.Region.Decimal == '.' ? scene : scene with { Description = Local.Signs(scene.Description), Shapes = [.. scene.Shapes.Select(Signed)] });
    }

    private static Shape Signed(Shape shape) => shape switch
    {
        Text text => text with { Words = Local.Signs(text.Words) },
        Group group => group with { Shapes = [.. group.Shapes.Select(Signed)], Title = group.Title is { } title ? Local.Signs(title) : null },
        _ => shape,
    };
}
