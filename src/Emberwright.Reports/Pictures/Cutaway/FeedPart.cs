using Emberwright.Reports.Wording;
using Emberwright.Stove.Patterns;

namespace Emberwright.Reports.Pictures.Cutaway;

/// <summary>Hopper, auger and the way of the fuel into the burn pot.</summary>
internal static class FeedPart
{
    private const double Tube = 6;

    public static void Draw(Draught on, CutawayFrame f, StoveForm built)
    {
        var below = built.Feed == FeedKind.FromBelow;
        var low = below ? new Spot(250, 254) : new Spot(f.IsTopOutlet ? 222 : 244, f.Hopper.Bottom + 34);
        var high = below ? new Spot(f.Pot.X + 4, 254) : new Spot(f.Firebox.Right - 2, Math.Max(f.Firebox.Y + 20, f.Hopper.Bottom + 2));
        Hopper(on, f, low, below);
        Auger(on, low, high);
        if (below) Riser(on, f);
        else Chute(on, f, high);
        on.Part(new Rect(new Box(low.X + 2, low.Y - 8, 15, 16), CutawayRoles.Part, 2), new Text(new(low.X + 9.5, low.Y + 4), "M", Roles.Name, Anchor.Middle));
        on.Name(below ? Say.Of("section.feed-motor-auger-from-below") : Say.Of("section.feed-motor-auger"), new(low.X + 15, low.Y), "feed-motor");
    }

    private static void Hopper(Draught on, CutawayFrame f, Spot low, bool below)
    {
        var h = f.Hopper;
        double shoulder = h.Bottom - (below ? 56 : 34), throat = low.X - 14;
        Spot[] inside = [new(h.X, h.Y + 4), new(h.X, shoulder), new(throat - 9, low.Y - 5), new(throat + 9, low.Y - 5), new(h.Right, shoulder), new(h.Right, h.Y + 4)];
        double fill = h.Y + 34;
        on.Part(new Polygon([new(h.X, fill), .. inside[1..5], new(h.Right, fill - 8)], CutawayRoles.Fuel));
        for (var row = 0; row < 3; row++)
            for (var k = 0; k < 4; k++)
            {
                var at = new Spot(h.X + 10 + k * 14 + row % 2 * 6, fill + 12 + row * 13);
                if (at.X > h.Right - 9 || at.Y > shoulder) continue;
                on.Part(new Line(at, new(at.X + 5, at.Y + (k % 2 == 0 ? -2 : 2)), CutawayRoles.Grain));
            }

        on.Part(new Polyline([.. inside], CutawayRoles.Wall));
        on.Part(new Line(new(h.X - 2, h.Y - 4), new(h.Right + 5, h.Y - 4), CutawayRoles.Panel));
        on.Mark(new Text(new(h.Centre.X, fill - 10), Say.Of("section.hopper"), Roles.Name, Anchor.Middle));
        on.Name(Say.Of("section.hopper-lid"), new(h.Right - 4, h.Y - 4), "lid");
    }

    // A tube with its flights, between two ends.
    private static void Auger(Draught on, Spot low, Spot high)
    {
        double dx = high.X - low.X, dy = high.Y - low.Y, length = Math.Sqrt(dx * dx + dy * dy);
        var (ux, uy) = (dx / length, dy / length);
        Spot At(double along, double across) => new(low.X + ux * along - uy * across, low.Y + uy * along + ux * across);
        on.Part(new Polygon([At(-2, -Tube), At(length, -Tube), At(length, Tube), At(-2, Tube)], CutawayRoles.Part));
        on.Part(new Line(At(0, 0), At(length, 0), CutawayRoles.Detail));
        for (var along = 4.0; along < length - 4; along += 8) on.Part(new Line(At(along, -Tube + 1), At(along + 5, Tube - 1), CutawayRoles.Detail));
    }

    private static void Chute(Draught on, CutawayFrame f, Spot high)
    {
        double x = high.X - 8;
        on.Part(new Polyline([new(high.X, high.Y - 8), new(x, high.Y - 4), new(x - 6, high.Y + 16)], CutawayRoles.Wall));
        on.Part(new Line(new(high.X, high.Y + 7), new(x + 6, high.Y + 16), CutawayRoles.Wall));
        for (var i = 0; i < 3; i++)
        {
            var y = high.Y + 24 + i * (f.Pot.Y - high.Y - 34) / 3;
            on.Part(new Line(new(x - 4 - i * 4, y), new(x - 6 - i * 4, y + 5), CutawayRoles.Grain));
        }

        on.Name(Say.Of("section.feed-chute"), new(x - 3, high.Y + 8), "chute");
    }

    private static void Riser(Draught on, CutawayFrame f) => on.Part(
        new Polyline([new(f.Pot.X - 7, 260), new(f.Pot.X - 7, f.Pot.Y + 16)], CutawayRoles.Wall),
        new Polyline([new(f.Pot.X + 7, 248), new(f.Pot.X + 7, f.Pot.Y + 16)], CutawayRoles.Wall),
        new Line(new(f.Pot.X - 7, 260), new(f.Pot.X + 4, 260), CutawayRoles.Wall));
}
