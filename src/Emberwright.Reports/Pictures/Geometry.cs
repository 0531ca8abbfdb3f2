namespace Emberwright.Reports.Pictures;

/// <summary>A place in a picture: x to the right, y downwards, in picture units (1 CSS px on screen).</summary>
public readonly record struct Spot(double X, double Y);

/// <summary>An upright box in a picture, in picture units.</summary>
/// <param name="X">Left edge.</param>
/// <param name="Y">Upper edge.</param>
/// <param name="Width">Width, not negative.</param>
/// <param name="Height">Height, not negative.</param>
public readonly record struct Box(double X, double Y, double Width, double Height)
{
    /// <summary>Right edge.</summary>
    public double Right => X + Width;

    /// <summary>Lower edge.</summary>
    public double Bottom => Y + Height;

    /// <summary>Middle.</summary>
    public Spot Centre => new(X + Width / 2, Y + Height / 2);

    /// <summary>The box grown on all sides.</summary>
    public Box Grow(double by) => new(X - by, Y - by, Width + 2 * by, Height + 2 * by);

    /// <summary>The box moved.</summary>
    public Box Move(double dx, double dy) => new(X + dx, Y + dy, Width, Height);

    /// <summary>Area shared with another box; 0 when they do not touch.</summary>
    public double Overlap(Box other) =>
        Math.Max(0, Math.Min(Right, other.Right) - Math.Max(X, other.X)) * Math.Max(0, Math.Min(Bottom, other.Bottom) - Math.Max(Y, other.Y));

    /// <summary>The smallest box around both.</summary>
    public Box Union(Box other) => Between(Math.Min(X, other.X), Math.Min(Y, other.Y), Math.Max(Right, other.Right), Math.Max(Bottom, other.Bottom));

    /// <summary>The box between two corners.</summary>
    public static Box Between(double left, double top, double right, double bottom) => new(left, top, right - left, bottom - top);
}
