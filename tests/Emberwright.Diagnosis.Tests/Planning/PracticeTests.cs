using Emberwright.Diagnosis.Planning;
using Emberwright.Diagnosis.Practice;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;
using Xunit;

namespace Emberwright.Diagnosis.Tests.Planning;

public class PracticeTests
{
    private static PracticeVisit Begin(int seed, PracticeLevel level = PracticeLevel.Plain, string pattern = "damper-insert") =>
        PracticeVisit.Begin(PatternLibrary.Find(pattern)!, seed, level);

    [Fact] // The FNV-1a hash of "a", from its authors' test vectors (from memory).
    public void The_key_s_hash_is_fnv_1a() => Assert.Equal(0xE40C292Cu, Chance.Hash("a"));

    [Theory]
    [InlineData(PracticeLevel.Plain, 1)]
    [InlineData(PracticeLevel.Ordinary, 1)]
    [InlineData(PracticeLevel.Tangled, 2)]
    public void As_many_faults_are_hidden_as_the_level_says(PracticeLevel level, int faults)
    {
        for (var seed = 0; seed < 12; seed++) Assert.Equal(faults, Begin(seed, level).Hidden.Count);
    }

    public static TheoryData<string> Patterns => [.. PatternIds.All];

    [Theory, MemberData(nameof(Patterns))]
    public void On_every_pattern_the_right_repairs_make_it_run(string pattern)
    {
        var visit = Begin(5, PracticeLevel.Ordinary, pattern);
        visit.Do(Planner.MakeSafe);
        foreach (var fault in visit.Hidden) visit.Do(Checks.ActionList.CureOf(fault.Id));
        Assert.True(visit.Solved, string.Join(", ", visit.Left.Select(f => f.Id)));
        Assert.DoesNotContain(visit.Steps, s => s.GoodPart);
    }

    [Fact]
    public void The_same_seed_hides_the_same_stove_and_the_same_look_shows_the_same()
    {
        var (a, b) = (Begin(3), Begin(3));
        Assert.Equal(a.Hidden, b.Hidden);
        Assert.Equal(a.Complaint, b.Complaint);
        Assert.Equal(a.Do("firebox-pressure").Shown, b.Do("firebox-pressure").Shown);
        Assert.True(Enumerable.Range(0, 12).Select(s => Begin(s).Hidden[0].Id).Distinct().Count() > 3);
    }

    [Fact]
    public void Opened_work_is_refused_until_the_stove_is_made_safe()
    {
        var visit = Begin(3);
        Assert.Contains("safe first", visit.Refusal("clean-ash-passages"), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => visit.Do("clean-ash-passages"));
        visit.Do(Planner.MakeSafe);
        Assert.Null(visit.Refusal("clean-ash-passages"));
        Assert.NotNull(visit.Refusal("no-such-thing"));
    }

    [Fact]
    public void A_good_part_replaced_is_paid_for_and_said()
    {
        var visit = Enumerable.Range(0, 40).Select(s => Begin(s)).First(v => v.Hidden.All(f => !f.Id.StartsWith("feed", StringComparison.Ordinal)));
        visit.Do(Planner.MakeSafe);
        var step = visit.Do("replace-feed-motor");
        Assert.True(step.GoodPart);
        Assert.True(step.Parts >= visit.Catalogue.Action("replace-feed-motor")!.PartCost);
        Assert.False(visit.Solved);
        var review = PracticeReview.Of(visit, visit);
        Assert.Equal(step.Parts, review.Rows.Single(r => r.Name == "Good parts replaced").Yours, 9);
        Assert.Contains(review.Remarks, r => r.Contains("Measure it", StringComparison.Ordinal));
    }

    [Fact]
    public void The_rows_of_the_review_are_the_whole_bill()
    {
        var visit = Begin(4, PracticeLevel.Ordinary);
        foreach (var id in new[] { "ask-onset", "firebox-pressure", Planner.MakeSafe, "clean-ash-passages", "replace-igniter" }) visit.Do(id);
        var review = PracticeReview.Of(visit, visit);
        Assert.Equal(review.Yours, review.Rows.Sum(r => r.Yours), 9);
        Assert.Equal(visit.Cost, review.Yours, 9);
    }

    [Fact]
    public void The_planner_finds_plain_faults_without_replacing_a_good_part()
    {
        foreach (var seed in new[] { 1, 2, 6 })
        {
            var way = Begin(seed).PlannersWay().Last();
            Assert.True(way.Solved, $"seed {seed}: {string.Join(", ", way.Left.Select(f => f.Id))} after {way.Steps.Count} steps");
            Assert.DoesNotContain(way.Steps, s => s.GoodPart);
        }
    }

    [Fact]
    public void What_stands_still_stands_still_in_the_circuit_too()
    {
        for (var seed = 0; seed < 20; seed++)
        {
            var visit = Begin(seed);
            if (visit.Hidden.Any(f => f.Symptoms.Any(s => s.Sign == "feed-pulse"))) continue;
            visit.Do(Planner.MakeSafe);
            var still = visit.Do("watch-start").Shown.OfType<SignEvidence>().Single(s => s.Sign == "feed-pulse").Outcome == "still";
            var amps = visit.Do("feed-motor-current").Shown.OfType<ReadingEvidence>().Single().Value;
            Assert.Equal(still, amps < 0.1);
        }
    }
}
