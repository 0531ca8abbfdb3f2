using Emberwright.Reports.Wording;
using Emberwright.Stove.Controls;
using Emberwright.Stove.Patterns;

namespace Emberwright.Reports.Pictures.Cutaway;

/// <summary>Burn pot, fire, igniter, agitator, and the way of the combustion air to them.</summary>
internal static class FirePart
{
    public static void Draw(Draught on, CutawayFrame f, Pattern pattern)
    {
        var below = pattern.Form.Feed == FeedKind.FromBelow;
        Intake(on, f, pattern.Form.Intake, below);
        Pot(on, f, below);
        if (pattern.Wiring.HasComponent(ComponentIds.Igniter)) Igniter(on, f);
        if (pattern.Wiring.HasComponent(ComponentIds.AgitatorMotor)) Agitator(on, f);
        on.Mark(new Text(new(f.Firebox.X + 4, f.Firebox.Y + (pattern.Form.IsInsert ? 54 : 62)), Say.Of("common.firebox"), Roles.Name));
    }

    private static void Pot(Draught on, CutawayFrame f, bool below)
    {
        double x = f.Pot.X, y = f.Pot.Y;
        Flame(on, new(x, y + 2));
        on.Part(new Polygon([new(x - 16, y), new(x + 16, y), new(x + 11, y + 17), new(x - 11, y + 17)], CutawayRoles.Part));
        for (var i = -2; i <= 2; i++)
            if (!below || Math.Abs(i) == 2) on.Part(new Circle(new(x + i * (below ? 5.5 : 4.4), y + (below ? 10 : 16.8)), 1.2, CutawayRoles.Solid));
        on.Part(new Circle(new(x - 11.5, y + 7), 1.2, CutawayRoles.Solid), new Circle(new(x + 11.5, y + 7), 1.2, CutawayRoles.Solid));
        on.Name(Say.Of("section.burn-pot"), new(x - 13, y + 6), "burn-pot");
    }

    private static void Flame(Draught on, Spot at)
    {
        Spot P(double dx, double dy) => new(at.X + dx, at.Y + dy);
        on.Part(new Polyline([P(-10, 0), P(-12, -8), P(-7, -15), P(-5, -9), P(-1, -24), P(4, -14), P(6, -18), P(11, -9), P(9, 0)], CutawayRoles.Detail));
        on.Part(new Polyline([P(-4, 0), P(-4, -6), P(0, -11), P(4, -5), P(3, 0)], CutawayRoles.Detail));
    }

    private static void Igniter(Draught on, CutawayFrame f)
    {
        double y = f.Pot.Y + 9;
        on.Part(new Rect(Box.Between(f.Pot.X + 15, y - 2, f.GasWay.X - 2, y + 2), CutawayRoles.Part, 1));
        on.Part(new Rect(Box.Between(f.Pot.X + 15, y - 2, f.Pot.X + 24, y + 2), CutawayRoles.Solid));
        on.Name(Say.Of("section.igniter"), new(f.Pot.X + 22, y + 2), "igniter");
    }

    private static void Agitator(Draught on, CutawayFrame f)
    {
        double y = f.Pot.Y + 3;
        on.Part(new Line(new(f.Pot.X - 12, y), new(f.AirWay.Right + 8, y), CutawayRoles.Wall));
        for (var i = 0; i < 4; i++)
            on.Part(new Line(new(f.Pot.X - 9 + i * 6, y - (i % 2 == 0 ? 5 : 0)), new(f.Pot.X - 9 + i * 6, y + (i % 2 == 0 ? 0 : 6)), CutawayRoles.Wall));
        var motor = new Box(f.AirWay.Right + 6, y - 8, 15, 16);
        on.Part(new Rect(motor, CutawayRoles.Part, 2), new Text(new(motor.Centre.X, y + 4), "M", Roles.Name, Anchor.Middle));
        on.Name(Say.Of("section.agitator-and-its-motor"), new(motor.Right - 1, y), "agitator");
    }

    private static void Intake(Draught on, CutawayFrame f, IntakeKind kind, bool below)
    {
        double y = f.IntakeY, half = 5, back = f.Body.Right, end = kind == IntakeKind.Duct ? back + 34 : back + 8;
        var box = Box.Between(f.Pot.X - 22, below ? f.Firebox.Bottom + 4 : f.Pot.Y + 16, f.Pot.X + 22, y + half);
        on.Part(new Rect(Box.Between(f.Pot.X, y - half, end, y + half), CutawayRoles.Cavity));
        if (!below) on.Part(new Rect(box, CutawayRoles.Cavity));
        else on.Part(new Polyline([new(f.Pot.X - 24, y + half), new(f.Pot.X - 24, f.Pot.Y + 12), new(f.Pot.X - 14, f.Pot.Y + 8)], CutawayRoles.Detail), new Line(new(f.Pot.X - 24, y + half), new(f.Pot.X, y + half), CutawayRoles.Detail));
        on.Air(new(end + 12, y), new(f.Pot.X + 30, y));
        if (below) on.Air(new(f.Pot.X - 6, y), new(f.Pot.X - 18, y), new(f.Pot.X - 18, f.Pot.Y + 20));
        else on.Air(new(f.Pot.X + 8, y), new(f.Pot.X + 2, y), new(f.Pot.X + 2, f.Pot.Y + 5));
        var at = new Spot(back - 12, y);
        if (kind == IntakeKind.Damper) on.Part(new Line(new(at.X - 4, y - half + 1), new(at.X + 4, y + half - 1), CutawayRoles.Panel), new Circle(at, 2, CutawayRoles.Solid));
        if (kind == IntakeKind.Flapper) on.Part(new Line(new(at.X, y - half), new(at.X - 6, y + half), CutawayRoles.Panel), new Circle(new(at.X, y - half), 2, CutawayRoles.Solid));
        on.Name(kind switch
        {
            IntakeKind.Damper => Say.Of("section.air-intake-damper"),
            IntakeKind.Flapper => Say.Of("section.air-intake-flapper"),
            IntakeKind.Duct => Say.Of("section.air-duct-from-outdoors"),
            IntakeKind.Pipe => Say.Of("section.air-intake"),
        }, new(kind == IntakeKind.Duct ? end - 4 : at.X + 8, y + half), "intake");
    }
}
