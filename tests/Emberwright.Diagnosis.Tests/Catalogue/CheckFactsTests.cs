using Emberwright.Diagnosis.Checks;
using Emberwright.Diagnosis.Inference;
using Emberwright.Diagnosis.Planning;
using Emberwright.Diagnosis.Tests.Planning;
using Emberwright.Stove;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Diagnosis.Tests.CatalogueTests;

public class CheckFactsTests
{
    private const double Moves = 0.05;

    public static TheoryData<string> Patterns => [.. PatternIds.All];

    [Theory, MemberData(nameof(Patterns))]
    public void Every_check_has_what_it_takes_and_what_can_hurt(string pattern)
    {
        foreach (var check in Catalogue.For(pattern).Checks)
        {
            Assert.InRange(check.Minutes, 0.5, 120);
            Assert.True(check.Cost >= 0);
            if (check.Reads.Count > 0) Assert.NotEmpty(check.Tools);
            Assert.Equal(check.Needs == CheckNeeds.None, check.Skill == Skill.Customer);
            if (check.Cautions.Contains(Cautions.Live)) Assert.True(check.Skill == Skill.LiveWork && check.Risk.HasFlag(Risk.Mains), check.Id);
            if (check.Needs.HasFlag(CheckNeeds.Burning)) Assert.True(check.Risk.HasFlag(Risk.Heat), check.Id);
            if (check.Cautions.Contains(Cautions.Ladder)) Assert.True(check.Risk.HasFlag(Risk.Height) && check.Tools.Contains(Tool.Ladder), check.Id);
            Assert.All(check.Tools, t => Assert.NotEmpty(ToolWords.Of(t)));
        }
    }

    // The list is the trade's (common practice, no source); each stands for one way of learning something.
    [Theory]
    [InlineData("vacuum-switch-pump")]
    [InlineData("disc-hot-plate")]
    [InlineData("pressure-sensor-zero")]
    [InlineData("igniter-earth-ohms")]
    [InlineData("paper-strip-door")]
    [InlineData("smoke-pencil-door")]
    [InlineData("smoke-pencil-flange")]
    [InlineData("smoke-pencil-joints")]
    [InlineData("combustion-blower-speed")]
    [InlineData("oxygen-fan-test")]
    [InlineData("hood-on-test")]
    [InlineData("firebox-blower-off")]
    [InlineData("hot-run-to-failure")]
    [InlineData("dry-bag-test")]
    [InlineData("tape-hopper-seam")]
    [InlineData("hold-pressure")]
    [InlineData("firebox-intake-stopped")]
    [InlineData("run-capacitor-capacitance")]
    [InlineData("feed-motor-alone")]
    [InlineData("igniter-alone")]
    public void The_trade_s_checks_are_there(string id) => Assert.Contains(CheckList.All, c => c.Id == id);

    /// <summary>
    /// Stoves with complaints but nothing read, and stoves with one fault as likely as not: on some of them every check shifts
    /// some belief.
    /// </summary>
    [Theory, MemberData(nameof(Patterns))]
    public void Each_check_moves_some_belief_on_some_stove(string pattern)
    {
        var catalogue = Catalogue.For(pattern);
        var still = catalogue.Checks.Select(c => c.Id).ToHashSet();
        foreach (var predictive in Generated(pattern, catalogue))
        {
            still.RemoveWhere(id => Shift(catalogue.Check(id)!, catalogue, predictive) > Moves);
            if (still.Count == 0) break;
        }

        Assert.Empty(still);
    }

    private static IEnumerable<IPredictive> Generated(string pattern, Catalogue catalogue)
    {
        foreach (var fault in catalogue.Faults) yield return new PlainPredictive(catalogue, (fault.Id, 0.5), ("", 0.5));
        var stove = new StoveCase(PatternLibrary.Find(pattern)!, null, new Site(), new History(TonnesSinceCleaning: 1.5));
        foreach (var complaint in new[] { Complaints.LazyFlame, Complaints.NoFeed, Complaints.StopsLater, Complaints.LittleHeat, Complaints.FierceFlame, Complaints.EatsFuel, Complaints.TripsLimit, Complaints.SmokeOrSmell, Complaints.PowerCutSmoke })
            yield return Diagnose.Infer(stove, [new SignEvidence("c", 0, Complaints.Sign, complaint)], catalogue).Posterior!;
    }

    private static double Shift(Check check, Catalogue catalogue, IPredictive predictive)
    {
        if (OutcomeTable.Of(check, catalogue, predictive) is not { } table) return 0;
        var explanations = predictive.Explanations;
        var most = 0.0;
        foreach (var fault in explanations.SelectMany(e => e.Faults).Distinct())
        {
            var before = explanations.Where(e => e.Faults.Contains(fault)).Sum(e => e.Weight);
            foreach (var likelihood in table.Likelihood)
            {
                var p = explanations.Select((e, k) => e.Weight * likelihood[k]).Sum();
                if (p < 0.005) continue;
                var after = explanations.Select((e, k) => e.Faults.Contains(fault) ? e.Weight * likelihood[k] / p : 0).Sum();
                most = Math.Max(most, Math.Abs(after - before));
            }
        }

        return most;
    }
}
