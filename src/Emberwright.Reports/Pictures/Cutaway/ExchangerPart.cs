using Emberwright.Reports.Wording;
using Emberwright.Stove.Patterns;

namespace Emberwright.Reports.Pictures.Cutaway;

/// <summary>The exchanger of each construction, with the gas on one side and the room air or water on the other.</summary>
internal static class ExchangerPart
{
    public static void Draw(Draught on, CutawayFrame f, StoveForm built)
    {
        switch (built.Exchanger)
        {
            case ExchangerKind.Tubes: Tubes(on, f, scraped: false); break;
            case ExchangerKind.ScrapedTubes: Tubes(on, f, scraped: true); break;
            case ExchangerKind.SwingDownPanel: SwingDown(on, f); break;
            case ExchangerKind.Plates: Plates(on, f); break;
            case ExchangerKind.Ducts: Upright(on, f, water: false); break;
            case ExchangerKind.WaterTubes: Upright(on, f, water: true); break;
        }
    }

    // Room air from the back through tubes to the grille; the gas rises between them and leaves over the last.
    private static void Tubes(Draught on, CutawayFrame f, bool scraped)
    {
        var e = f.Exchanger;
        Chamber(on, f);
        foreach (var y in (double[])[e.Y + 12, e.Y + 25, e.Y + 38])
        {
            on.Part(new Rect(Box.Between(f.Body.X - 2, y - 4, f.AirWay.X, y + 4), CutawayRoles.Part));
            on.RoomAir(new(f.AirWay.X - 16, y), new(f.Body.X + 30, y));
        }

        if (scraped)
        {
            double x = e.X + 34;
            on.Part(new Rect(Box.Between(x - 2, e.Y + 4, x + 2, e.Bottom - 6), CutawayRoles.Solid));
            on.Part(new Line(new(x, e.Y + 6), new(f.Body.X - 14, e.Y + 6), CutawayRoles.Wall), new Circle(new(f.Body.X - 16, e.Y + 6), 3.5, CutawayRoles.Solid));
            on.Name(Say.Of("section.scraper-and-its-rod"), new(f.Body.X - 16, e.Y + 6), "scraper");
        }

        on.Name(Say.Of("section.exchanger-tubes"), new(f.Body.X, e.Y + 25), "exchanger");
        on.Gas(new(f.Firebox.X + 16, f.Firebox.Y + 40), new(f.Firebox.X + 16, e.Y + 4));
        on.Gas(new(e.X + 42, e.Y + 4), new(f.GasWay.Centre.X, e.Y + 4), new(f.GasWay.Centre.X, e.Bottom + 26));
    }

    // A panel in the firebox roof, hinged at the back: down, it shows the fins above it.
    private static void SwingDown(Draught on, CutawayFrame f)
    {
        var e = f.Exchanger;
        Chamber(on, f);
        for (var x = e.X + 26; x < e.Right - 16; x += 9) on.Part(new Line(new(x, e.Y), new(x, e.Bottom - 12), CutawayRoles.Wall));
        var hinge = new Spot(e.Right - 20, e.Bottom - 4);
        var edge = new Spot(e.X + 16, e.Bottom - 4);
        on.Part(new Line(edge, hinge, CutawayRoles.Panel), new Circle(hinge, 3, CutawayRoles.Part));
        var radius = hinge.X - edge.X;
        on.Part(new Polyline([.. Draught.Arc(hinge, radius, 180, 128)], CutawayRoles.Hidden));
        var down = Draught.Arc(hinge, radius, 128, 127).First();
        on.Part(new Line(hinge, down, CutawayRoles.Hidden));
        on.Name(Say.Of("section.exchanger-panel-swings-down"), new(e.X + 24, e.Bottom - 4), "exchanger");
        on.Name(Say.Of("section.exchanger-fins"), new(e.X + 26, e.Y + 12));
        on.Gas(new(f.Firebox.X + 8, f.Firebox.Y + 40), new(f.Firebox.X + 8, e.Bottom - 14));
        on.Gas(new(e.X + 12, e.Y + 30), new(e.X + 30, e.Y + 24), new(f.GasWay.Centre.X, e.Y + 24), new(f.GasWay.Centre.X, e.Bottom + 26));
        OverTop(on, f);
    }

