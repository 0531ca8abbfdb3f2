using Emberwright.Stove.Controls.Sequence;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Stove.Tests.Controls;

/// <summary>The kept odds are what the simulation still says, and they cover what it reaches.</summary>
public class BurnOddsTableTests
{
    private const int Draws = 24;

    public static TheoryData<string> Patterns => [.. PatternIds.All];

    [Theory, MemberData(nameof(Patterns))]
    public void Every_fault_that_the_sequence_reaches_has_a_row_and_no_other(string pattern) => Assert.Equal(
        FaultList.On(pattern).Where(BurnOdds.Reaches).Select(f => f.Id).Order(StringComparer.Ordinal),
        BurnOddsTable.Keys.Where(k => k.Pattern == pattern).Select(k => k.Fault).Order(StringComparer.Ordinal));

    [Fact]
    public void Shares_of_every_row_sum_to_one() =>
        Assert.All(BurnOddsTable.Keys, k => Assert.Equal(1, BurnOddsTable.Of(k.Pattern, k.Fault)!.Frequency.Values.Sum(), 1e-9));

    [Theory, MemberData(nameof(Patterns))]
    public void A_sample_simulated_again_with_other_draws_agrees_within_its_error(string pattern)
    {
        var stove = new VirtualStove(PatternLibrary.All.Single(p => p.Id == pattern), null, new Site());
        var random = new Random(pattern.Length);
        var sound = Enumerable.Range(0, Draws).Select(_ => BurnOdds.SoundStove(stove, random)).ToArray();
        foreach (var fault in FaultList.On(pattern).Where(BurnOdds.Reaches).Where((_, i) => i % 7 == 3))
        {
            var next = 0;
            var kept = BurnOddsTable.Of(pattern, fault.Id)!;
            var again = BurnOdds.Of(stove, fault, Draws, random, _ => [.. sound[next++]]);
            foreach (var outcome in Enum.GetValues<BurnOutcome>())
            {
                var (p, q) = (kept.Frequency.GetValueOrDefault(outcome), again.Frequency.GetValueOrDefault(outcome));
                // Four standard errors of the difference, pooled with half a start so that 0 and 1 keep a width.
                var pooled = (p * kept.Draws + q * Draws + 0.5) / (kept.Draws + Draws + 1);
                var error = Math.Sqrt(pooled * (1 - pooled) * (1.0 / kept.Draws + 1.0 / Draws));
                Assert.True(Math.Abs(p - q) < 4 * error + 1e-9, $"{pattern}, {fault.Id}: kept {p:0.00} of {outcome}, again {q:0.00} ± {error:0.00}; write the rows anew with burn-odds");
            }
        }
    }
}
