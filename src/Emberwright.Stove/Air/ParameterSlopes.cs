// How does the whole solution move with each parameter?  J·∂z/∂θ = −∂F/∂θ  (implicit-function theorem)
// F residuals of CoupledEquations, J = ∂F/∂z their analytic Jacobian at the solution, θ a parameter.
// J is factored once; each parameter costs one back-substitution.
namespace Emberwright.Stove.Air;

/// <summary>∂unknowns/∂parameters at a solution.</summary>
internal static class ParameterSlopes
{
    public static readonly int Parameters = Enum.GetValues<Parameter>().Length;

    /// <summary>Rows are parameters, columns unknowns.</summary>
    public static double[] At(Scenario s, in UnknownLayout at, ReadOnlySpan<double> z)
    {
        var n = at.Count;
        var slopes = new double[Parameters * n];
        Span<LinkPoint> points = stackalloc LinkPoint[at.Links];
        Span<double> residual = stackalloc double[n];
        Span<double> jacobian = stackalloc double[n * n];
        Span<int> pivots = stackalloc int[n];
        CoupledEquations.Assemble(s, at, z, points, residual, jacobian);
        Fill(s, at, z, points, slopes);
        Scaling.Apply(at, jacobian, residual);
        if (!DenseLu.Factor(jacobian, pivots, n))
        {
            Array.Fill(slopes, double.NaN);
            return slopes;
        }

        for (var k = 0; k < Parameters; k++)
        {
            var row = slopes.AsSpan(k * n, n);
            var any = false;
            for (var i = 0; i < n; i++)
            {
                any |= row[i] != 0;
                row[i] *= -Scaling.Row(at, i);
            }

            if (!any)
            {
                continue;
            }

            DenseLu.Solve(jacobian, pivots, n, row);
            for (var i = 0; i < n; i++)
            {
                row[i] *= Scaling.Column(at, i);
            }
        }

        return slopes;
    }

    private static void Fill(Scenario s, in UnknownLayout at, ReadOnlySpan<double> z, ReadOnlySpan<LinkPoint> points, Span<double> f)
    {
        var n = at.Count;
        for (var l = 0; l < at.Links; l++)
        {
            ref readonly var link = ref s.Links[l];
            ref readonly var point = ref points[l];
            if (link.Scale >= 0)
            {
                f[(link.Scale * n) + at.Q(l)] += link.Exponent * point.Loss;
            }

            if (link.Kind == LinkKind.Blower)
            {
                var bySpeed = point.LossBySpeed * s.Speed * at.Setting(z);
                f[((int)Parameter.Wheel * n) + at.Q(l)] -= point.LossByHead * s.HeadFactor;
                f[((int)Parameter.BlowerSpeed * n) + at.Q(l)] -= bySpeed;
                f[((int)Parameter.Supply * n) + at.Q(l)] -= bySpeed * s.BlowerSpeedByVoltage;
            }

            if (link.ColdSide == ColdSide.Stream)
            {
                Cool(s, at, z, point, l, f.Slice((int)Parameter.Insulation * n, n), point.OutByLnUa, point.MeanByLnUa);
                Cool(s, at, z, point, l, f.Slice((int)Parameter.RoomAir * n, n), point.OutByLnStream, point.MeanByLnStream);
                if (!s.StreamIsWater)
                {
                    Cool(s, at, z, point, l, f.Slice((int)Parameter.Supply * n, n),
                        point.OutByLnStream * s.MotorSlope, point.MeanByLnStream * s.MotorSlope);
                }
            }

            f[((int)Parameter.Wind * n) + at.Q(l)] += (link.From == -3 ? 1 : 0) - (link.To == -3 ? 1 : 0);
            f[((int)Parameter.House * n) + at.Q(l)] += (s.FollowsHouse(link.From) ? 1 : 0) - (s.FollowsHouse(link.To) ? 1 : 0);
        }

        if (at.IsControlled)
        {
            var task = s.Regulation!;
            f[((int)Parameter.House * n) + at.Control] -= task.Reaching;
            f[((int)Parameter.SensedPressure * n) + at.Control] += task.SensedPa(s, z[at.P(task.Node)]) - task.ZeroPa;
            f[((int)Parameter.SensorZero * n) + at.Control] += 1;
        }

        if (s.IsBurning)
        {
            Feed(s, at, z, points, f);
        }
    }

    private static void Cool(Scenario s, in UnknownLayout at, ReadOnlySpan<double> z, in LinkPoint point, int l,
        Span<double> f, double outSlope, double meanSlope)
    {
        ref readonly var link = ref s.Links[l];
        var q = z[at.Q(l)];
        var byMean = (point.Density / point.Mean * Atmosphere.GravityMPerS2 * link.RiseM) - point.LossByT;
        f[at.Q(l)] += byMean * meanSlope;
        var y = at.HasShares
            ? (point.Share * (link.From >= 0 ? z[at.Y(link.From)] : 0)) + ((1 - point.Share) * (link.To >= 0 ? z[at.Y(link.To)] : 0))
            : 0;
        s.Burn.Heat(point.Out, y, out var capacity, out _);
        if (link.To >= 0)
        {
            f[at.Heat(link.To)] += q * point.Share * capacity * outSlope;
        }

        if (link.From >= 0)
        {
            f[at.Heat(link.From)] -= q * (1 - point.Share) * capacity * outSlope;
        }
    }

    private static void Feed(Scenario s, in UnknownLayout at, ReadOnlySpan<double> z, ReadOnlySpan<LinkPoint> points, Span<double> f)
    {
        var n = at.Count;
        var burn = s.Burn;
        var fire = s.FireNode;
        double air = 0;
        for (var l = 0; l < at.Links; l++)
        {
            air += s.Links[l].To == fire ? z[at.Q(l)] * points[l].Share
                : s.Links[l].From == fire ? -z[at.Q(l)] * (1 - points[l].Share)
                : 0;
        }

        var h = burn.Heat(z[at.T(fire)], z[at.Y(fire)], out _, out _);
        var ratio = air / burn.NeedKgPerS;
        var eta = Burn.Completeness(ratio, out var etaSlope);
        var toGas = burn.FuelKgPerS * (1 - burn.RadiantShare) * s.HeatShare;

        var feed = f.Slice((int)Parameter.Feed * n, n);
        feed[at.Mass(fire)] += burn.GasKgPerS;
        feed[at.Heat(fire)] += (toGas * burn.HeatJPerKg * (eta - (etaSlope * ratio))) - (burn.GasKgPerS * h);
        feed[at.Share(fire)] += burn.GasKgPerS * (1 - z[at.Y(fire)]);

        var drying = burn.DrynessSlope / burn.DryScale;
        var gas = -burn.FuelKgPerS * burn.AshShare * drying;
        var moisture = f.Slice((int)Parameter.Moisture * n, n);
        moisture[at.Mass(fire)] += gas;
        moisture[at.Heat(fire)] += (toGas * ((burn.HeatByMoisture * eta) - (burn.HeatJPerKg * etaSlope * ratio * drying))) - (gas * h);
        moisture[at.Share(fire)] += gas * (1 - z[at.Y(fire)]);
    }
}
