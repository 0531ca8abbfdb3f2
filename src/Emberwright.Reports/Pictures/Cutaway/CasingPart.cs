using Emberwright.Reports.Wording;
using Emberwright.Stove.Air;
using Emberwright.Stove.Patterns;

namespace Emberwright.Reports.Pictures.Cutaway;

/// <summary>The casing, the firebox with its door and ash pan, and what the stove stands in.</summary>
internal static class CasingPart
{
    public static void Draw(Draught on, CutawayFrame f, Pattern pattern)
    {
        if (pattern.Form.IsInsert) Masonry(on, f);
        else Feet(on, f);
        on.Part(new Rect(f.Body, CutawayRoles.Shell, 3));
        on.Part(new Rect(f.Firebox, CutawayRoles.Cavity));
        Door(on, f, pattern.Air.Links.Any(l => l.Id == "airwash"));
        Pan(on, f, pattern.Air.Links.Any(l => l.Id == "ash-door"));
    }

    private static void Feet(Draught on, CutawayFrame f)
    {
        on.Part(
            new Rect(new Box(f.Body.X + 8, f.Body.Bottom, 14, 8), CutawayRoles.Foot),
            new Rect(new Box(f.Body.Right - 22, f.Body.Bottom, 14, 8), CutawayRoles.Foot),
            new Line(new(f.Body.X - 8, f.Body.Bottom + 8), new(f.Body.Right + 34, f.Body.Bottom + 8), CutawayRoles.Detail));
    }

    // The fireplace around an insert: hearth, back wall, lintel, and the throat in which the liner rises.
    private static void Masonry(Draught on, CutawayFrame f)
    {
        double back = f.Body.Right + 12, outer = f.Body.Right + 30, top = -8, lintel = f.Body.Y - 10, front = f.Body.X + 26;
        Block(on, Box.Between(back, top, outer, f.Body.Bottom + 8));
        Block(on, Box.Between(front, top, front + 74, lintel));
        Block(on, Box.Between(f.Body.X - 8, f.Body.Bottom, outer, f.Body.Bottom + 14));
        on.Part(new Line(new(front - 4, lintel - 16), new(front - 4, f.Body.Bottom), CutawayRoles.Panel));
        on.Name(Say.Of("section.surround-panel"), new(front - 4, lintel - 6));
        on.Name(Say.Of("section.masonry"), new(outer - 6, f.Body.Y + 30));
    }

    /// <summary>A hatched block of masonry or wall.</summary>
    public static void Block(Draught on, Box box)
    {
        on.Part(new Rect(box, CutawayRoles.Cavity));
        const double step = 9;
        for (var c = box.X - box.Height; c < box.Right; c += step)
        {
            // The line x − y = constant, cut to the box.
            var from = new Spot(Math.Max(box.X, c), box.Bottom - (Math.Max(box.X, c) - c));
            var to = new Spot(Math.Min(box.Right, c + box.Height), box.Bottom - (Math.Min(box.Right, c + box.Height) - c));
            if (to.X > from.X) on.Part(new Line(from, to, CutawayRoles.Hatch));
        }
    }

    private static void Door(Draught on, CutawayFrame f, bool airwash)
    {
        double x = f.Body.X, top = f.Firebox.Y + 6, bottom = f.Firebox.Bottom - 4;
        on.Part(new Rect(Box.Between(x - 3, top, x + 6, bottom), CutawayRoles.Part, 1));
        on.Part(new Rect(Box.Between(x - 1, top + 10, x + 3, bottom - 16), CutawayRoles.Glass));
        on.Name(Say.Of("section.door-with-glass"), new(x + 1, (top + bottom) / 2 + 6), "door");
        if (!airwash) return;
        on.Part(new Rect(Box.Between(x - 4, top - 1, x + 7, top + 5), new Role("gap", Token.Sheet)));
        on.Air(new(x - 16, top + 2), new(x + 10, top + 2), new(x + 10, top + 26));
        on.Name(Say.Of("section.airwash-gap"), new(x - 8, top + 2), "airwash");
    }

    private static void Pan(Draught on, CutawayFrame f, bool door)
    {
        var pan = Box.Between(f.Firebox.X, f.PanTop, f.Firebox.Right, f.Body.Bottom - 8);
        if (pan.Height < 20) return;
        on.Part(new Rect(pan, CutawayRoles.Cavity));
        var deep = Box.Between(pan.X + 4, pan.Bottom - 26, pan.Right - 6, pan.Bottom - 3);
        on.Part(new Polygon([new(deep.X + 2, deep.Y + 11), new(deep.X + 16, deep.Y + 6), new(deep.Right - 14, deep.Y + 9), new(deep.Right - 3, deep.Y + 12), new(deep.Right - 3, deep.Bottom - 1), new(deep.X + 2, deep.Bottom - 1)], CutawayRoles.Ash));
        on.Part(new Polyline([new(deep.X, deep.Y), new(deep.X, deep.Bottom), new(deep.Right, deep.Bottom), new(deep.Right, deep.Y)], CutawayRoles.Wall));
        // The opening through which ash falls out of the firebox.
        on.Part(new Rect(Box.Between(f.Pot.X - 20, f.Firebox.Bottom - 1, f.Pot.X + 14, f.PanTop + 1), new Role("opening", Token.Sheet)));
        if (door) on.Part(new Rect(Box.Between(f.Body.X - 3, pan.Y + 4, f.Body.X + 5, pan.Bottom - 2), CutawayRoles.Part, 1));
        on.Name(door ? Say.Of("section.ash-door-ash-pan") : Say.Of("section.ash-pan"), new(door ? f.Body.X + 1 : deep.X, pan.Centre.Y + 8), "ash-pan");
    }
}
