namespace Emberwright.Reports.Pictures;

/// <summary>
/// The marks of our pictures, everywhere the same. Circle: inside its band. Diamond: outside. Hollow: before.
/// Full: after or now. Hollow bar: known earlier. Ribbon: healthy. Dashed: a supposition.
/// </summary>
internal static class Roles
{
    public static readonly Role Band = new("band", Token.Band, Token.BandEdge);
    public static readonly Role Supposed = new("if", null, Token.Ink, 1.5, 5, 4);
    public static readonly Role Earlier = new("last", Token.Sheet, Token.Ink2, 1.5);
    public static readonly Role Out = new("out", Token.Ember, Token.Sheet, 1.5);
    public static readonly Role Plumb = new("plumb", null, Token.Ember, 4);
    public static readonly Role Tag = new("tag", Token.Ember);
    public static readonly Role InBefore = new("in", Token.Sheet, Token.Ink, 2);
    public static readonly Role InNow = new("now", Token.Ink, Token.Sheet, 1.5);
    public static readonly Role Axis = new("axis", null, Token.Ink3);
    public static readonly Role Grid = new("grid", null, Token.Rule);
    public static readonly Role Leader = new("lead", null, Token.Ink2);
    public static readonly Role Limit = new("limit", null, Token.Ink, 2);
    public static readonly Role Heed = new("heed", Token.EmberWash, Token.Ember, 1.5);
    public static readonly Role Hit = new("hit");

    public static readonly Lettering Word = new(12);
    public static readonly Lettering AxisWord = new(12, Colour: Token.Ink3);
    public static readonly Lettering Name = new(12, true, Token.Ink);
    public static readonly Lettering TagValue = new(15, true, Token.OnEmber);
    public static readonly Lettering TagWord = new(12, false, Token.OnEmber);
    public static readonly Lettering TagStrong = new(12, true, Token.OnEmber);
}
