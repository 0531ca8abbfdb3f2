using Emberwright.Reports.Wording;
using Emberwright.Stove.Patterns;

namespace Emberwright.Reports.Pictures.Cutaway;

/// <summary>The ash passages down to the combustion blower, and the places where ash comes to rest.</summary>
internal static class AshPart
{
    public static void Draw(Draught on, CutawayFrame f, StoveForm built)
    {
        var g = f.GasWay;
        var pocket = g.Bottom;
        if (built.Exchanger is not (ExchangerKind.Ducts or ExchangerKind.WaterTubes)) on.Part(new Rect(g, CutawayRoles.GasWay));
        // From the foot of the passage to the blower's eye.
        on.Part(new Polygon([new(g.Right - 1, f.Blower.Y - 9), new(f.Blower.X - 8, f.Blower.Y - 9), new(f.Blower.X - 8, f.Blower.Y + 9), new(g.Right - 1, f.Blower.Y + 9)], CutawayRoles.GasWay));
        on.Part(new Rect(Box.Between(g.X + 1, f.Blower.Y - 8.4, g.Right + 1, f.Blower.Y + 8.4), new Role("open", Token.Well)));
        Heap(on, g.X + 1, g.Right - 1, pocket - 1, built.Ash == AshWay.HiddenChamber ? 16 : 9);
        switch (built.Ash)
        {
            case AshWay.Sides:
                // The passages lie in front of and behind the section: seen through the wall, dashed.
                on.Part(new Polyline([new(f.Firebox.X + 6, f.Firebox.Y + 34), new(f.Firebox.X + 6, f.PanTop - 14), new(f.Firebox.Right - 4, f.PanTop - 14), new(f.Firebox.Right - 4, f.Firebox.Y + 64)], CutawayRoles.Hidden));
                on.Name(Say.Of("section.ash-passages-both-sides"), new(f.Firebox.X + 6, f.Firebox.Bottom - 24), "ash-passages");
                break;
            case AshWay.HiddenChamber:
                on.Part(new Rect(Box.Between(g.X - 2.5, f.Firebox.Y + 60, g.X + 1, f.Firebox.Bottom - 22), CutawayRoles.Solid));
                on.Name(Say.Of("section.hidden-ash-chamber-behind-the-wall"), new(g.X + 4, f.Blower.Y + 16), "ash-passages");
                break;
            case AshWay.Back:
                on.Name(Say.Of("section.ash-passage-ash-at-its-foot"), new(g.X + 4, pocket - 5), "ash-passages");
                break;
        }

        on.Gas(new(g.Centre.X, f.Blower.Y - 34), new(g.Centre.X, f.Blower.Y), new(f.Blower.X - 6, f.Blower.Y));
    }

    private static void Heap(Draught on, double left, double right, double floor, double height) =>
        on.Part(new Polygon([new(left, floor), new(left, floor - height), new((left + right) / 2, floor - height * 0.6), new(right, floor - height * 0.3), new(right, floor)], CutawayRoles.Ash));
}
