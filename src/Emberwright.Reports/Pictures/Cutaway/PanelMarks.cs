using System.Collections.Immutable;
using Emberwright.Stove.Patterns;
using Emberwright.Stove.Patterns.Anatomies;

namespace Emberwright.Reports.Pictures.Cutaway;

/// <summary>What opens, each under a small letter in a square, where hands meet it.</summary>
internal static class PanelMarks
{
    private const double Half = 6.5;

    /// <summary>The pattern's panels with letter and place; a panel of a card that the section has no place for stands nowhere.</summary>
    public static ImmutableArray<(string Letter, AccessPanel Panel, Spot? At)> Of(CutawayFrame f, Pattern pattern) =>
        [.. pattern.Anatomy.Panels.Select((p, i) => (((char)('a' + i % 26)).ToString(), p, Place(f, p.Id)))];

    public static void Draw(Draught on, CutawayFrame f, Pattern pattern)
    {
        foreach (var (letter, panel, place) in Of(f, pattern))
            if (place is { } at) on.Mark(new Group(Sign(letter, at), Id: $"panel-{panel.Id}", Title: $"{letter}, {panel.Name}: {panel.Where}"));
    }

    /// <summary>The square with its letter.</summary>
    public static ImmutableArray<Shape> Sign(string letter, Spot at) =>
        [new Rect(new Box(at.X - Half, at.Y - Half, 2 * Half, 2 * Half), CutawayRoles.PanelMark, 1.5), new Text(new(at.X, at.Y + 3.5), letter, CutawayRoles.Letter, Anchor.Middle)];

    // Where hands meet each panel. Panels at the sides, before and behind the section, are marked on the casing's foot.
    private static Spot? Place(CutawayFrame f, string id) => id switch
    {
        "surround" => new(f.Body.X + 22, f.Body.Y - 22),
        "slide" => new(f.Body.X + 60, f.Body.Bottom),
        "side-panels" or "side-doors" => new(f.Body.X + 60, f.Body.Bottom),
        "rear-shroud" or "rear-covers" => new(f.Body.Right, f.Body.Bottom - 132),
        "burn-pot" => new(f.Pot.X - 22, f.Pot.Y + 12),
        "pot-clean-out" => new(f.Pot.X + 8, f.Firebox.Bottom + 10),
        "fire-back" or "fire-wall" or "lining" => new(f.Firebox.Right + 2, f.Pot.Y - 6),
        "ash-covers" or "chamber-covers" or "trap-covers" => new(f.GasWay.X, f.Pot.Y + 40),
        "inspection-covers" or "ash-inspection" => new(f.GasWay.X, f.GasWay.Bottom - 14),
        "baffle" => new(f.Firebox.X + 46, f.Firebox.Y + 8),
        "tube-cover" or "top-plug" => new(f.Exchanger.Centre.X, f.Exchanger.Y - 12),
        "swing-down" => new(f.Exchanger.X + 42, f.Exchanger.Bottom - 4),
        "scraper" => new(f.Exchanger.X + 34, f.Exchanger.Y - 5),
        "ash-door" => new(f.Body.X, f.PanTop + 12),
        "agitator-drive" => new(f.GasWay.Right + 12, f.Pot.Y + 3),
        "blower-plate" => new(f.Blower.X + 14, f.Blower.Y - 17),
        "room-air-plate" => new(f.RoomBlower.X + 15, f.RoomBlower.Y - 9),
        "feed-cover" => f.Hopper.Bottom > 200 ? new(f.AirWay.Right + 40, 254) : new(f.IsTopOutlet ? 210 : 230, f.Hopper.Bottom + 29),
        "feeder-clean-out" => new(f.Firebox.Right + 10, 254),
        "control-cover" => new(f.Body.Right, f.Body.Y + 40),
        "intake-pipe" or "flapper" => new(f.Body.Right - 2, f.IntakeY),
        "tee-cap" => f.IsTopOutlet ? new(f.Outlet.X + 12.5, f.Blower.Y - 26) : new(f.Outlet.X + 20.5, f.Blower.Y + 27),
        "pump-head" => new(f.RoomBlower.X - 18, f.RoomBlower.Y + 4),
        "vessel-valve" => new(f.RoomBlower.X + 27, f.RoomBlower.Y - 24),
        _ => null,
    };
}
