namespace Emberwright.Reports.Pictures;

/// <summary>
/// A colour by its meaning, as the app's style sheet names it (<c>Ink2</c> is <c>--ink-2</c>).
/// Never a colour itself: screens take theirs from the page, paper from the print palette.
/// </summary>
public enum Token
{
    /// <summary>Paper the picture lies on.</summary>
    Sheet,
    /// <summary>Where something goes in, e.g. the meter's body.</summary>
    Well,
    /// <summary>Hairlines, never meaning.</summary>
    Rule,
    /// <summary>First ink: values, names.</summary>
    Ink,
    /// <summary>Second ink: words beside them.</summary>
    Ink2,
    /// <summary>Third ink: axes.</summary>
    Ink3,
    /// <summary>Look here.</summary>
    Ember,
    /// <summary>Ground of a caution.</summary>
    EmberWash,
    /// <summary>Letters on <see cref="Ember"/>.</summary>
    OnEmber,
    /// <summary>As it should be.</summary>
    Band,
    /// <summary>Its edge.</summary>
    BandEdge,
    /// <summary>The firm's own colour on its letterhead; ink where it has none.</summary>
    Firm,
}

/// <summary>The names and colours of the tokens.</summary>
public static class Palette
{
    /// <summary>The custom property of the app's style sheet, e.g. <c>--ink-2</c>.</summary>
    public static string Property(Token token) => token switch
    {
        Token.Sheet => "--sheet",
        Token.Well => "--well",
        Token.Rule => "--rule",
        Token.Ink => "--ink",
        Token.Ink2 => "--ink-2",
        Token.Ink3 => "--ink-3",
        Token.Ember => "--ember",
        Token.EmberWash => "--ember-wash",
        Token.OnEmber => "--on-ember",
        Token.Band => "--band",
        Token.BandEdge => "--band-edge",
        Token.Firm => "--ink",
    };

    /// <summary>Colour in a light room, 0xRRGGBB.</summary>
    public static int Light(Token token) => token switch
    {
        Token.Sheet => 0xfbf9f6,
        Token.Well => 0xe6e1d9,
        Token.Rule => 0xd0c8bd,
        Token.Ink => 0x211d19,
        Token.Ink2 => 0x4c453d,
        Token.Ink3 => 0x635b51,
        Token.Ember => 0x9b3400,
        Token.EmberWash => 0xf8e2d3,
        Token.OnEmber => 0xffffff,
        Token.Band => 0xcbd6ce,
        Token.BandEdge => 0x5b6f64,
        Token.Firm => 0x211d19,
    };

    /// <summary>Colour in a dark room, 0xRRGGBB.</summary>
    public static int Dark(Token token) => token switch
    {
        Token.Sheet => 0x1f1b18,
        Token.Well => 0x2c2723,
        Token.Rule => 0x3f3832,
        Token.Ink => 0xefe9e0,
        Token.Ink2 => 0xcac1b6,
        Token.Ink3 => 0xaca296,
        Token.Ember => 0xff9a59,
        Token.EmberWash => 0x3b2619,
        Token.OnEmber => 0x1d0e04,
        Token.Band => 0x34433b,
        Token.BandEdge => 0x93ac9f,
        Token.Firm => 0xefe9e0,
    };

    /// <summary>Colour on paper, 0xRRGGBB: the light room with white paper.</summary>
    public static int Print(Token token) => token == Token.Sheet ? 0xffffff : Light(token);
}
