// Question:    how restricted is each passage and how open each leak, as found and now, with 90 % certainty?
// Equations:   passages: 1 − e^v, v = −x + shifts of the faults present; leaks: e^v, v everything but nothing taken out;
//              quantiles 5, 50 and 95 % of the weighted draws.
// Symbols:     x restriction, −ln of the share left open.
// Validity:    1000 draws give each quantile to about 1 % in probability.
// Assumptions: those of Draws.
// Source:      weighted empirical quantile.
// Worked:      −
using Emberwright.Stove;

namespace Emberwright.Diagnosis.Inference;

/// <summary>Estimates of restrictions (fractions, 0 open … 1 shut) and leaks (ratios to an ordinary sound one).</summary>
internal static class Estimates
{
    /// <summary>Number of draws that suffices.</summary>
    public const int Count = 1000;

    private static readonly (Parameter Parameter, string Name)[] Reported =
    [
        (Parameter.Intake, "air intake"), (Parameter.BurnPot, "burn-pot holes"), (Parameter.Exchanger, "exchanger passages"),
        (Parameter.AshPassages, "ash passages"), (Parameter.Vent, "vent"), (Parameter.Wheel, "combustion blower wheel"),
        (Parameter.RoomAir, "room-air blower"), (Parameter.DoorLeak, "fuel door and glass, leak"), (Parameter.AshDoorLeak, "ash door, leak"),
        (Parameter.LidLeak, "hopper lid, leak"), (Parameter.ExhaustLeak, "exchanger and covers, leak"),
        (Parameter.BlowerGasketLeak, "blower gasket, leak"), (Parameter.VentLeak, "vent joints, leak"),
    ];

    /// <summary>Estimates from weighted draws of the posterior mixture.</summary>
    public static IReadOnlyList<RestrictionEstimate> From(CaseFile file, IReadOnlyList<Draw> draws)
    {
        var weights = draws.Select(d => d.Weight).ToArray();
        var estimates = new List<RestrictionEstimate>();
        foreach (var (parameter, name) in Reported)
        {
            if (PriorTable.PatternSd(parameter, file.Stove) is null) continue;
            Interval In(int epoch) => Quantiles([.. draws.Select(d => Value(d, parameter, epoch))], weights);
            var asFound = In(0);
            estimates.Add(new RestrictionEstimate(parameter, name, asFound, file.Plan.Now == 0 ? asFound : In(file.Plan.Now)));
        }
        return estimates;
    }

    private static double Value(Draw draw, Parameter parameter, int epoch)
    {
        var layout = draw.Layout;
        var fouls = Array.IndexOf(PriorTable.Fouling, parameter) >= 0;
        var sum = 0.0;
        foreach (var share in layout.Shares(parameter, epoch))
            if (!fouls || IsInside(layout.Unknowns[share.Unknown])) sum += share.Factor * draw.Unknowns[share.Unknown];
        return fouls ? 1 - Math.Exp(Math.Min(sum, 0)) : Math.Exp(sum);
    }

    /// <summary>What one finds on looking into the passage: neither the construction's tolerance nor a nest in the cap.</summary>
    private static bool IsInside(Unknown unknown) => unknown.Kind != UnknownKind.Baseline && !(unknown.Kind == UnknownKind.Shift && unknown.Place is not null);

    /// <summary>Weighted quantiles 5, 50 and 95 %.</summary>
    internal static Interval Quantiles(double[] values, double[] weights)
    {
        var order = Enumerable.Range(0, values.Length).OrderBy(k => values[k]).ToArray();
        var total = weights.Sum();
        double At(double share)
        {
            var sum = 0.0;
            foreach (var k in order)
            {
                sum += weights[k];
                if (sum >= share * total) return values[k];
            }
            return order.Length == 0 ? double.NaN : values[order[^1]];
        }
        return new Interval(At(0.05), At(0.5), At(0.95));
    }
}
