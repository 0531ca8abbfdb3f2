using Emberwright.Diagnosis;
using Emberwright.Stove;
using Emberwright.Stove.Patterns;
using Emberwright.Trials.Generator;
using Emberwright.Trials.Sampling;
using Xunit;

namespace Emberwright.Trials.Tests.Sampling;

/// <summary>A slip of the pen among the readings of the cold three-state test, on virtual stoves of every pattern drawn from the prior.</summary>
public class WrongReadingTests
{
    private const int StovesEach = 10;
    private const double Named = 0.9;

    [Fact]
    public void One_gross_wrong_reading_is_named_in_nine_cases_of_ten()
    {
        var (named, all) = (0, 0);
        foreach (var pattern in PatternLibrary.All)
        {
            var stove = FixedCases.Stove(pattern.Id, 0);
            for (var k = 0; k < StovesEach; k++)
            {
                var chance = Chance.Of("wrong-reading", pattern.Id, k);
                var readings = FixedCases.Sound(stove, FixedCases.ThreeStates(stove), chance).Open.File.Readings.Items.ToArray();
                var wrong = chance.Pick([.. readings.Select(_ => 1.0)]);
                // A digit too many, or a sign: off by 40 to 90 Pa either way.
                readings[wrong] = readings[wrong] with { Value = readings[wrong].Value + (chance.Happens(0.5) ? -1 : 1) * chance.Between(40, 90) };
                var beliefs = Diagnose.Infer(stove, readings, Catalogue.For(pattern.Id)).Beliefs!;
                all++;
                if (beliefs.Doubtful?.Evidence == readings[wrong].Id) named++;
                else TestContext.Current.TestOutputHelper?.WriteLine($"{pattern.Id} {k}: {readings[wrong].Observable} was wrong, {beliefs.Doubtful?.Evidence ?? "none"} named");
            }
        }

        Assert.True(named >= Named * all, $"{named} of {all} named");
    }
}
