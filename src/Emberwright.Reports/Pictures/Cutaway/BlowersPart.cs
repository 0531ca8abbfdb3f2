using Emberwright.Reports.Wording;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Patterns;

namespace Emberwright.Reports.Pictures.Cutaway;

/// <summary>The combustion blower, and what moves the heat: the room-air blower, or the pump of a hydronic stove.</summary>
internal static class BlowersPart
{
    public static void Draw(Draught on, CutawayFrame f, Pattern pattern)
    {
        Combustion(on, f);
        if (pattern.Heat.StreamIsWater) Pump(on, f);
        else if (pattern.Wiring.HasComponent(ComponentIds.RoomAirBlower)) RoomAir(on, f, pattern.Form.Exchanger);
    }

    private static void Combustion(Draught on, CutawayFrame f)
    {
        var at = f.Blower;
        const double r = CutawayFrame.BlowerRadius;
        on.Part(new Circle(at, r, CutawayRoles.Part));
        on.Part(new Circle(at, r * 0.62, CutawayRoles.Detail), new Circle(at, 3, CutawayRoles.Solid));
        for (var a = 0; a < 360; a += 45)
        {
            Spot[] blade = [.. Draught.Arc(at, r * 0.30, a, a + 1), .. Draught.Arc(at, r * 0.58, a + 18, a + 19)];
            on.Part(new Line(blade[0], blade[^1], CutawayRoles.Detail));
        }

        on.Name(Say.Of("section.combustion-blower"), new(at.X + 9, at.Y + r - 3), "combustion-blower");
    }

    private static void RoomAir(Draught on, CutawayFrame f, ExchangerKind exchanger)
    {
        var at = f.RoomBlower;
        on.Part(new Rect(f.AirWay, CutawayRoles.Cavity));
        on.Part(new Polygon([new(f.AirWay.X, at.Y - 7), new(at.X, at.Y - 10), new(at.X, at.Y + 10), new(f.AirWay.X, at.Y + 9)], CutawayRoles.Cavity));
        on.Part(new Circle(at, 11, CutawayRoles.Part));
        for (var a = 0; a < 360; a += 30) on.Part(new Line(Draught.Arc(at, 7.5, a, a + 1).First(), Draught.Arc(at, 10, a, a + 1).First(), CutawayRoles.Detail));
        on.Part(new Rect(Box.Between(f.Body.Right - 2, at.Y - 8, f.Body.Right + 3, at.Y + 8), new Role("grille", Token.Sheet)));
        for (var y = at.Y - 7; y <= at.Y + 7; y += 3.5) on.Part(new Line(new(f.Body.Right - 3, y), new(f.Body.Right + 3, y), CutawayRoles.Detail));
        on.RoomAir(new(f.Body.Right + 24, at.Y), new(at.X + 14, at.Y));
        var top = exchanger is ExchangerKind.Tubes or ExchangerKind.ScrapedTubes ? f.Exchanger.Bottom + 2 : f.AirWay.Y + 60;
        on.RoomAir(new(at.X - 12, at.Y), new(f.AirWay.Centre.X, at.Y), new(f.AirWay.Centre.X, top));
        on.Name(Say.Of("section.room-air-blower"), new(at.X + 8, at.Y + 7), "room-air-blower");
        Grille(on, f, exchanger);
    }

    private static void Grille(Draught on, CutawayFrame f, ExchangerKind exchanger)
    {
        var tubes = exchanger is ExchangerKind.Tubes or ExchangerKind.ScrapedTubes;
        double top = tubes ? f.Exchanger.Y + 6 : f.Body.Y + 4, bottom = tubes ? f.Exchanger.Bottom - 8 : f.Body.Y + 18;
        on.Part(new Rect(Box.Between(f.Body.X - 2, top, f.Body.X + 3, bottom), new Role("grille", Token.Sheet)));
        for (var y = top; y <= bottom; y += 4) on.Part(new Line(new(f.Body.X - 3, y), new(f.Body.X + 3, y), CutawayRoles.Detail));
        var middle = (top + bottom) / 2;
        on.RoomAir(new(f.Body.X - 2, middle), new(f.Body.X - 19, middle));
        on.Name(Say.Of("section.warm-air-grille"), new(f.Body.X - 1, top + 1), "warm-air");
    }

    // Pump in the return, expansion vessel on it, flow pipe from the top of the jacket.
    private static void Pump(Draught on, CutawayFrame f)
    {
        var at = new Spot(f.RoomBlower.X - 4, f.RoomBlower.Y + 4);
        double flow = f.Hopper.Bottom + 50, jacket = f.AirWay.Right, back = f.Body.Right + 16;
        Role pipe = new("pipe", Token.Sheet, Token.BandEdge, 1.25);
        on.Part(new Rect(Box.Between(jacket - 2, flow - 3, back, flow + 3), pipe));
        on.Part(new Rect(Box.Between(jacket - 8, at.Y - 3, back, at.Y + 3), pipe));
        on.Part(new Rect(Box.Between(jacket - 8, f.Exchanger.Bottom, jacket - 2, at.Y + 3), pipe));
        on.Part(new Circle(at, 9, CutawayRoles.Part), new Polygon([new(at.X + 5, at.Y - 6), new(at.X + 5, at.Y + 6), new(at.X - 7, at.Y)], CutawayRoles.Solid));
        on.Part(new Rect(Box.Between(at.X + 24, at.Y - 26, at.X + 38, at.Y - 6), CutawayRoles.Part, 7), new Line(new(at.X + 31, at.Y - 6), new(at.X + 31, at.Y - 2), CutawayRoles.Wall), new Line(new(at.X + 24, at.Y - 16), new(at.X + 38, at.Y - 16), CutawayRoles.Detail));
        on.Water(new(back + 12, at.Y), new(at.X + 12, at.Y));
        on.Water(new(jacket + 10, flow), new(back + 14, flow));
        on.Name(Say.Of("section.circulating-pump-return"), new(at.X + 7, at.Y + 6), "pump");
        on.Name(Say.Of("section.expansion-vessel"), new(at.X + 37, at.Y - 14), "vessel");
        on.Name(Say.Of("section.flow-to-radiators"), new(back, flow), "flow-pipe");
    }
}
