using Emberwright.Diagnosis.Inference;
using Emberwright.Stove;
using MathNet.Numerics.Random;
using Xunit;

namespace Emberwright.Diagnosis.Tests.Inference;

/// <summary>A slip of the pen among the readings of the cold three-state test, on stoves drawn from the prior.</summary>
public class DoubtTests
{
    private const int Stoves = 40;
    private const double Named = 0.9;

    [Fact]
    public void With_the_three_state_test_one_gross_wrong_reading_is_named_in_nine_cases_of_ten()
    {
        var random = new Xoshiro256StarStar(4_711);
        var model = new SeriesStove();
        var named = 0;
        for (var k = 0; k < Stoves; k++)
        {
            var layout = Layout.Of(Bench.Case, [new HashSet<Parameter>()], Bench.ColdTest.Select(o => (o.Measure, o.Place)), false);
            var readings = Bench.Read(model, layout, Bench.Draw(layout, random), Bench.ColdTest, random);
            var wrong = random.Next(readings.Length);
            // A digit too many, or a sign: off by 40 to 90 Pa either way.
            readings[wrong] = readings[wrong] with { Value = readings[wrong].Value + (random.NextDouble() < 0.5 ? -1 : 1) * (40 + 50 * random.NextDouble()) };
            var beliefs = new Run(Bench.Case, model, readings, Bench.Catalogue).Whole().Beliefs!;
            if (beliefs.Doubtful?.Evidence == readings[wrong].Id) named++;
        }
        Assert.True(named >= Named * Stoves, $"{named} of {Stoves} named");
    }
}
