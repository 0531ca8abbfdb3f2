// How do temperature and pressure run along the vent, where does it stand under pressure, where would water condense?
//   gas       T(x) = T_u + (T_e − T_u)·e^(−U·π·D·x/(q·c_p))
//   wall      T_w = T − (U/h)·(T − T_u)
//   pressure  p(x) = p_collar − loss(0…x) + Σ(ρ_u − ρ)·g·Δz − ρw²/2       static, against still outdoor air at that height
// T_e gas at the collar, T_u surroundings, K; U transmittance on the inside, h inner coefficient (PipeNusselt), W/(m²·K);
// q flow, kg/s; c_p 1100 J/(kg·K). Entry loss at the start, fittings and friction spread over the length, the horizontal part
// first, terminal loss at the end. Valid for gas flowing outwards; the other way the profile is that of outdoor air.
// Source: form of EN 13384-1 (temperature and pressure along a flue), from memory.
// Worked value: K = 0 → T(x) = T_e everywhere.
using Emberwright.Stove.Air;
using Emberwright.Stove.Fire;
using Emberwright.Stove.Heat;

namespace Emberwright.Stove.Vent;

/// <summary>One place along the vent run.</summary>
/// <param name="DistanceM">Distance from the collar along the run, m.</param>
/// <param name="HeightM">Height above the collar, m.</param>
/// <param name="GasC">Gas temperature, °C.</param>
/// <param name="WallC">Inner wall temperature, °C.</param>
/// <param name="PressurePa">Static pressure against still outdoor air at that height, Pa.</param>
public readonly record struct VentPoint(double DistanceM, double HeightM, double GasC, double WallC, double PressurePa);

/// <summary>Temperature and pressure along a vent run.</summary>
/// <param name="Points">Places from collar to terminal.</param>
/// <param name="DewPointC">Water dew point of the flue gas, °C; NaN without fire.</param>
public sealed record VentProfile(IReadOnlyList<VentPoint> Points, double DewPointC)
{
    private const int Steps = 24;

    /// <summary>Length along which the run stands above outdoor pressure, m: every joint there must be sealed.</summary>
    public double PositiveLengthM => LengthWhere(p => p.PressurePa > 0);

    /// <summary>Length along which the wall is below the dew point, m.</summary>
    public double CondensingLengthM => double.IsNaN(DewPointC) ? 0 : LengthWhere(p => p.WallC < DewPointC);

    /// <summary>The profile of a solved stove.</summary>
    public static VentProfile Of(StoveSolution state)
    {
        var duct = state.Model.Duct;
        var scenario = state.Scenario;
        var vent = state.Vent;
        var flow = Math.Max(state.MassFlowKgPerS(vent.Id), 1e-6);
        var startK = 273.15 + state.TemperatureC(vent.From);
        var around = scenario.VentSurroundingsK;
        var collarPa = state.TotalPressurePa(vent.From);
        var outdoor = scenario.OutdoorDensity;
        var factor = state.LossFactor(vent.Id);
        var horizontalM = Math.Max(0, duct.LengthM - Math.Abs(duct.RiseM));
        var points = new VentPoint[Steps + 1];
        var pa = collarPa;
        var previousK = startK;
        for (var i = 0; i <= Steps; i++)
        {
            var x = duct.LengthM * i / Steps;
            var gasK = around + ((startK - around) * Math.Exp(-duct.TransmittanceWPerM2K * Math.PI * duct.DiameterM * x / (flow * LinkModel.GasHeatCapacity)));
            var meanK = (gasK + previousK) / 2;
            var density = Atmosphere.DensityKgPerM3(scenario.PressurePa, meanK);
            var velocityPa = flow * flow / (2 * density * duct.AreaM2 * duct.AreaM2);
            var reynolds = flow * duct.DiameterM / (duct.AreaM2 * Viscosity.OfAir(meanK));
            var friction = Friction.Factor(reynolds, duct.RoughnessM / duct.DiameterM) * duct.LengthM / duct.DiameterM;
            var step = i == 0
                ? VentDuct.EntryLoss
                : (friction + duct.Loss - VentDuct.EntryLoss - duct.TerminalLoss) / Steps;
            var height = Height(x, horizontalM, duct.RiseM);
            var gained = i == 0 ? 0 : height - Height(duct.LengthM * (i - 1) / Steps, horizontalM, duct.RiseM);
            pa += ((outdoor - density) * Atmosphere.GravityMPerS2 * gained) - (factor * step * velocityPa);
            var inner = PipeNusselt.CoefficientWPerM2K(reynolds, duct.DiameterM, gasK);
            var wallK = gasK - (Math.Min(1, duct.TransmittanceWPerM2K / inner) * (gasK - around));
            points[i] = new VentPoint(x, height, gasK - 273.15, wallK - 273.15, pa - velocityPa);
            previousK = gasK;
        }

        return new VentProfile(points, DewPointOf(state));
    }

    private static double DewPointOf(StoveSolution state)
    {
        if (!double.IsFinite(state.FlueAirRatio) || state.FlueAirRatio < 1 || state.FlueAirRatio > 900)
        {
            return double.NaN;
        }

        var burn = state.Scenario.Burn;
        var fuel = state.Model.Pattern.Fuel.Fuel;
        var fired = fuel.WithMoisture(Math.Clamp(1 - (burn.DryScale * (1 - fuel.Moisture)), 0, 0.6));
        return Saturation.DewPointK(new Stoichiometry(fired).FlueGasAt(state.FlueAirRatio), state.AmbientPa) - 273.15;
    }

    private static double Height(double x, double horizontalM, double riseM) =>
        x <= horizontalM ? 0 : Math.Sign(riseM) * Math.Min(x - horizontalM, Math.Abs(riseM));

    private double LengthWhere(Func<VentPoint, bool> holds)
    {
        double sum = 0;
        for (var i = 1; i < Points.Count; i++)
        {
            sum += (Points[i].DistanceM - Points[i - 1].DistanceM) * ((holds(Points[i - 1]) ? 0.5 : 0) + (holds(Points[i]) ? 0.5 : 0));
        }

        return sum;
    }
}
