namespace Emberwright.Stove.Air;

/// <summary>Turns a described link into the numbers of its law; where it is joined is the caller's business.</summary>
internal static class LinkGeometry
{
    /// <summary>The law of a link whose ends, heights and scale are already in <paramref name="ends"/>.</summary>
    public static LinkModel Of(Link link, LinkModel ends) => link switch
    {
        Opening o => Hole(ends, o.AreaM2, o.Discharge),
        Crack c => ends with
        {
            Kind = LinkKind.Power,
            Exponent = 1 / c.Exponent,
            DensityExponent = 1 / c.Exponent,
            K = Math.Pow(c.Coefficient, -1 / c.Exponent),
        },
        Passage p => ends with
        {
            Kind = LinkKind.Passage,
            Exponent = 2,
            AreaM2 = p.AreaM2,
            DiameterM = p.DiameterM,
            LengthM = p.LengthM,
            RelativeRoughness = p.RoughnessM / p.DiameterM,
            Loss = p.Loss,
            ColdSide = p.ColdSide,
        },
        Blower b => ends with { Kind = LinkKind.Blower, Exponent = 2, Curve = b.Curve },
        _ => throw new InputException("air path", $"link \"{link.Id}\" is of an unknown kind", "Use opening, crack, passage, blower or vent."),
    };

    /// <summary>A hole that loses one velocity head.</summary>
    public static LinkModel Hole(LinkModel ends, double areaM2, double discharge) => ends with
    {
        Kind = LinkKind.Power,
        Exponent = 2,
        DensityExponent = 1,
        K = 1 / (2 * discharge * discharge * areaM2 * areaM2),
    };
}
