using Emberwright.Reports.Wording;
using Emberwright.Stove.Patterns;

namespace Emberwright.Reports.Pictures.Cutaway;

/// <summary>From the combustion blower to the vent: collar, tee with its clean-out, liner or pipe.</summary>
internal static class VentPart
{
    public static void Draw(Draught on, CutawayFrame f, Pattern pattern)
    {
        if (pattern.Form.IsInsert) Liner(on, f);
        else Tee(on, f, pattern.Vent.Insulated, f.Blower.Y - 128);
    }

    private static void Tee(Draught on, CutawayFrame f, bool twin, double top)
    {
        var y = f.Outlet.Y;
        double left = f.Outlet.X + 12, right = left + 17, foot = y + 26;
        on.Part(new Rect(Box.Between(f.Blower.X + CutawayFrame.BlowerRadius - 4, y - 8, left + 1, y + 8), CutawayRoles.Part));
        on.Part(new Rect(Box.Between(left, top, right, foot), CutawayRoles.Part));
        on.Part(new Rect(Box.Between(left - 1, y - 7.4, left + 4, y + 7.4), new Role("open", Token.Sheet)));
        if (twin)
        {
            on.Part(new Rect(Box.Between(left - 4, top, left, y - 14), CutawayRoles.Water with { Fill = Token.Rule, Stroke = Token.Ink2 }));
            on.Part(new Rect(Box.Between(right, top, right + 4, foot - 8), CutawayRoles.Water with { Fill = Token.Rule, Stroke = Token.Ink2 }));
        }

        on.Part(new Rect(Box.Between(left - 2, foot - 4, right + 2, foot + 3), CutawayRoles.Solid, 1));
        // The pipe goes on: a break line.
        on.Part(new Rect(Box.Between(left - 6, top - 3, right + 6, top + 2), new Role("open", Token.Sheet)));
        on.Part(new Polyline([new(left - 6, top + 3), new(left + 5, top - 2), new(left + 13, top + 5), new(right + 6, top)], CutawayRoles.Detail));
        on.Part(new Rect(Box.Between(f.Outlet.X - 2, y - 10, f.Outlet.X + 4, y + 10), CutawayRoles.Part, 1));
        on.Gas(new(f.Blower.X + CutawayFrame.BlowerRadius + 2, y), new(left + 9, y), new(left + 9, y - 40));
        on.Gas(new(left + 9, y - 60), new(left + 9, top + 14));
        on.Name(Say.Of("section.tee-clean-out-cap"), new(right + 1, foot), "tee");
        on.Name(twin ? Say.Of("section.twin-wall-vent") : Say.Of("section.vent-pipe"), new(right + (twin ? 4 : 0), top + 34), "vent");
    }

    // Up behind the hopper into a flexible liner in the old chimney.
    private static void Liner(Draught on, CutawayFrame f)
    {
        double x = f.Outlet.X, top = -6;
        var start = new Spot(f.Blower.X + 6, f.Blower.Y - CutawayFrame.BlowerRadius + 3);
        on.Part(new Polygon([new(start.X, start.Y), new(start.X + 18, start.Y + 8), new(x + 20, f.Blower.Y - 34), new(x + 5, f.Blower.Y - 44)], CutawayRoles.Part));
        on.Part(new Rect(Box.Between(x + 5, f.Body.Y - 4, x + 20, f.Blower.Y - 34), CutawayRoles.Part));
        var left = new List<Spot>();
        var right = new List<Spot>();
        for (var y = f.Body.Y - 6; y >= top; y -= 4)
        {
            var wave = (int)((f.Body.Y - y) / 4) % 2 == 0 ? 0 : 2;
            left.Add(new(x + 4 - wave, y));
            right.Add(new(x + 21 + wave, y));
        }

        on.Part(new Polygon([.. left, .. right.AsEnumerable().Reverse()], CutawayRoles.Part));
        on.Part(new Rect(Box.Between(x + 2, f.Body.Y - 7, x + 23, f.Body.Y - 1), CutawayRoles.Part, 1));
        on.Gas(new(x + 12.5, f.Blower.Y - 36), new(x + 12.5, f.Body.Y + 30));
        on.Gas(new(x + 12.5, f.Body.Y - 10), new(x + 12.5, top + 12));
        on.Name(Say.Of("section.flexible-liner-up-the-chimney"), new(x + 24, f.Body.Y - 44), "vent");
    }
}
