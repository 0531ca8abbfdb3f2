// How does a real stove differ from its pattern in ways that no parameter of the model can take up?
// Equations: opening  q = ρ·C·Δp^n with n = 0.5 + |N(0, 0.03·k)|, C such that the loss at the design flow is unchanged;
//            chamber  a share U(0, 0.7·k) of its Σζ becomes friction ψ(Re)·L/D, equal at the design flow;
//            crack    n = 0.65 + N(0, 0.05·k), equal at 20 Pa;
//            blower   p0·(1 + N(0, 0.04·k)), a·U(1 ± 0.5·k), b such that the rise at the design flow changes only with p0;
//            leak     one more crack from the room into the air path, C = 2e-5·e^N(0, 0.6)·k m³/(s·Paⁿ);
//            heat     UA and stream e^N(0, 0.05·k) and e^N(0, 0.08·k), radiant share + N(0, 0.02·k);
//            levels   blower's speed e^N(0, 0.015·k), feed e^N(0, 0.03·k) at each level.
// Symbols: k mismatch, 1 ordinary, 2 doubled; q mass flow, Δp loss, ρ density, n exponent, C coefficient, ψ friction factor.
// Validity: 0 ≤ k ≤ 2; above, exponents and shares are held at 0.62 and 0.9.
// Assumptions: none of these numbers is known from real stoves; they are chosen so that readings differ by more than 5 % on
//              average from those of a model with the same parameters (a test holds that).
// Source: from memory, no source.
// Worked: an opening with n = 0.5 is left as it is.
using Emberwright.Stove;
using Emberwright.Stove.Air;
using Emberwright.Stove.Patterns;

namespace Emberwright.Trials.Generator;

/// <summary>Perturbs a pattern's structure.</summary>
internal static class StrangePattern
{
    private const double LeakOfAGasket = 2e-5;
    private const double HotViscosity = 2.5e-5;
    private const double Air = 1.2;

    /// <summary>A stove of the pattern as some maker really built it.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="chance">Random numbers.</param>
    /// <param name="mismatch">k; 0 gives the pattern itself.</param>
    /// <param name="unlisted">True adds a cause that no catalogue lists: a wide opening into the exhaust way.</param>
    public static Pattern Of(Pattern pattern, Chance chance, double mismatch, bool unlisted)
    {
        var design = new VirtualStove(pattern, null, new Site()).Solve(new double[Enum.GetValues<Parameter>().Length], Condition.HighBurn);
        var links = pattern.Air.Links.Select(l => Strange(l, Math.Abs(design.MassFlowKgPerS(l.Id)), chance, mismatch)).ToList();
        var inside = pattern.Air.Nodes.Where(n => design.TotalPressurePa(n.Id) < 0).Select(n => n.Id).ToArray();
        var width = LeakOfAGasket * Math.Exp(chance.Normal(0, 0.6));
        var place = inside[(int)(chance.Unit() * inside.Length)];
        if (mismatch > 0) links.Add(new Crack("leak-of-its-own", Boundary.Room, place, width * mismatch, 0.6, Origin.Memory));
        if (unlisted) links.Add(new Crack("unlisted-opening", Boundary.Room, place, LeakOfAGasket * Math.Exp(chance.Normal(2.3, 0.4)), 0.55, Origin.Memory));
        return pattern with
        {
            Air = pattern.Air with { Links = links },
            Heat = pattern.Heat with
            {
                ConductanceWPerK = pattern.Heat.ConductanceWPerK * Math.Exp(chance.Normal(0, 0.05 * mismatch)),
                StreamWPerK = pattern.Heat.StreamWPerK * Math.Exp(chance.Normal(0, 0.08 * mismatch)),
                RadiantShare = Math.Clamp(pattern.Heat.RadiantShare + chance.Normal(0, 0.02 * mismatch), 0, 0.6),
            },
            Levels = pattern.Levels.ToDictionary(l => l.Key, l => l.Value with
            {
                SpeedRatio = l.Value.SpeedRatio * Math.Exp(chance.Normal(0, 0.015 * mismatch)),
                FeedKgPerH = l.Value.FeedKgPerH * Math.Exp(chance.Normal(0, 0.03 * mismatch)),
            }),
        };
    }

    private static Link Strange(Link link, double designKgPerS, Chance chance, double mismatch)
    {
        var q = Math.Max(designKgPerS, 1e-5);
        return link switch
        {
            Opening o => Opening(o, q, Math.Min(0.5 + Math.Abs(chance.Normal(0, 0.03 * mismatch)), 0.62)),
            Crack c => Crack(c, Math.Clamp(c.Exponent + chance.Normal(0, 0.05 * mismatch), 0.5, 0.9)),
            Passage { Loss: > 0 } p => Passage(p, q, Math.Min(chance.Between(0, 0.7 * mismatch), 0.9)),
            Blower b => Blower(b, q / Air, chance.Normal(0, 0.04 * mismatch), chance.Between(1 - 0.5 * mismatch, 1 + 0.5 * mismatch)),
            _ => link,
        };
    }

    private static Link Opening(Opening o, double q, double exponent)
    {
        if (exponent == 0.5) return o;
        var area = o.Discharge * o.AreaM2;
        var loss = q * q / (2 * Air * area * area);
        return new Crack(o.Id, o.From, o.To, q / Air / Math.Pow(loss, exponent), exponent, o.Origin)
        { Scale = o.Scale, IsIntake = o.IsIntake, IsPotAir = o.IsPotAir, DoorOpenAreaM2 = o.DoorOpenAreaM2 };
    }

    private static Crack Crack(Crack c, double exponent)
    {
        const double same = 20;
        return c with { Exponent = exponent, Coefficient = c.Coefficient * Math.Pow(same, c.Exponent - exponent) };
    }

    private static Passage Passage(Passage p, double q, double share)
    {
        var diameter = 0.4 * p.DiameterM;
        var friction = Friction.Factor(q * diameter / (p.AreaM2 * HotViscosity), 0.02);
        return p with { Loss = (1 - share) * p.Loss, DiameterM = diameter, RoughnessM = 0.02 * diameter, LengthM = (p.LengthM * diameter / p.DiameterM) + (share * p.Loss * diameter / friction) };
    }

    private static Blower Blower(Blower b, double flow, double head, double slope)
    {
        var curve = b.Curve;
        var linear = curve.Linear * Math.Max(slope, 0);
        var quadratic = curve.Quadratic + ((curve.Linear - linear) / flow);
        return b with { Curve = curve with { ShutOffPa = curve.ShutOffPa * (1 + head), Linear = linear, Quadratic = Math.Max(quadratic, 0.1 * curve.Quadratic) } };
    }
}
