using CsCheck;
using Emberwright.Diagnosis.Inference;
using Emberwright.Stove;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Diagnosis.Tests.Inference;

/// <summary>The small mathematics that inference stands on, against tables, closed forms and differences.</summary>
public class NumericsTests
{
    [Theory]
    [InlineData(0, 0.5)]
    [InlineData(1, 0.841344746)]
    [InlineData(-1.96, 0.024997895)]
    [InlineData(3, 0.998650102)]
    public void The_normal_distribution_is_the_tables(double z, double p) => Assert.Equal(p, Normal.Below(z), 9); // Abramowitz & Stegun, table 26.1

    [Fact]
    public void Far_tails_keep_their_accuracy()
    {
        // Φ(−10) = 7.619853024e−24, from memory of the usual tables.
        Assert.Equal(Math.Log(7.619853024e-24), Normal.LnBelow(-10), 8);
        Assert.Equal(Normal.LnBelow(-5.0001), Normal.LnBelow(-4.9999), 2e-3);
        Assert.True(Normal.Mills(-1e6) is > 1e6 and < 1e6 + 1);
    }

    [Fact]
    public void The_quantile_undoes_the_distribution() =>
        Gen.Double[1e-8, 1 - 1e-8].Sample(p => Math.Abs(Normal.Below(Normal.Quantile(p)) - p) < 1e-12 + 1e-9 * p);

    [Fact]
    public void A_factor_solves_and_inverts()
    {
        // By hand: [[4, 2], [2, 5]] has L = [[2, 0], [1, 2]], determinant 16, inverse [[5, −2], [−2, 4]]/16.
        var factor = Cholesky.Factor([4, 2, 2, 5], 2)!;
        Assert.Equal(Math.Log(16), factor.LnDeterminant, 12);
        Assert.Equal([5.0 / 16, -2.0 / 16, -2.0 / 16, 4.0 / 16], factor.Inverse().Select(x => Math.Round(x, 12)));
        Assert.Equal([0.125, 0.75], factor.Solve([2, 4]).Select(x => Math.Round(x, 12)));
        Assert.Equal([2, 3], factor.Spread([1, 1]));
        Assert.Null(Cholesky.Factor([1, 2, 2, 1], 2));
    }

    [Fact]
    public void An_exponential_prior_is_restored_exactly()
    {
        // Against numerical integration: evidence N(m, v) times Exp(τ) over evidence times its stand-in N(τ, τ²).
        foreach (var (tau, m, v) in new[] { (0.22, 0.5, 0.04), (0.22, -0.1, 0.02), (0.07, 0.6, 0.1), (0.4, 1.5, 0.01) })
        {
            var precision = 1 / v + 1 / (tau * tau);
            var skew = Skew.Of((m / v + 1 / tau) / precision, 1 / precision, tau);
            var (exact, beyond, moment) = (0.0, 0.0, 0.0);
            const double dx = 1e-4;
            for (var x = dx / 2; x < 8; x += dx)
            {
                var f = Math.Exp(-x / tau) / tau * Math.Exp(Normal.LnDensity(x, m, v)) * dx;
                exact += f;
                moment += f * x;
                if (x > 0.511) beyond += f;
            }
            Assert.Equal(Math.Log(exact) - Normal.LnDensity(m, tau, v + tau * tau), skew.LnFactor, 4);
            Assert.Equal(beyond / exact, skew.Beyond(0.511), 4);
            Assert.Equal(moment / exact, skew.Beyond(0.511) * skew.Given(0.511, true).Mean + (1 - skew.Beyond(0.511)) * skew.Given(0.511, false).Mean, 3);
        }
    }

    [Fact]
    public void Without_evidence_the_exponential_speaks()
    {
        var skew = Skew.Of(0.22, 0.22 * 0.22, 0.22);
        Assert.Equal(0, skew.LnFactor, 12);
        Assert.Equal(0.098, skew.Beyond(0.511), 3); // exp(−0.511/0.22), by hand
    }

    [Fact]
    public void A_graded_judgement_sums_to_one_and_bends_downwards()
    {
        double[] cuts = [-1.2, -0.51, -0.16];
        var quantity = Quantity.Of(0, Parameter.AshPassages);
        OrderedProbit Outcome(int k) => new(quantity, k == 0 ? double.NegativeInfinity : cuts[k - 1], k == 3 ? double.PositiveInfinity : cuts[k], 0.3);
        Gen.Double[-4, 4].Sample(q =>
        {
            var sum = 0.0;
            for (var k = 0; k < 4; k++)
            {
                var margin = Outcome(k);
                var z = margin.Deviate([q], new double[1]);
                sum += Math.Exp(margin.At(z).LnProbability);
                CheckDerivatives(margin, z, exactCurvature: true);
            }
            Assert.Equal(1, sum, 9);
        });
    }

