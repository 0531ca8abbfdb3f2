// With flows held, what temperature and composition does each node take? Nodes are visited in the order gas passes them,
// so that one sweep is exact in forward flow; against it a sweep is one Gauss–Seidel step.
// The heat balance of a node is monotone in its own temperature and is solved by Newton's method.
namespace Emberwright.Stove.Air;

/// <summary>Temperature and composition sweep at fixed flows.</summary>
internal static class HeatSweep
{
    /// <summary>Takes the sweep; returns the largest change of temperature, K.</summary>
    public static double Take(Scenario s, in UnknownLayout at, Span<double> z, Span<LinkPoint> points, double damping)
    {
        double change = 0;
        for (var i = 0; i < at.Nodes; i++)
        {
            double mass = 0, heat = 0, fuel = 0, air = 0;
            for (var l = 0; l < at.Links; l++)
            {
                ref readonly var link = ref s.Links[l];
                if (link.To != i && link.From != i)
                {
                    continue;
                }

                var q = z[at.Q(l)];
                var size = SmoothPower.Size(q, out var direction);
                var share = 0.5 * (1 + direction);
                var arriving = link.To == i ? q * share : -q * (1 - share);
                if (arriving <= 0)
                {
                    continue;
                }

                var inK = (share * (link.From >= 0 ? z[at.T(link.From)] : s.BoundaryK(link.From)))
                    + ((1 - share) * (link.To >= 0 ? z[at.T(link.To)] : s.BoundaryK(link.To)));
                var inY = at.HasShares
                    ? (share * (link.From >= 0 ? z[at.Y(link.From)] : 0)) + ((1 - share) * (link.To >= 0 ? z[at.Y(link.To)] : 0))
                    : 0;
                var duty = s.Duty(l, at.Setting(z));
                var outK = duty.UaWPerK > 0 ? inK - (points[l].Effectiveness * (inK - duty.SinkK)) : inK;
                mass += arriving;
                heat += arriving * s.Burn.Heat(outK, inY, out _, out _);
                fuel += arriving * inY;
                air += arriving;
            }

            if (i == s.FireNode && s.IsBurning)
            {
                var burn = s.Burn;
                mass += burn.GasKgPerS;
                fuel += burn.GasKgPerS;
                heat += burn.FuelKgPerS * burn.HeatJPerKg * (1 - burn.RadiantShare) * s.HeatShare
                    * Burn.Completeness(air / burn.NeedKgPerS, out _);
            }

            var y = mass > 1e-12 && at.HasShares ? fuel / mass : 0;
            if (at.HasShares)
            {
                z[at.Y(i)] = y;
            }

            var t = z[at.T(i)];
            for (var k = 0; k < 4; k++)
            {
                var contact = CoupledEquations.RestingContactWPerK;
                var miss = heat - (mass * s.Burn.Heat(t, y, out var byT, out _)) + (contact * (s.RoomK - t));
                var step = miss / ((mass * byT) + contact);
                t = Math.Clamp(t + step, 200, 2500);
                if (Math.Abs(step) < 0.01)
                {
                    break;
                }
            }

            var move = damping * (t - z[at.T(i)]);
            z[at.T(i)] += move;
            change = Math.Max(change, Math.Abs(move));
        }

        return change;
    }
}
