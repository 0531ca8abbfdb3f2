// What does an instrument show at a place of the solved stove?
//   pressure   p_node − q²/(2ρA²) − p_room(z)      static pressure of the gas against room air at the gauge's height
//   O2         from the share of fuel-born gas: λ = (1 − y)(1 − ash)/(y·A), then the dry flue gas of that λ
//   CO         the empirical curve over O2 at the pot's λ, diluted to the flue's λ
//   warm air   t_room + heat given off in the exchanger / capacity rate of the room air
// q flow past the tapping, kg/s; A cross-section there, m²; y share of fuel-born gas, –; A air need, kg/kg.
// Each also adds its slopes by the unknowns and by the parameters.
using Emberwright.Stove.Fire;
using Emberwright.Stove.Patterns;

namespace Emberwright.Stove.Air;

/// <summary>What can be read on a solved stove.</summary>
internal static class Readings
{
    private const double LeastShare = 1e-6;

    /// <summary>Pressure at a port, Pa.</summary>
    public static void Pressure(StoveModel model, Scenario s, in UnknownLayout at, ReadOnlySpan<double> z, Port port, ref Reading reading)
    {
        var node = model.NodeIndex(port.Node);
        reading.Value = z[at.P(node)] - s.RoomPa(port.HeightM);
        reading.By(at.P(node), 1);
        reading.By(Parameter.House, -1);
        if (port.AreaM2 is not { } area || port.FlowLink is not { } past)
        {
            return;
        }

        var link = at.Q(model.LinkIndex(past));
        var t = z[at.T(node)];
        var density = Atmosphere.DensityKgPerM3(s.PressurePa, t);
        var velocityPa = z[link] * z[link] / (2 * density * area * area);
        reading.Value -= velocityPa;
        reading.By(link, -z[link] / (density * area * area));
        reading.By(at.T(node), -velocityPa / t);
    }

    /// <summary>Temperature of a node, °C.</summary>
    public static void Temperature(in UnknownLayout at, ReadOnlySpan<double> z, int node, ref Reading reading)
    {
        reading.Value = z[at.T(node)] - 273.15;
        reading.By(at.T(node), 1);
    }

    /// <summary>Temperature at the vent's outlet, °C.</summary>
    public static void VentOutlet(Scenario s, in UnknownLayout at, ReadOnlySpan<double> z, int link, ref Reading reading)
    {
        ref readonly var vent = ref s.Links[link];
        var point = default(LinkPoint);
        point.Evaluate(vent, s.Duty(link, at.Setting(z)), z[at.Q(link)], z[at.T(vent.From)], s.BoundaryK(vent.To));
        reading.Value = point.Out - 273.15;
        reading.By(at.Q(link), point.OutByQ + (point.OutByIn * point.InByQ));
        reading.By(at.T(vent.From), point.OutByIn * point.Share);
    }

    /// <summary>Warm air at the grille (or water leaving), °C.</summary>
    public static void WarmAir(Scenario s, in UnknownLayout at, ReadOnlySpan<double> z, ref Reading reading)
    {
        reading.Value = s.StreamInK - 273.15;
        for (var l = 0; l < at.Links; l++)
        {
            ref readonly var link = ref s.Links[l];
            if (link.ColdSide != ColdSide.Stream || s.StreamWPerK == 0)
            {
                continue;
            }

            var q = z[at.Q(l)];
            var size = SmoothPower.Size(q, out var sizeByQ);
            var point = default(LinkPoint);
            point.Evaluate(link, s.Duty(l, at.Setting(z)), q, z[at.T(link.From)], z[at.T(link.To)]);
            var from = at.HasShares ? z[at.Y(link.From)] : 0;
            var to = at.HasShares ? z[at.Y(link.To)] : 0;
            var y = (point.Share * from) + ((1 - point.Share) * to);
            var hIn = s.Burn.Heat(point.In, y, out var inByT, out var inByY);
            var hOut = s.Burn.Heat(point.Out, y, out var outByT, out var outByY);
            var drop = hIn - hOut;
            var rate = size / s.StreamWPerK;
            reading.Value += rate * drop;
            if (!reading.WithSlopes)
            {
                continue;
            }

            var byIn = rate * (inByT - (outByT * point.OutByIn));
            var byY = rate * (inByY - outByY);
            reading.By(at.Q(l), (sizeByQ * drop / s.StreamWPerK) + (byIn * point.InByQ) - (rate * outByT * point.OutByQ)
                + (byY * point.ShareByQ * (from - to)));
            reading.By(at.T(link.From), byIn * point.Share);
            reading.By(at.T(link.To), byIn * (1 - point.Share));
            if (at.HasShares)
            {
                reading.By(at.Y(link.From), byY * point.Share);
                reading.By(at.Y(link.To), byY * (1 - point.Share));
            }

            reading.By(Parameter.Insulation, -rate * outByT * point.OutByLnUa);
            var byStream = (-rate * drop) - (rate * outByT * point.OutByLnStream);
            reading.By(Parameter.RoomAir, byStream);
            if (!s.StreamIsWater)
            {
                reading.By(Parameter.Supply, byStream * s.MotorSlope);
            }
        }
    }

