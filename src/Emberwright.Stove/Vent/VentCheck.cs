// Does this vent at this site let the stove have the air it needs?
//   required = Σ losses from air supply to terminal at the flow the stove has on its usual vent at sea level
//   available = blower rise at that flow + buoyancy of stove and vent − adverse wind − what house and room take
//   margin = available − required
// in Pa, at lowest and highest burn. Wind: Cp 0.6 on the terminal at the design wind.
// Valid for one stove on one run. Assumes that the flow on the pattern's usual vent is the flow wanted.
// Source: form of EN 13384-1 (available against required pressure), from memory; Cp of a windward wall at normal incidence
// by Swami & Chandra (ASHRAE Trans. 94, 1988).
// Worked value: on the pattern's own vent on the reference day the margin is zero by definition.
using Emberwright.Stove.Air;
using Emberwright.Stove.Patterns;

namespace Emberwright.Stove.Vent;

/// <summary>One case of a vent check.</summary>
/// <param name="Condition">Lowest or highest burn.</param>
/// <param name="RequiredPa">Pressure needed along the path, Pa.</param>
/// <param name="AvailablePa">Pressure there is, Pa.</param>
/// <param name="State">The stove as it would run on this vent, calm.</param>
/// <param name="Profile">Temperature and pressure along the run in that state.</param>
public sealed record VentCase(Condition Condition, double RequiredPa, double AvailablePa, StoveSolution State, VentProfile Profile)
{
    /// <summary>Available less required, Pa; negative: the stove gets less air than on its usual vent.</summary>
    public double MarginPa => AvailablePa - RequiredPa;
}

/// <summary>A vent run checked for one stove at one site.</summary>
/// <param name="Cases">Lowest and highest burn.</param>
/// <param name="EquivalentLength">The trade's rule, beside it.</param>
public sealed record VentCheck(IReadOnlyList<VentCase> Cases, EquivalentLength EquivalentLength)
{
    private const double WindwardCp = 0.6;

    /// <summary>Checks a run.</summary>
    /// <param name="pattern">The stove's pattern.</param>
    /// <param name="card">Its card, or null.</param>
    /// <param name="site">The site with the run to check.</param>
    /// <param name="designWindMPerS">Wind to withstand, m/s.</param>
    public static VentCheck Of(Pattern pattern, StoveCard? card, Site site, double designWindMPerS = 8)
    {
        InputException.Require(designWindMPerS, 0, 40, "design wind", "m/s", "Give the wind the stove must run in; 8 m/s is a fresh breeze.");
        var usual = new VirtualStove(pattern, card, new Site());
        var here = new VirtualStove(pattern, card, site with { WindMPerS = 0 });
        var nominal = new double[ParameterSlopes.Parameters];
        Condition[] conditions = [Condition.LowBurn, Condition.HighBurn];
        return new VentCheck(
            [.. conditions.Select(c => Case(usual.Solve(nominal, c), here.Solve(nominal, c), designWindMPerS))],
            EquivalentLength.Of(site.Vent ?? pattern.Vent, site.AltitudeM));
    }

    private static VentCase Case(StoveSolution wanted, StoveSolution here, double windMPerS)
    {
        double required = 0, available = 0;
        var scenario = here.Scenario;
        foreach (var l in here.MainPath())
        {
            ref readonly var link = ref scenario.Links[l];
            var point = here.PointAt(l, wanted);
            var lift = (scenario.OutdoorDensity - point.Density) * Atmosphere.GravityMPerS2 * link.RiseM;
            available += lift;
            if (link.Kind == LinkKind.Blower)
            {
                available -= point.Loss;
            }
            else
            {
                required += point.Loss;
            }
        }

        available += scenario.BoundaryPa(here.MainPathStart.From, here.MainPathStart.HeightM);
        available -= WindwardCp * 0.5 * scenario.OutdoorDensity * windMPerS * windMPerS;
        return new VentCase(here.Condition, required, available, here, VentProfile.Of(here));
    }
}
