using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Inference;
using Emberwright.Stove;
using Emberwright.Trials.Generator;
using Emberwright.Trials.Sampling;
using Xunit;

namespace Emberwright.Trials.Tests.Sampling;

/// <summary>The sampler against evidence that has a closed form.</summary>
public class ImportanceSamplerTests
{
    private static readonly Observable Flue = new(Measure.Temperature, Places.Flue, Condition.HighBurn);
    private static readonly double Scatter = Math.Pow(Noise.Own(Flue, 0), 2) + Math.Pow(Noise.Model(Flue, 0), 2);

    [Theory]
    [InlineData(0)]
    [InlineData(35)]
    public void One_linear_reading_has_its_normal_density(double reading)
    {
        var layout = new Layout([new Unknown(UnknownKind.Free, Parameter.AshPassages, 0, 0.1, 0.3)], [[new((int)Parameter.AshPassages, 0, 1)]]);
        var (ln, effective) = Sampled(layout, reading);
        Assert.Equal(Normal.LnDensity(reading, 10, 30 * 30 + Scatter), ln, 0.01);
        Assert.InRange(effective, 15_000, 20_000);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(-10)]
    [InlineData(-60)]
    public void A_fouled_passage_has_the_density_of_a_normal_less_an_exponential(double reading)
    {
        const double tau = 0.22;
        var layout = new Layout(
            [new Unknown(UnknownKind.Baseline, Parameter.AshPassages, 0, 0, 0.15), new Unknown(UnknownKind.Restriction, Parameter.AshPassages, 0, tau, tau)],
            [[new((int)Parameter.AshPassages, 0, 1), new((int)Parameter.AshPassages, 1, -1)]]);
        var variance = 15 * 15 + Scatter;
        // Exponentially modified Gaussian (Grushka, Anal. Chem. 44 (1972) 1733): mean 100·τ of the exponential part, read downwards.
        var rate = 1 / (100 * tau);
        var exact = Math.Log(rate) + rate * (reading + rate * variance / 2) + Normal.LnBelow((-reading - rate * variance) / Math.Sqrt(variance));
        Assert.Equal(exact, Sampled(layout, reading).Ln, 0.02);
    }

    private static (double Ln, double Effective) Sampled(Layout layout, double reading)
    {
        var model = new LinearStove();
        var problem = new Problem(new SolveCache(model), layout, Prior.Of(layout), ReadingSet.Of([new ReadingEvidence("r", 0, Flue, reading)]), []);
        return new ImportanceSampler(Mode.From(problem, new double[layout.Count])!, model).Evidence(20_000, Chance.Of("linear", reading));
    }

    /// <summary>Its flue gas is 100 K warmer for each unit of the ash passages' parameter.</summary>
    private sealed class LinearStove : IStoveModel
    {
        public StoveState Solve(ReadOnlySpan<double> parameters, Condition condition, StoveState? warmStart) =>
            new State(100 * parameters[(int)Parameter.AshPassages], condition);

        private sealed class State(double value, Condition condition) : StoveState
        {
            public override Condition Condition => condition;

            public override SolveStatus Status => SolveStatus.Converged;

            public override bool Knows(Measure measure, string place) => true;

            public override double Value(Measure measure, string place) => value;

            public override void Sensitivity(Measure measure, string place, Span<double> gradient) => gradient[(int)Parameter.AshPassages] = 100;
        }
    }
}
