using Emberwright.Diagnosis.Signs;
using Emberwright.Stove;
using Emberwright.Stove.Faults;
using Emberwright.Trials.Calibration;
using Emberwright.Trials.Generator;
using Xunit;

namespace Emberwright.Trials.Tests;

/// <summary>Odds, random numbers and scores against values worked by hand or published.</summary>
public class SignOddsTests
{
    [Fact]
    public void One_fault_that_states_an_outcome()
    {
        var sign = new Sign("s", "?", [new Outcome("a", "a", .5, []), new Outcome("b", "b", .5, [])], null, "test");
        var fault = FaultList.All[0] with { Symptoms = [new Symptom("s", "a", .9)] };
        var p = SignOdds.Stated(sign, [fault], somethingWrong: true, own: null, mismatch: 0);
        Assert.Equal(0.98 * 0.9 + 0.01, p[0], 1e-12);
        Assert.Equal(1, p.Sum(), 1e-12);
    }

    [Fact]
    public void A_graded_look_at_its_cut_is_even_beside_the_lapse()
    {
        var p = SignOdds.Graded(new PhysicalMargin(null, Parameter.Vent, [-0.5], 0.2, 0.04), -0.5);
        Assert.Equal(0.5, p[0], 1e-9);
        // One standard deviation below the cut: Φ(1) = 0.841345 (tables).
        Assert.Equal(0.96 * 0.841345 + 0.02, SignOdds.Graded(new PhysicalMargin(null, Parameter.Vent, [-0.5], 0.2, 0.04), -0.7)[0], 1e-5);
    }

    [Theory]
    [InlineData("", 0x811C9DC5u)]
    [InlineData("a", 0xE40C292Cu)]
    [InlineData("foobar", 0xBF9CF968u)]
    public void Hashes_of_the_published_vectors(string text, uint hash) => Assert.Equal(hash, Chance.Hash(text));

    [Fact]
    public void The_interval_of_a_share_is_Wilsons() =>
        // Newcombe, Stat. Med. 17 (1998) 857, table I: 81 of 263 gives 0.2553 to 0.3662 without continuity correction (from memory).
        Assert.Equal("25.5–36.6 %", Header.Within(81, 263));

    [Fact]
    public void Scores_by_hand()
    {
        Assert.Equal(0.25, Reliability.Error([new(0.75, true), new(0.75, false)]), 1e-12);
        Assert.Equal(0, Reliability.Error([new(0.5, true), new(0.5, false)]), 1e-12);
        Assert.Equal((1, 2), Reliability.NearlySureOnes([new(0.96, true), new(0.99, false), new(0.9, false)]));
        var row = new CalibrationRow("p", 1, 0, 1, ["x"], [new Statement(Rung.Complaint, new Dictionary<string, double> { ["y"] = 0.6 }, false, false, [], 0)]);
        // x was there and unnamed: 1; y was not there at 0.6: 0.36.
        Assert.Equal(1.36, Reliability.Brier(row, row.Says[0]), 1e-12);
    }
}