    [Fact]
    public void One_cut_at_nought_gives_the_worked_value() =>
        Assert.Equal(0.158655, Math.Exp(new OrderedProbit(Quantity.Of(0, Parameter.Feed), double.NegativeInfinity, 0, 1).At(1).LnProbability), 6);

    [Fact]
    public void A_reading_behind_a_switch_mixes_its_two_positions()
    {
        var margin = new ContactMargin(0, [ContactRule.Vacuum("vacuum-switch", Bench.Case with { Card = new StoveCard { Pattern = "damper-insert", SwitchClosesPa = 12.5 } }, Condition.FanOnly)], Math.Log(0.9), Math.Log(0.001));
        Assert.Equal(0.5 * (0.9 + 0.001), Math.Exp(margin.At(0).LnProbability), 12);
        Assert.Equal(0, margin.Deviate([-12.5, 0], new double[2]), 12);
        Gen.Double[-6, 6].Sample(z => CheckDerivatives(margin, z, exactCurvature: false));
        Gen.Select(Gen.Double[-60, 5], Gen.Double[-1, 1]).Sample((pressure, drift) =>
        {
            var slopes = new double[2];
            var z = margin.Deviate([pressure, drift], slopes);
            var h = 1e-6;
            Assert.Equal((margin.Deviate([pressure + h, drift], new double[2]) - z) / h, slopes[0], 1e-4);
            Assert.Equal((margin.Deviate([pressure, drift + h], new double[2]) - z) / h, slopes[1], 1e-3 * (1 + Math.Abs(slopes[1])));
        });
    }

    [Fact]
    public void Two_contacts_are_both_closed_as_often_as_probability_says()
    {
        Assert.Equal(0.25, Normal.Below(ContactMargin.Both(0, 0)), 12);
        Gen.Select(Gen.Double[-30, 9], Gen.Double[-30, 9]).Sample((a, b) =>
            Assert.Equal(Normal.LnBelow(a) + Normal.LnBelow(b), Normal.LnBelow(ContactMargin.Both(a, b)), 1e-9 * (1 + a * a + b * b)));
        // One far past closing leaves the other to decide.
        Assert.Equal(-1, ContactMargin.Both(-1, 12), 9);
    }

    [Fact]
    public void Slopes_of_two_contacts_are_the_derivatives()
    {
        var wiring = DamperInsert.Pattern.Wiring;
        var rules = ContactRule.Of(wiring, Bench.Case, Condition.HighBurn);
        var margin = new ContactMargin(0, [rules.Single(r => r.Contact == "vacuum-switch"), rules.Single(r => r.Contact == "proof-disc")], 0, -3);
        Assert.Equal(4, margin.Quantities.Count);
        Gen.Select(Gen.Double[-40, 0], Gen.Double[-0.5, 0.5], Gen.Double[25, 90], Gen.Double[-40, 10]).Sample((p, d, t, k) =>
        {
            double[] at = [p, d, t, k];
            var slopes = new double[4];
            var z = margin.Deviate(at, slopes);
            for (var q = 0; q < 4; q++)
            {
                var h = 1e-5;
                double[] up = [.. at], down = [.. at];
                up[q] += h;
                down[q] -= h;
                var numeric = (margin.Deviate(up, new double[4]) - margin.Deviate(down, new double[4])) / (2 * h);
                Assert.Equal(numeric, slopes[q], 1e-4 * (1 + Math.Abs(numeric)));
            }
        });
    }

    private static void CheckDerivatives(IMargin margin, double z, bool exactCurvature)
    {
        const double h = 1e-4;
        var (low, at, high) = (margin.At(z - h), margin.At(z), margin.At(z + h));
        if (at.LnProbability < -600) return;
        Assert.True(Math.Abs((high.LnProbability - low.LnProbability) / (2 * h) - at.Slope) < 1e-4 * (1 + Math.Abs(at.Slope)), $"slope at {z}");
        Assert.True(at.Curvature >= 0);
        var bend = -(high.Slope - low.Slope) / (2 * h);
        if (exactCurvature || bend > 0) Assert.True(Math.Abs(bend - at.Curvature) < 1e-3 * (1 + Math.Abs(bend)), $"curvature at {z}: {bend} {at.Curvature}");
    }
}
