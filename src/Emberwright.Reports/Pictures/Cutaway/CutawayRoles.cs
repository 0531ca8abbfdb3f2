namespace Emberwright.Reports.Pictures.Cutaway;

/// <summary>
/// How a section is drawn: cut metal thick, what lies behind dashed, and three flows that differ in line and arrowhead,
/// not only in ink.
/// </summary>
internal static class CutawayRoles
{
    public static readonly Role Shell = new("shell", Token.Sheet, Token.Ink, 2.5);
    public static readonly Role Wall = new("wall", null, Token.Ink, 2);
    public static readonly Role Cavity = new("cavity", Token.Sheet, Token.Ink2, 1.25);
    public static readonly Role GasWay = new("gas-way", Token.Well, Token.Ink2, 1);
    public static readonly Role Part = new("part", Token.Sheet, Token.Ink, 1.5);
    public static readonly Role Detail = new("detail", null, Token.Ink2, 1);
    public static readonly Role Solid = new("solid", Token.Ink);
    public static readonly Role Hidden = new("hidden", null, Token.Ink2, 1, 3, 2.5);
    public static readonly Role Hatch = new("hatch", null, Token.Ink3, 0.75);
    public static readonly Role Fuel = new("fuel", Token.Well);
    public static readonly Role Grain = new("grain", null, Token.Ink3, 1.5);
    public static readonly Role Ash = new("ash", Token.Rule);
    public static readonly Role Water = new("water", Token.Band, Token.BandEdge, 1);
    public static readonly Role Glass = new("glass", Token.Sheet, Token.Ink, 1.25);
    public static readonly Role Hose = new("hose", null, Token.Ink, 1.75, 1.75, 2);
    public static readonly Role Panel = new("panel", null, Token.Ink, 3.5);
    public static readonly Role Port = new("port", Token.Sheet, Token.Ink, 1.75);
    public static readonly Role Numbered = new("sensor", Token.Ink, Token.Sheet, 1);
    public static readonly Role PanelMark = new("panel-mark", Token.Sheet, Token.Ink, 1.5);
    public static readonly Role Leader = new("lead", null, Token.Ink3, 0.75);
    public static readonly Role Foot = new("foot", Token.Ink3);

    public static readonly Role Air = new("air", null, Token.Ink2, 1.25);
    public static readonly Role AirHead = new("air", Token.Sheet, Token.Ink2, 1.25);
    public static readonly Role Gas = new("gas", null, Token.Ink, 2.25);
    public static readonly Role GasHead = new("gas", Token.Ink);
    public static readonly Role RoomAir = new("room-air", null, Token.BandEdge, 1.5, 5, 3);
    public static readonly Role RoomAirHead = new("room-air", null, Token.BandEdge, 1.5);
    public static readonly Role Flow = new("water-flow", null, Token.BandEdge, 1.5, 1.5, 2.5);

    public static readonly Lettering Letter = new(11, true, Token.Ink);
    public static readonly Lettering Number = new(11, true, Token.Sheet);
}
