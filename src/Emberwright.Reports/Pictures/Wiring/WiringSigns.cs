namespace Emberwright.Reports.Pictures.Wiring;

/// <summary>The signs on the wire.</summary>
internal static class WiringSigns
{
    public static readonly Role LiveWire = new("live", null, Token.Ink, 7);
    public static readonly Role Core = new("core", null, Token.Sheet, 2.5);
    public static readonly Role DeadWire = new("dead", null, Token.Ink, 1.5);
    public static readonly Role Body = new("body", Token.Sheet, Token.Ink, 1.5);
    public static readonly Role Blade = new("blade", null, Token.Ink, 3);
    public static readonly Role Unsure = new("unsure", null, Token.Ink, 2, 2, 3);
    public static readonly Role Pin = new("pin", Token.Ink);
    public static readonly Role Point = new("point", Token.Sheet, Token.Ink, 2);
    public static readonly Role Volts = new("volts", null, Token.Ink, 2);
    public static readonly Role Cliff = new("cliff", null, Token.Ember, 5);
    public static readonly Role Dotted = new("axis", null, Token.Ink3, 1, 1, 4);
    public static readonly Role Lead = new("wire", null, Token.Ink2, 2);
    public static readonly Role Meter = new("meter", Token.Well, Token.Ink, 1.5);
    public static readonly Role Glass = new("glass", Token.Sheet, Token.Ink3);

    public static readonly Lettering Words = new(13);
    public static readonly Lettering Strong = new(15, true, Token.Ink);
    public static readonly Lettering Number = new(13, true, Token.Ink);
    public static readonly Lettering Reverse = new(15, true, Token.OnEmber);
    public static readonly Lettering Display = new(28, true, Token.Ink);

    /// <summary>Half the height of a part's sign.</summary>
    public static double Reach(WiringPart part) => part.Kind switch
    {
        PartKind.Switch => part.State == PartState.Open ? 22 : 14,
        PartKind.Motor => 16,
        PartKind.Heater => 18,
        PartKind.Fuse or PartKind.Other => 14,
        PartKind.Connector => 9,
    };

    /// <summary>A part's sign around a spot of the wire.</summary>
    public static IEnumerable<Shape> Sign(WiringPart part, double x, double y)
    {
        var open = part.State == PartState.Open;
        var reach = Reach(part);
        if (part.Kind == PartKind.Motor)
            return [new Circle(new(x, y), 16, Body), new Text(new(x, y + 5), "M", Number, Anchor.Middle)];
        if (part.Kind == PartKind.Connector)
            return [new Rect(new(x - 8, y - 9, 16, 18), Body, 4), .. Gap(x, y, 5, part.State)];
        var half = open && part.Kind == PartKind.Switch ? 18 : 12;
        List<Shape> made = [new Rect(new(x - half, y - reach, 2 * half, 2 * reach), Body)];
        switch (part.Kind)
        {
            case PartKind.Switch:
                var throwBy = reach - (open ? 9 : 6);
                made.Add(part.State switch
                {
                    PartState.Closed => new Line(new(x, y - throwBy), new(x, y + throwBy), Blade),
                    PartState.Open => new Line(new(x, y + throwBy), new(x - 13, y - throwBy + 4), Blade),
                    PartState.Unknown => new Line(new(x, y + throwBy), new(x - 7, y - throwBy), Unsure),
                });
                made.Add(new Circle(new(x, y - throwBy), 3.2, Pin));
                made.Add(new Circle(new(x, y + throwBy), 3.2, Pin));
                break;
            case PartKind.Heater:
                made.Add(new Polyline([new(x, y - 18), new(x, y - 14), .. Enumerable.Range(0, 6).Select(i => new Spot(x + (i % 2 == 0 ? -7 : 7), y - 11 + i * 4.4)), new(x, y + 14), new(x, y + 18)], DeadWire));
                break;
            case PartKind.Fuse or PartKind.Other:
                made.AddRange(part.Kind == PartKind.Fuse ? Gap(x, y, 14, part.State) : []);
                break;
            default:
                break;
        }

        return made;
    }

    // The conductor inside: whole, broken, or unsure.
    private static IEnumerable<Shape> Gap(double x, double y, double reach, PartState state) => state switch
    {
        PartState.Closed => [new Line(new(x, y - reach), new(x, y + reach), DeadWire)],
        PartState.Open => [new Line(new(x, y - reach), new(x - 4, y - 3), DeadWire), new Line(new(x + 4, y + 3), new(x, y + reach), DeadWire)],
        PartState.Unknown => [new Line(new(x, y - reach), new(x, y + reach), Unsure)],
    };

    /// <summary>The warning sign of a caution.</summary>
    public static IEnumerable<Shape> Warning(double x, double y) =>
    [
        new Polygon([new(x + 19, y), new(x + 38, y + 34), new(x, y + 34)], Roles.Tag),
        new Line(new(x + 19, y + 11), new(x + 19, y + 23), new Role("sign", null, Token.OnEmber, 3.5)),
        new Line(new(x + 19, y + 27), new(x + 19, y + 30), new Role("sign", null, Token.OnEmber, 3.5)),
    ];
}
