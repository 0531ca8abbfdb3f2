// What flows, pressures, temperatures and compositions belong together?
// For each link      p_from − p_to + (ρ_out − ρ_m)·g·Δz − loss(q) = 0                           Pa
// for each node      Σ q_in − Σ q_out + S = 0                                                  kg/s
//                    Σ q_in·(h_in − h) + Q − S·h + k·(T_room − T) = 0                          W
//                    Σ q_in·(y_in − y) + S·(1 − y) = 0                                         kg/s
// p total pressure relative to still outdoor air at the same height, so that buoyancy counts once, Pa; q mass flow, kg/s;
// S gas born from fuel, kg/s; h heat of gas above 25 °C, J/kg; Q heat of the fire, W; y share of fuel-born gas, –;
// k 0.02 W/K, contact with the room that keeps the temperature of gas at rest defined.
// "In" is whichever end the gas comes from, smooth through reversal. A controller adds its own equation and unknown.
// Valid for Mach ≪ 1, steady. Assumes each node well mixed.
// Source: conservation of mass, momentum and energy; form of the network after Todini & Pilati (1988).
// Worked value: none published for the coupled set; its parts are checked each on its own.
using Emberwright.Stove.Heat;

namespace Emberwright.Stove.Air;

/// <summary>Residuals and analytic Jacobian of the coupled stove.</summary>
internal static class CoupledEquations
{
    /// <summary>Contact of resting gas with the room, W/K.</summary>
    public const double RestingContactWPerK = 0.02;

    /// <summary>Writes residuals; with <paramref name="jacobian"/> not empty also ∂residual/∂unknown, row by row.</summary>
    public static void Assemble(
        Scenario s, in UnknownLayout at, ReadOnlySpan<double> z, Span<LinkPoint> points, Span<double> residual, Span<double> jacobian)
    {
        residual.Clear();
        jacobian.Clear();
        var withSlopes = !jacobian.IsEmpty;
        var n = at.Count;
        var fire = s.FireNode;
        double air = 0;
        for (var l = 0; l < s.Links.Length; l++)
        {
            ref readonly var link = ref s.Links[l];
            ref var point = ref points[l];
            var q = z[at.Q(l)];
            var from = link.From;
            var to = link.To;
            var fromK = from >= 0 ? z[at.T(from)] : s.BoundaryK(from);
            var toK = to >= 0 ? z[at.T(to)] : s.BoundaryK(to);
            point.Evaluate(link, s.Duty(l, at.Setting(z)), q, fromK, toK);

            var fromPa = from >= 0 ? z[at.P(from)] : s.BoundaryPa(from, link.HeightM);
            var toPa = to >= 0 ? z[at.P(to)] : s.BoundaryPa(to, link.HeightM);
            var row = at.Q(l);
            var lift = Atmosphere.GravityMPerS2 * link.RiseM;
            residual[row] = fromPa - toPa + ((s.OutdoorDensity - point.Density) * lift) - point.Loss;
            if (from >= 0)
            {
                residual[at.Mass(from)] -= q;
            }

            if (to >= 0)
            {
                residual[at.Mass(to)] += q;
            }

            if (withSlopes)
            {
                var byMean = (point.Density / point.Mean * lift) - point.LossByT;
                var byIn = byMean * point.MeanByIn;
                jacobian[(row * n) + at.Q(l)] = -point.LossByQ + (byMean * point.MeanByQ) + (byIn * point.InByQ);
                if (from >= 0)
                {
                    jacobian[(row * n) + at.P(from)] = 1;
                    jacobian[(row * n) + at.T(from)] = byIn * point.Share;
                    jacobian[(at.Mass(from) * n) + at.Q(l)] = -1;
                }

                if (to >= 0)
                {
                    jacobian[(row * n) + at.P(to)] = -1;
                    jacobian[(row * n) + at.T(to)] = byIn * (1 - point.Share);
                    jacobian[(at.Mass(to) * n) + at.Q(l)] = 1;
                }

                if (at.Control >= 0 && link.Kind == LinkKind.Blower)
                {
                    jacobian[(row * n) + at.Control] = -point.LossBySpeed * s.Speed;
                }
            }

            if (to >= 0)
            {
                Arrive(s, at, z, point, l, to, forward: true, residual, jacobian);
            }

            if (from >= 0)
            {
                Arrive(s, at, z, point, l, from, forward: false, residual, jacobian);
            }

            if (to == fire)
            {
                air += q * point.Share;
            }
            else if (from == fire)
            {
                air -= q * (1 - point.Share);
            }
        }

        for (var i = 0; i < s.NodeCount; i++)
        {
            var contact = RestingContactWPerK;
            residual[at.Heat(i)] += contact * (s.RoomK - z[at.T(i)]);
            if (withSlopes)
            {
                jacobian[(at.Heat(i) * n) + at.T(i)] -= contact;
            }
        }

        if (at.IsControlled)
        {
            var task = s.Regulation!;
            residual[at.Control] = task.SensedPa(s, z[at.P(task.Node)]) - task.SetPointPa;
            if (withSlopes)
            {
                jacobian[(at.Control * n) + at.P(task.Node)] = task.Reaching;
            }
        }

        if (s.IsBurning)
        {
            Ignite(s, at, z, air, points, residual, jacobian);
        }
    }