    /// <summary>Air ratio of the gas at a node.</summary>
    public static double AirRatio(Scenario s, in UnknownLayout at, ReadOnlySpan<double> z, int node, out double byShare)
    {
        var y = z[at.Y(node)];
        var ratio = s.Burn.AirRatio(Math.Max(y, LeastShare), out byShare);
        if (y < LeastShare)
        {
            byShare = 0;
        }

        return ratio;
    }

    /// <summary>d λ / d moisture at fixed composition.</summary>
    private static double ByMoisture(Scenario s, double ratio)
    {
        var drying = s.Burn.DrynessSlope / s.Burn.DryScale;
        return -ratio * drying * (1 + (s.Burn.AshShare / (1 - s.Burn.AshShare)));
    }

    /// <summary>O2 (or CO2) in dry flue gas, %.</summary>
    public static void DryGas(Scenario s, in UnknownLayout at, ReadOnlySpan<double> z, int node, bool oxygen, ref Reading reading)
    {
        var ratio = AirRatio(s, at, z, node, out var byShare);
        var share = s.Burn.Nominal.OxygenDry(ratio, out var slope);
        var flue = s.Burn.Nominal.StoichiometricFlue;
        if (!oxygen)
        {
            var excess = Math.Max(0, ratio - 1);
            var mol = flue.DryMol + (excess * s.Burn.Nominal.DryAirMol);
            var carbon = flue.CarbonDioxide + (excess * s.Burn.Nominal.StoichiometricAir.CarbonDioxide);
            share = carbon / mol;
            slope = ratio > 1
                ? (s.Burn.Nominal.StoichiometricAir.CarbonDioxide - (share * s.Burn.Nominal.DryAirMol)) / mol
                : 0;
        }

        reading.Value = 100 * share;
        reading.By(at.Y(node), 100 * slope * byShare);
        reading.By(Parameter.Moisture, 100 * slope * ByMoisture(s, ratio));
    }

    /// <summary>CO in dry flue gas, ppm; empirical.</summary>
    public static void CarbonMonoxidePpm(Scenario s, in UnknownLayout at, ReadOnlySpan<double> z, int node, ref Reading reading)
    {
        var flueRatio = AirRatio(s, at, z, node, out var byShare);
        var potRatio = PotAir(s, at, z) / s.Burn.NeedKgPerS;
        var potOxygen = s.Burn.Nominal.OxygenDry(potRatio, out var oxygenByRatio);
        var atPot = Math.Exp(CarbonMonoxideCurve.PelletStove.LogPpm(potOxygen, out var logByOxygen));
        var potMol = DryMol(s, potRatio, out var potByRatio);
        var flueMol = DryMol(s, flueRatio, out var flueByRatio);
        reading.Value = atPot * potMol / flueMol;
        if (!reading.WithSlopes)
        {
            return;
        }

        var byPot = reading.Value * ((logByOxygen * oxygenByRatio) + (potByRatio / potMol));
        for (var l = 0; l < at.Links; l++)
        {
            if (s.Links[l].IsPotAir)
            {
                reading.By(at.Q(l), byPot / s.Burn.NeedKgPerS);
            }
        }

        var byFlue = -reading.Value * flueByRatio / flueMol;
        reading.By(at.Y(node), byFlue * byShare);
        reading.By(Parameter.Feed, -byPot * potRatio);
        reading.By(Parameter.Moisture, (-byPot * potRatio * s.Burn.DrynessSlope / s.Burn.DryScale) + (byFlue * ByMoisture(s, flueRatio)));
    }

    /// <summary>Air through the burn pot's holes, kg/s.</summary>
    public static double PotAir(Scenario s, in UnknownLayout at, ReadOnlySpan<double> z)
    {
        double air = 0;
        for (var l = 0; l < at.Links; l++)
        {
            air += s.Links[l].IsPotAir ? z[at.Q(l)] : 0;
        }

        return air;
    }

    private static double DryMol(Scenario s, double ratio, out double slope)
    {
        var excess = Math.Max(0, ratio - 1);
        slope = ratio > 1 ? s.Burn.Nominal.DryAirMol : 0;
        return s.Burn.Nominal.StoichiometricFlue.DryMol + (excess * s.Burn.Nominal.DryAirMol);
    }
}
