using Emberwright.Stove.Patterns;

namespace Emberwright.Reports.Pictures.Cutaway;

/// <summary>
/// Where the parts of a stove lie in its section, front on the left. Picture units; the proportions are those usual for
/// the construction, not one make's measures.
/// </summary>
/// <param name="Body">The body's casing.</param>
/// <param name="Firebox">The firebox.</param>
/// <param name="Exchanger">The exchanger.</param>
/// <param name="GasWay">The way of the gas behind the firebox, down to the combustion blower.</param>
/// <param name="AirWay">The way of the room air up the back of the firebox.</param>
/// <param name="Hopper">The hopper's widest part.</param>
/// <param name="Pot">Middle of the burn pot's rim.</param>
/// <param name="Blower">Middle of the combustion blower.</param>
/// <param name="RoomBlower">Middle of the room-air blower, or of the pump.</param>
/// <param name="Outlet">Where the vent leaves the stove.</param>
/// <param name="IntakeY">Height of the combustion-air pipe's middle.</param>
internal sealed record CutawayFrame(
    Box Body, Box Firebox, Box Exchanger, Box GasWay, Box AirWay, Box Hopper, Spot Pot, Spot Blower, Spot RoomBlower, Spot Outlet, double IntakeY)
{
    /// <summary>Radius of the combustion blower's housing.</summary>
    public const double BlowerRadius = 19;

    /// <summary>Lays the parts out.</summary>
    public static CutawayFrame For(StoveForm built)
    {
        var insert = built.IsInsert;
        var below = built.Feed == FeedKind.FromBelow;
        var upright = built.Exchanger is ExchangerKind.Ducts or ExchangerKind.WaterTubes;
        var top = insert ? 74 : upright ? 22 : 36;
        var bottom = 346.0;
        var body = Box.Between(82, top, 270, bottom);
        var roof = top + (upright ? 34 : 20);
        var exchanger = upright ? Box.Between(160, roof, 182, 236) : Box.Between(88, roof + 10, 174, roof + 52);
        var firebox = Box.Between(88, upright ? roof : exchanger.Bottom, 156, 260);
        var gas = upright ? Box.Between(160, 236, 182, 312) : Box.Between(160, roof, 175, 312);
        var air = upright ? Box.Between(186, roof, 197, bottom - 8) : Box.Between(180, roof + 8, 193, bottom - 8);
        var hopper = Box.Between(air.Right + 4, top + 4, insert ? 245 : 264, below ? 236 : insert ? 156 : 150);
        var pot = new Spot(122, 226);
        var blower = new Spot(225, below ? 298 : 284);
        var room = new Spot(221, below ? 330 : 325);
        return new(body, firebox, exchanger, gas, air, hopper, pot, blower, room, insert ? new(244, top) : new(270, blower.Y), below ? 272 : 246);
    }

    /// <summary>True when the vent leaves upwards.</summary>
    public bool IsTopOutlet => Outlet.Y < Blower.Y - 40;

    /// <summary>Top of the firebox's ash pan.</summary>
    public double PanTop => Firebox.Bottom + 8;

    /// <summary>Middle of the place of a node of the air path; null when the section has none for it.</summary>
    public Spot? Of(string node) => node switch
    {
        "air-box" => new(Pot.X - 14, IntakeY - 2),
        "firebox" => new(Firebox.Right - 10, Pot.Y - 28),
        "exchanger-end" => new(GasWay.Centre.X, Exchanger.Bottom + 10),
        "blower-inlet" => new(GasWay.Centre.X + 4, Blower.Y - 2),
        "collar" => IsTopOutlet ? new(Outlet.X + 12, Outlet.Y + 16) : new(Outlet.X + 5, Outlet.Y),
        _ => null,
    };
}