    private static void Arrive(Scenario s, in UnknownLayout at, ReadOnlySpan<double> z, in LinkPoint point, int l, int node,
        bool forward, Span<double> residual, Span<double> jacobian)
    {
        ref readonly var link = ref s.Links[l];
        var q = z[at.Q(l)];
        var arriving = forward ? q * point.Share : -q * (1 - point.Share);
        var byQ = forward ? point.Share + (q * point.ShareByQ) : -(1 - point.Share) + (q * point.ShareByQ);
        var burning = at.HasShares;
        var fromY = burning && link.From >= 0 ? z[at.Y(link.From)] : 0;
        var toY = burning && link.To >= 0 ? z[at.Y(link.To)] : 0;
        var inY = (point.Share * fromY) + ((1 - point.Share) * toY);
        var y = burning ? z[at.Y(node)] : 0;
        var t = z[at.T(node)];
        var hIn = s.Burn.Heat(point.Out, inY, out var inByT, out var inByY);
        var h = s.Burn.Heat(t, y, out var byT, out var byY);
        var heat = at.Heat(node);
        residual[heat] += arriving * (hIn - h);
        if (burning)
        {
            residual[at.Share(node)] += arriving * (inY - y);
        }

        if (jacobian.IsEmpty)
        {
            return;
        }

        var n = at.Count;
        var inYByQ = point.ShareByQ * (fromY - toY);
        jacobian[(heat * n) + at.Q(l)] += (byQ * (hIn - h))
            + (arriving * ((inByT * (point.OutByQ + (point.OutByIn * point.InByQ))) + (inByY * inYByQ)));
        jacobian[(heat * n) + at.T(node)] -= arriving * byT;
        var byEnd = arriving * inByT * point.OutByIn;
        if (link.From >= 0)
        {
            jacobian[(heat * n) + at.T(link.From)] += byEnd * point.Share;
        }

        if (link.To >= 0)
        {
            jacobian[(heat * n) + at.T(link.To)] += byEnd * (1 - point.Share);
        }

        if (!burning)
        {
            return;
        }

        var share = at.Share(node);
        jacobian[(share * n) + at.Q(l)] += (byQ * (inY - y)) + (arriving * inYByQ);
        jacobian[(share * n) + at.Y(node)] -= arriving;
        jacobian[(heat * n) + at.Y(node)] -= arriving * byY;
        if (link.From >= 0)
        {
            jacobian[(share * n) + at.Y(link.From)] += arriving * point.Share;
            jacobian[(heat * n) + at.Y(link.From)] += arriving * inByY * point.Share;
        }

        if (link.To >= 0)
        {
            jacobian[(share * n) + at.Y(link.To)] += arriving * (1 - point.Share);
            jacobian[(heat * n) + at.Y(link.To)] += arriving * inByY * (1 - point.Share);
        }
    }

    private static void Ignite(Scenario s, in UnknownLayout at, ReadOnlySpan<double> z, double air,
        ReadOnlySpan<LinkPoint> points, Span<double> residual, Span<double> jacobian)
    {
        var burn = s.Burn;
        var fire = s.FireNode;
        var gas = burn.GasKgPerS;
        var t = z[at.T(fire)];
        var y = z[at.Y(fire)];
        var h = burn.Heat(t, y, out var byT, out var byY);
        var eta = Burn.Completeness(air / burn.NeedKgPerS, out var etaSlope);
        var full = burn.FuelKgPerS * burn.HeatJPerKg * (1 - burn.RadiantShare) * s.HeatShare;
        residual[at.Mass(fire)] += gas;
        residual[at.Heat(fire)] += (full * eta) - (gas * h);
        residual[at.Share(fire)] += gas * (1 - y);
        if (jacobian.IsEmpty)
        {
            return;
        }

        var n = at.Count;
        jacobian[(at.Heat(fire) * n) + at.T(fire)] -= gas * byT;
        jacobian[(at.Heat(fire) * n) + at.Y(fire)] -= gas * byY;
        jacobian[(at.Share(fire) * n) + at.Y(fire)] -= gas;
        if (etaSlope == 0)
        {
            return;
        }

        for (var l = 0; l < s.Links.Length; l++)
        {
            ref readonly var link = ref s.Links[l];
            if (link.To != fire && link.From != fire)
            {
                continue;
            }

            var q = z[at.Q(l)];
            var byQ = link.To == fire
                ? points[l].Share + (q * points[l].ShareByQ)
                : -(1 - points[l].Share) + (q * points[l].ShareByQ);
            jacobian[(at.Heat(fire) * n) + at.Q(l)] += full * etaSlope / burn.NeedKgPerS * byQ;
        }
    }
}
