using Emberwright.Diagnosis.Inference;
using Emberwright.Diagnosis.Signs;
using Emberwright.Diagnosis.Tests.Inference;
using Emberwright.Stove;
using Emberwright.Stove.Faults;
using Xunit;

namespace Emberwright.Diagnosis.Tests.Published;

/// <summary>Worked Bayesian examples of the literature, through the parts that compute them here.</summary>
public class BayesianExamplesTests
{
    /// <summary>
    /// Box and Tiao, Bayesian Inference in Statistical Analysis (1973), 1.2.3, from memory: physicist A believes 900 ± 20,
    /// B believes 800 ± 80; a measurement of 850 ± 40 leaves A at 890 ± 17.9 and B at 840 ± 35.8.
    /// </summary>
    [Theory]
    [InlineData(900, 20, 890, 17.9)]
    [InlineData(800, 80, 840, 35.8)]
    public void Two_physicists_and_one_measurement(double mean, double sd, double posterior, double posteriorSd)
    {
        var observable = new Observable(Measure.Flow, "x", Condition.FanOnly);
        var layout = new Layout([new Unknown(UnknownKind.Free, Parameter.Feed, 0, mean, sd)], [[new Layout.Contribution((int)Parameter.Feed, 0, 1)]]);
        var readings = new ReadingSet([new ReadingEvidence("r", 0, observable, 850)], [40 * 40]);
        var mode = Mode.From(new Problem(new SolveCache(new Itself()), layout, Prior.Of(layout), readings, []), [mean])!;
        Assert.Equal(posterior, mode.Mean[0], 6);
        Assert.Equal(posteriorSd, Math.Sqrt(mode.Covariance[0]), 0.05);
        // The evidence of a linear normal model is the normal density of the reading about its prior prediction.
        Assert.Equal(Normal.LnDensity(850, mean, sd * sd + 40 * 40), mode.LnEvidence, 9);
    }

    /// <summary>
    /// The cab problem, Tversky and Kahneman (1982), from memory: 15 % of cabs are blue, a witness who is right 80 times in 100
    /// says blue; it was blue with probability 0.41. Our signs add a lapse of 2 % evenly over the outcomes, which moves it to
    /// 0.15·0.794/(0.15·0.794 + 0.85·0.206) = 0.405.
    /// </summary>
    [Fact]
    public void The_witness_and_the_cab()
    {
        var sign = new Sign("colour", "Colour?", [new Outcome("blue", "", 0.2, []), new Outcome("green", "", 0.8, [])], null, "");
        var blue = new Fault
        {
            Id = "blue",
            Name = "",
            Area = Area.Site,
            BaseRatePercent = 15,
            Origin = "",
            Symptoms = [new Symptom("colour", "blue", 0.8)],
            Remedy = new Remedy(RemedyKind.Advise, "", 0, 0, []),
        };
        var table = new SignTable(sign, [blue]);
        var (yes, no) = (table.Probability(0, [0]), table.Probability(0, []));
        Assert.Equal(0.41, 0.15 * yes / (0.15 * yes + 0.85 * no), 0.01);
        Assert.Equal(0.405, 0.15 * yes / (0.15 * yes + 0.85 * no), 3);
    }

    /// <summary>A state that shows the parameter itself.</summary>
    private sealed class Itself : IStoveModel
    {
        public StoveState Solve(ReadOnlySpan<double> parameters, Condition condition, StoveState? warmStart) => new Plain(parameters[(int)Parameter.Feed], condition);

        private sealed class Plain(double value, Condition condition) : StoveState
        {
            public override Condition Condition => condition;

            public override SolveStatus Status => SolveStatus.Converged;

            public override bool Knows(Measure measure, string place) => true;

            public override double Value(Measure measure, string place) => value;

            public override void Sensitivity(Measure measure, string place, Span<double> gradient)
            {
                gradient.Clear();
                gradient[(int)Parameter.Feed] = 1;
            }
        }
    }
}
