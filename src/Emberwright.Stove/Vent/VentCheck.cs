// Does this vent at this site let the stove have the air it needs?
//   required = Σ losses from air supply to terminal at the flow the stove has on its usual vent at sea level
//   available = blower rise at that flow + buoyancy of stove and vent − adverse wind − what house and room take
//   margin = available − required
// in Pa, at a cold start and at lowest and highest burn, calm and in the design wind: Cp 0.6 on the terminal.
// Valid for one stove on one run. Assumes that the flow on the pattern's usual vent is the flow wanted.
// Source: form of EN 13384-1 (available against required pressure), from memory; Cp of a windward wall at normal incidence
// by Swami & Chandra (ASHRAE Trans. 94, 1988).
// Worked value: on the pattern's own vent on the reference day the calm margin is zero by definition.
using Emberwright.Stove.Air;
using Emberwright.Stove.Patterns;

namespace Emberwright.Stove.Vent;

/// <summary>One case of a vent check.</summary>
/// <param name="Condition">Cold start, lowest or highest burn.</param>
/// <param name="WindMPerS">Wind on the terminal, m/s; 0 calm.</param>
/// <param name="RequiredPa">Pressure needed along the path, Pa.</param>
/// <param name="AvailablePa">Pressure there is, Pa.</param>
/// <param name="AirShare">Air the stove gets here over the air on its usual vent, calm, –.</param>
/// <param name="State">The stove as it would run on this vent.</param>
/// <param name="Profile">Temperature and pressure along the run in that state.</param>
public sealed record VentCase(
    Condition Condition, double WindMPerS, double RequiredPa, double AvailablePa, double AirShare, StoveSolution State, VentProfile Profile)
{
    /// <summary>Available less required, Pa; negative: the stove gets less air than on its usual vent.</summary>
    public double MarginPa => AvailablePa - RequiredPa;

    /// <summary>Least share of its usual air that calls a calm case good; a round number, no source.</summary>
    public const double LeastShare = 0.95;

    /// <summary>True when the stove has its air when calm, and in wind at least a fire that is not starved (cold: flow outwards).</summary>
    public bool Works => State.Status == SolveStatus.Converged && AirShare > 0 && (WindMPerS > 0 || AirShare >= LeastShare);
}

/// <summary>A vent run checked for one stove at one site.</summary>
/// <param name="Run">The run checked.</param>
/// <param name="Cases">Calm, then in the design wind: each a cold start, lowest and highest burn.</param>
/// <param name="EquivalentLength">The trade's rule, beside it.</param>
public sealed record VentCheck(VentRun Run, IReadOnlyList<VentCase> Cases, EquivalentLength EquivalentLength)
{
    /// <summary>Wind to withstand unless said otherwise, m/s: a fresh breeze; a round number, no source.</summary>
    public const double UsualWindMPerS = 8;

    /// <summary>Inside diameters pellet vent is sold in, mm: 3, 4, 5 and 6 in, and the European 80, 100, 130, 150.</summary>
    public static IReadOnlyList<double> Diameters { get; } = [76.2, 80, 100, 101.6, 127, 130, 150, 152.4];

    private static readonly Condition[] Conditions = [Condition.FanOnly, Condition.LowBurn, Condition.HighBurn];

    /// <summary>True when every case has its air.</summary>
    public bool Works => Cases.All(c => c.Works);

    /// <summary>Checks a run.</summary>
    /// <param name="pattern">The stove's pattern.</param>
    /// <param name="card">Its card, or null.</param>
    /// <param name="site">The site with the run to check.</param>
    /// <param name="designWindMPerS">Wind to withstand, m/s; 0 leaves the windy cases out.</param>
    public static VentCheck Of(Pattern pattern, StoveCard? card, Site site, double designWindMPerS = UsualWindMPerS)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        ArgumentNullException.ThrowIfNull(site);
        InputException.Require(designWindMPerS, 0, 40, "design wind", "m/s", "Give the wind the stove must run in; 8 m/s is a fresh breeze.");
        var usual = new VirtualStove(pattern, card, new Site());
        var here = new VirtualStove(pattern, card, site with { WindMPerS = 0 });
        var nominal = new double[ParameterSlopes.Parameters];
        var wanted = Conditions.Select(c => usual.Solve(nominal, c)).ToArray();
        double[] winds = designWindMPerS > 0 ? [0, designWindMPerS] : [0];
        return new VentCheck(
            site.Vent ?? pattern.Vent,
            [.. winds.SelectMany(w => wanted.Select(u => Case(u, here, w)))],
            EquivalentLength.Of(site.Vent ?? pattern.Vent, site.AltitudeM));
    }

    /// <summary>The smallest diameter sold with which the same run works in every case, mm; null when none does.</summary>
    /// <param name="pattern">The stove's pattern.</param>
    /// <param name="card">Its card, or null.</param>
    /// <param name="site">The site with the run.</param>
    /// <param name="designWindMPerS">Wind to withstand, m/s.</param>
    public static double? SmallestDiameterMm(Pattern pattern, StoveCard? card, Site site, double designWindMPerS = UsualWindMPerS)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        ArgumentNullException.ThrowIfNull(site);
        var run = site.Vent ?? pattern.Vent;
        foreach (var diameter in Diameters)
        {
            if (Of(pattern, card, site with { Vent = run with { DiameterMm = diameter } }, designWindMPerS).Works)
            {
                return diameter;
            }
        }

        return null;
    }

    private static VentCase Case(StoveSolution wanted, VirtualStove stove, double windMPerS)
    {
        var parameters = new double[ParameterSlopes.Parameters];
        var calm = stove.Solve(parameters, wanted.Condition);
        parameters[(int)Parameter.Wind] = WallPressure.Windward * 0.5 * calm.Scenario.OutdoorDensity * windMPerS * windMPerS;
        var here = windMPerS > 0 ? stove.Solve(parameters, wanted.Condition) : calm;
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

        available += scenario.BoundaryPa(here.MainPathStart.From, here.MainPathStart.HeightM) - scenario.WindPa;
        var intake = wanted.Links.First(l => l.IsIntake).Id;
        var share = here.MassFlowKgPerS(intake) / wanted.MassFlowKgPerS(intake);
        return new VentCase(here.Condition, windMPerS, required, available, share, here, VentProfile.Of(here));
    }
}
