using Emberwright.Diagnosis;
using Emberwright.Diagnosis.Planning;
using Emberwright.Stove.Faults;
using Emberwright.Stove.Patterns;
using Emberwright.Trials.Generator;
using Emberwright.Trials.Visits;
using Xunit;

namespace Emberwright.Trials.Tests;

/// <summary>The chart says what it may say, visits cost what they must, and every policy meets the same stove.</summary>
public class VisitTests
{
    private static readonly Catalogue[] Catalogues = [.. PatternLibrary.All.Select(p => Catalogue.For(p.Id))];

    [Fact]
    public void Every_step_of_the_chart_can_be_done_on_some_pattern_and_finds_faults_that_there_are()
    {
        foreach (var step in FaultChart.Complaints.SelectMany(FaultChart.For))
        {
            Assert.NotEmpty(step.Does);
            Assert.All(step.Does, id => Assert.True(Catalogues.Any(c => c.Check(id) is not null || c.Action(id) is not null), id));
            Assert.All(step.Finds, id => Assert.True(FaultList.All.Any(f => f.Id == id), id));
        }
    }

    [Fact]
    public void Every_complaint_but_a_service_has_its_steps()
    {
        var complaints = Catalogues[0].Sign(Complaints.Sign)!.Outcomes.Select(o => o.Id).Where(o => o != Complaints.Due).ToArray();
        Assert.Empty(complaints.Except(FaultChart.Complaints));
        Assert.All(complaints, c => Assert.True(FaultChart.For(c).Count >= 6, c));
    }

    [Fact]
    public void A_line_that_is_no_step_is_refused() => Assert.Throws<FormatException>(() => FaultChart.Parse("* dead\nlook at it"));

    [Fact]
    public void A_look_at_the_pot_costs_three_minutes_and_panels_are_opened_and_made_safe_once()
    {
        var visit = new Attendance(HiddenStove.Draw(DamperInsert.Pattern, 1, 0, 1), new Tariff(PerMinute: 1));
        Assert.Equal(0, visit.Cost);
        visit.Do(visit.Stove.Catalogue.Check("look-pot")!);
        Assert.Equal(3, visit.Cost, 1e-9); // 2 minutes and one for turning to it
        visit.Do(visit.Stove.Catalogue.Check("look-fuse")!);
        Assert.Equal(3 + 10 + 4 + 3 + 1 + 1, visit.Cost, 1e-9); // making safe, panels, 3 minutes, turning to it, unplugging
        visit.Do(visit.Stove.Catalogue.Check("look-fuse")!);
        Assert.Equal(22 + 5, visit.Cost, 1e-9);
    }

    [Fact]
    public void A_sound_part_replaced_counts_and_a_bad_one_does_not()
    {
        var stove = Enumerable.Range(0, 3000).Select(i => HiddenStove.Draw(DamperInsert.Pattern, 4, i, 1)).First(h => h.Discrete.Count == 1 && h.Discrete[0].Id == "igniter-dead");
        var visit = new Attendance(stove.Copy(), Tariff.Default);
        visit.Do(stove.Catalogue.Action("replace-igniter")!);
        Assert.Equal(0, visit.GoodPartsReplaced);
        Assert.Empty(visit.Stove.Discrete);
        visit.Do(stove.Catalogue.Action("replace-feed-motor")!);
        Assert.Equal(1, visit.GoodPartsReplaced);
        Assert.Single(stove.Discrete); // the copy was treated, not the stove
    }

    [Fact]
    public void Policies_meet_the_same_stove_and_the_same_row_comes_again()
    {
        var (a, b) = (VisitTrial.Run(Underfed.Pattern, 2, 3), VisitTrial.Run(Underfed.Pattern, 2, 3));
        Assert.Equal(4, a.Outcomes.Count);
        Assert.Equal(a.Truth, b.Truth);
        Assert.InRange(a.Truth.Count, 1, 3);
        Assert.Equal(a.Outcomes.Select(o => (o.Policy, o.Cost, o.Cured, string.Join(' ', o.Path))), b.Outcomes.Select(o => (o.Policy, o.Cost, o.Cured, string.Join(' ', o.Path))));
        Assert.All(a.Outcomes, o => Assert.False(o.Cured && o.Stopped));
        Assert.All(a.Outcomes, o => Assert.True(o.Cost > 0));
    }
}
