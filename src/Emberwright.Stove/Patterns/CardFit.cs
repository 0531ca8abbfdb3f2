// Which nominal stove reads what the card says a healthy one reads?
//   minimise Σ((y − f(b))/σ_y)² + Σ(b/σ_b)²   over the parameters' zeros b, by Gauss–Newton
// y healthy values of the card, f the virtual stove at the card's own site, σ_y how exactly a card is to be met
// (0.2 Pa, 0.05 % O2, 1 K), σ_b the pattern's baseline uncertainty. With fewer values than parameters the answer is the
// smallest change that meets the card. Assumes that the card's values come from one healthy stove.
// Source: regularised least squares (maximum a posteriori estimate of a linear-Gaussian model).
using Emberwright.Stove.Air;

namespace Emberwright.Stove.Patterns;

/// <summary>What a card's healthy values make of the pattern's nominal stove.</summary>
/// <param name="Offsets">Amount added to each parameter's zero, indexed by <see cref="Parameter"/>.</param>
/// <param name="Misses">What the fitted stove still reads differently, value by value, in each measure's unit (stove − card).</param>
public sealed record CardFit(IReadOnlyList<double> Offsets, IReadOnlyList<double> Misses)
{
    private const int MostSteps = 15;

    /// <summary>Fits the card.</summary>
    /// <exception cref="InputException">The card is of another pattern or states a value this pattern cannot predict.</exception>
    public static CardFit Of(Pattern pattern, StoveCard card)
    {
        if (card.Pattern != pattern.Id)
        {
            throw new InputException("card", $"it refines pattern \"{card.Pattern}\", not \"{pattern.Id}\"", "Choose the card's own pattern.");
        }

        var count = ParameterSlopes.Parameters;
        var b = new double[count];
        var values = card.Healthy;
        if (values.Count == 0)
        {
            return new CardFit(b, []);
        }

        foreach (var value in values)
        {
            InputException.Require(value.Value, -1e6, 1e6, $"healthy {value.Observable.Measure} at {value.Observable.Place}", "", "Give a number in the measure's unit.");
        }

        var variance = new double[count];
        foreach (var baseline in pattern.Parameters.Where(p => p.Parameter is not (Parameter.Wind or Parameter.House or Parameter.Supply or Parameter.Moisture)))
        {
            variance[(int)baseline.Parameter] = baseline.PatternSd * baseline.PatternSd;
        }

        var site = card.HealthySite ?? new Site();
        var m = values.Count;
        var misses = new double[m];
        for (var step = 0; step < MostSteps; step++)
        {
            var slopes = new double[m * count];
            Predict(new VirtualStove(pattern, card, site, b), values, misses, slopes);
            var next = Update(b, misses, slopes, variance, values);
            double change = 0;
            for (var k = 0; k < count; k++)
            {
                var limited = Math.Clamp(next[k] - b[k], -0.4, 0.4);
                change = Math.Max(change, Math.Abs(limited));
                b[k] += limited;
            }

            if (change < 1e-7)
            {
                break;
            }
        }

        Predict(new VirtualStove(pattern, card, site, b), values, misses, null);
        return new CardFit(b, misses);
    }

    private static void Predict(VirtualStove stove, IReadOnlyList<HealthyValue> values, double[] misses, double[]? slopes)
    {
        Span<double> zero = stackalloc double[ParameterSlopes.Parameters];
        zero.Clear();
        var states = new Dictionary<Condition, StoveSolution>();
        for (var i = 0; i < values.Count; i++)
        {
            var (measure, place, condition) = values[i].Observable;
            if (!states.TryGetValue(condition, out var state))
            {
                states[condition] = state = stove.Solve(zero, condition);
            }

            if (!state.Knows(measure, place))
            {
                throw new InputException("healthy value", $"{measure} at \"{place}\" cannot be predicted for pattern {stove.Pattern.Id}", "Use a port of the pattern.");
            }

            misses[i] = state.Value(measure, place) - values[i].Value;
            if (slopes is not null)
            {
                state.Sensitivity(measure, place, slopes.AsSpan(i * zero.Length, zero.Length));
            }
        }
    }

    /// <summary>b = V·Jᵀ·(J·V·Jᵀ + R)⁻¹·(J·b − misses).</summary>
    private static double[] Update(double[] b, double[] misses, double[] slopes, double[] variance, IReadOnlyList<HealthyValue> values)
    {
        var m = misses.Length;
        var count = b.Length;
        var matrix = new double[m * m];
        var right = new double[m];
        for (var i = 0; i < m; i++)
        {
            right[i] = -misses[i];
            for (var k = 0; k < count; k++)
            {
                right[i] += slopes[(i * count) + k] * b[k];
            }

            for (var j = 0; j < m; j++)
            {
                double sum = 0;
                for (var k = 0; k < count; k++)
                {
                    sum += slopes[(i * count) + k] * variance[k] * slopes[(j * count) + k];
                }

                matrix[(i * m) + j] = sum;
            }

            var exact = Exactness(values[i].Observable.Measure);
            matrix[(i * m) + i] += exact * exact;
        }

        var pivots = new int[m];
        var next = new double[count];
        if (!DenseLu.Factor(matrix, pivots, m))
        {
            return b;
        }

        DenseLu.Solve(matrix, pivots, m, right);
        for (var k = 0; k < count; k++)
        {
            for (var i = 0; i < m; i++)
            {
                next[k] += variance[k] * slopes[(i * count) + k] * right[i];
            }
        }

        return next;
    }

    private static double Exactness(Measure measure) => measure switch
    {
        Measure.Pressure => 0.2,
        Measure.Temperature => 1,
        Measure.Oxygen or Measure.CarbonDioxide => 0.05,
        Measure.CarbonMonoxide => 50,
        Measure.Feed => 0.02,
        Measure.Flow => 0.002,
        Measure.Voltage or Measure.Resistance or Measure.Current or Measure.Speed or Measure.Duration or Measure.Capacitance => 1,
    };
}