    private static void Plates(Draught on, CutawayFrame f)
    {
        var e = f.Exchanger;
        Chamber(on, f);
        var folds = new List<Spot>();
        for (var i = 0; i <= 8; i++) folds.Add(new(e.X + 14 + i * 6.2, i % 2 == 0 ? e.Y + 2 : e.Bottom - 10));
        on.Part(new Polyline([.. folds], CutawayRoles.Wall));
        on.Name(Say.Of("section.exchanger-of-folded-plates"), new(e.X + 20, e.Y + 24), "exchanger");
        on.Gas(new(f.Firebox.X + 10, f.Firebox.Y + 44), new(f.Firebox.X + 10, e.Y + 10));
        on.Gas(new(e.X + 62, e.Bottom - 5), new(f.GasWay.Centre.X, e.Bottom - 5), new(f.GasWay.Centre.X, e.Bottom + 30));
        OverTop(on, f);
    }

    // Ducts behind the firebox: over the baffle, down through them, room air or water around them.
    private static void Upright(Draught on, CutawayFrame f, bool water)
    {
        var e = f.Exchanger;
        if (water)
        {
            on.Part(new Rect(Box.Between(f.Firebox.X - 4, e.Y - 20, f.AirWay.Right, e.Y - 8), CutawayRoles.Water));
            on.Part(new Rect(Box.Between(f.Firebox.Right - 4, e.Y + 8, f.AirWay.Right, e.Bottom + 4), CutawayRoles.Water));
            on.Name(Say.Of("section.water-jacket"), new(f.Firebox.X + 14, e.Y - 14), "jacket");
        }
        else
        {
            on.Part(new Rect(Box.Between(f.Firebox.Right, e.Y + 8, e.Right, e.Bottom), CutawayRoles.Cavity));
            OverTop(on, f);
        }

        on.Part(new Rect(Box.Between(f.Firebox.X + 2, e.Y - 5, e.Right, e.Y + 8), new Role("open", Token.Sheet)));
        foreach (var x in (double[])[e.X + 3, e.X + 14])
        {
            on.Part(new Rect(Box.Between(x - 3.5, e.Y + 6, x + 3.5, e.Bottom + 6), CutawayRoles.GasWay));
            if (!water) continue;
            // A turbulator in each tube, worked by a lever above.
            var coil = new List<Spot>();
            for (var i = 0; i <= 16; i++) coil.Add(new(x + (i % 2 == 0 ? -2.5 : 2.5), e.Y + 14 + i * 10));
            on.Part(new Polyline([.. coil], CutawayRoles.Detail));
        }

        on.Part(new Rect(Box.Between(f.GasWay.X, e.Bottom + 2, f.GasWay.Right, f.GasWay.Bottom), CutawayRoles.GasWay));
        if (water)
        {
            on.Part(new Line(new(e.X + 2, e.Y + 2), new(e.Right + 10, e.Y + 2), CutawayRoles.Wall), new Line(new(e.Right + 10, e.Y + 2), new(e.Right + 10, f.Body.Y - 8), CutawayRoles.Wall), new Circle(new(e.Right + 10, f.Body.Y - 10), 3.5, CutawayRoles.Solid));
            on.Name(Say.Of("section.scraper-lever"), new(e.Right + 10, f.Body.Y - 10), "scraper");
        }

        on.Name(water ? Say.Of("section.flue-tubes-with-scrapers") : Say.Of("section.exchanger-ducts"), new(e.X + 10, e.Y + 84), "exchanger");
        on.Gas(new(f.Firebox.X + 26, f.Firebox.Y + 50), new(f.Firebox.X + 26, e.Y + 2), new(e.X - 4, e.Y + 2));
        on.Gas(new(e.X + 3, e.Y + 14), new(e.X + 3, e.Y + 70));
    }

    // Room air up the back, over the exchanger and out at the grille.
    private static void OverTop(Draught on, CutawayFrame f)
    {
        var y = f.Body.Y + 11;
        on.RoomAir(new(f.AirWay.Centre.X, f.AirWay.Y + 40), new(f.AirWay.Centre.X, y), new(f.Body.X + 24, y));
    }

    private static void Chamber(Draught on, CutawayFrame f)
    {
        on.Part(new Rect(Box.Between(f.Firebox.X, f.Exchanger.Y - 4, f.GasWay.Right, f.Exchanger.Bottom), new Role("gas-room", Token.Well, Token.Ink2, 1)));
        on.Part(new Rect(Box.Between(f.Firebox.X + 1, f.Exchanger.Bottom - 3, f.Firebox.Right - 1, f.Exchanger.Bottom + 2), new Role("open", Token.Sheet)));
    }
}
