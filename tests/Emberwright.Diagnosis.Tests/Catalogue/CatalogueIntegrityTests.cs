using Emberwright.Diagnosis.Checks;
using Emberwright.Stove.Faults;
using Xunit;

namespace Emberwright.Diagnosis.Tests.CatalogueTests;

public class CatalogueIntegrityTests
{
    public static TheoryData<string> Patterns => [.. PatternIds.All];

    [Theory, MemberData(nameof(Patterns))]
    public void Ids_are_unique(string pattern)
    {
        var c = Catalogue.For(pattern);
        Assert.Empty(Twice(c.Faults.Select(f => f.Id)));
        Assert.Empty(Twice(c.Signs.Select(s => s.Id)));
        Assert.Empty(Twice(c.Checks.Select(k => k.Id)));
        Assert.Empty(Twice(c.Actions.Select(a => a.Id)));
    }

    [Fact]
    public void There_are_at_least_75_faults_and_90_checks()
    {
        Assert.True(FaultList.All.Count >= 75, $"{FaultList.All.Count} faults");
        Assert.True(CheckList.All.Count >= 90, $"{CheckList.All.Count} checks");
    }

    [Fact]
    public void Every_symptom_names_an_outcome_of_a_sign_that_its_patterns_have()
    {
        var wrong = new List<string>();
        foreach (var pattern in PatternIds.All)
        {
            var c = Catalogue.For(pattern);
            foreach (var fault in c.Faults)
                foreach (var s in fault.Symptoms)
                    if (Signs.SignList.All.SingleOrDefault(x => x.Id == s.Sign) is not { } sign || sign.Outcomes.All(o => o.Id != s.Outcome))
                        wrong.Add($"{fault.Id}: {s.Sign} = {s.Outcome}");
        }

        Assert.Empty(wrong);
    }

    [Theory, MemberData(nameof(Patterns))]
    public void Stated_probabilities_of_a_sign_leave_room_for_its_other_outcomes(string pattern)
    {
        var c = Catalogue.For(pattern);
        foreach (var fault in c.Faults)
            foreach (var bySign in fault.Symptoms.GroupBy(s => s.Sign))
            {
                Assert.All(bySign, s => Assert.InRange(s.Probability, 0.001, 0.99));
                Assert.Empty(Twice(bySign.Select(s => s.Outcome)));
                Assert.True(bySign.Sum(s => s.Probability) <= 0.995, $"{fault.Id}, {bySign.Key}: stated probabilities sum to {bySign.Sum(s => s.Probability):F3}");
            }
    }

    [Theory, MemberData(nameof(Patterns))]
    public void Usual_probabilities_sum_to_one(string pattern)
    {
        foreach (var sign in Catalogue.For(pattern).Signs)
        {
            Assert.Empty(Twice(sign.Outcomes.Select(o => o.Id)));
            Assert.InRange(sign.Outcomes.Sum(o => o.Usual), 0.999, 1.001);
            if (sign.Margin is { } margin)
            {
                Assert.Equal(sign.Outcomes.Count - 1, margin.Cuts.Count);
                Assert.True(margin.Cuts.Zip(margin.Cuts.Skip(1)).All(p => p.First < p.Second), $"{sign.Id}: cut points must rise");
                Assert.True(margin.Quantity is null != margin.Parameter is null, $"{sign.Id}: one of quantity and parameter");
            }
        }
    }

    [Theory, MemberData(nameof(Patterns))]
    public void Every_fault_changes_something_that_a_check_can_show(string pattern)
    {
        var c = Catalogue.For(pattern);
        var shown = c.Checks.SelectMany(k => k.Signs).ToHashSet();
        var blind = c.Faults.Where(f => f.Shifts.Count == 0 && f.Circuit.Count == 0 && f.Fouling is null
            && !f.Symptoms.Any(s => s.Sign != Complaints.Sign && shown.Contains(s.Sign) && Rises(c, s)));
        Assert.Empty(blind.Select(f => f.Id));
    }

    [Theory, MemberData(nameof(Patterns))]
    public void No_two_faults_are_the_same_change(string pattern)
    {
        var faults = Catalogue.For(pattern).Faults;
        Assert.Empty(Twice(faults.Select(f => string.Join(" | ",
            string.Join(",", f.Shifts.OrderBy(s => s.Parameter)),
            string.Join(",", f.Circuit.OrderBy(x => x.Component)),
            f.Fouling,
            string.Join(",", f.Symptoms.Where(s => s.Sign != Complaints.Sign).OrderBy(s => s.Sign).ThenBy(s => s.Outcome))))));
    }

    [Theory, MemberData(nameof(Patterns))]
    public void Of_any_two_faults_some_check_shows_a_difference(string pattern)
    {
        var c = Catalogue.For(pattern);
        var shown = c.Checks.SelectMany(k => k.Signs).ToHashSet();
        var alike = new List<string>();
        for (var i = 0; i < c.Faults.Count; i++)
            for (var j = 0; j < i; j++)
            {
                var (a, b) = (c.Faults[i], c.Faults[j]);
                if (a.Fouling != b.Fouling || !Same(a.Circuit, b.Circuit) || !a.Shifts.Select(s => s.Parameter).Order().SequenceEqual(b.Shifts.Select(s => s.Parameter).Order())) continue;
                if (!shown.Any(sign => Differ(a, b, sign))) alike.Add($"{a.Id} = {b.Id}");
            }

        Assert.Empty(alike);
    }

    [Theory, MemberData(nameof(Patterns))]
    public void Every_fault_is_cured_by_an_action_and_every_part_is_proved_before_it_is_replaced(string pattern)
    {
        var c = Catalogue.For(pattern);
        foreach (var fault in c.Faults)
        {
            Assert.Contains(c.Actions, a => a.Cures.Contains(fault.Id));
            if (fault.Remedy.Kind == RemedyKind.Replace) Assert.NotEmpty(fault.ProvedBy);
            Assert.True(fault.ProvedBy.Count == 0 || fault.ProvedBy.Any(id => c.Check(id) is not null), $"{fault.Id}: none of {string.Join(", ", fault.ProvedBy)} is a check of {pattern}");
            Assert.All(fault.ProvedBy, id => Assert.Contains(CheckList.All, k => k.Id == id));
        }

        Assert.All(c.Actions.SelectMany(a => a.Cures), id => Assert.Contains(FaultList.All, f => f.Id == id));
    }

    [Theory, MemberData(nameof(Patterns))]
    public void Checks_show_or_read_something_and_live_or_opened_work_carries_a_caution(string pattern)
    {
        var c = Catalogue.For(pattern);
        Assert.All(c.Checks, k =>
        {
            Assert.NotEqual(0, k.Reads.Count + k.Signs.Count);
            Assert.InRange(k.Minutes, 0.5, 120);
            if (k.Needs.HasFlag(CheckNeeds.PanelsOff)) Assert.NotEmpty(k.Cautions);
            Assert.False(k.Needs.HasFlag(CheckNeeds.Powered) && k.Needs.HasFlag(CheckNeeds.Unplugged), $"{k.Id} is both live and unplugged");
            Assert.False(k.Needs.HasFlag(CheckNeeds.Cold) && k.Needs.HasFlag(CheckNeeds.Burning), $"{k.Id} is both cold and burning");
        });
    }

    [Fact]
    public void Causes_are_faults_and_make_their_effect_likelier() => Assert.All(FaultList.All.SelectMany(f => f.CausedBy.Select(c => (f.Id, Cause: c))), x =>
    {
        Assert.Contains(FaultList.All, f => f.Id == x.Cause.Fault);
        Assert.NotEqual(x.Id, x.Cause.Fault);
        Assert.InRange(x.Cause.Factor, 1.5, 50);
    });

    [Fact]
    public void An_unknown_pattern_is_refused_with_those_there_are()
    {
        var e = Assert.Throws<Stove.InputException>(() => Catalogue.For("wood-stove"));
        Assert.Contains("damper-insert", e.Message, StringComparison.Ordinal);
    }

    private static bool Rises(Catalogue c, Symptom s) =>
        c.Sign(s.Sign) is { } sign && Math.Abs(Math.Log(s.Probability / sign.Outcomes[sign.IndexOf(s.Outcome)].Usual)) > 0.7;

    private static bool Differ(Fault a, Fault b, string sign)
    {
        var pa = a.Symptoms.Where(s => s.Sign == sign).ToDictionary(s => s.Outcome, s => s.Probability);
        var pb = b.Symptoms.Where(s => s.Sign == sign).ToDictionary(s => s.Outcome, s => s.Probability);
        return pa.Keys.Union(pb.Keys).Any(o => Math.Abs(pa.GetValueOrDefault(o, 0.05) - pb.GetValueOrDefault(o, 0.05)) > 0.25);
    }

    private static bool Same(IReadOnlyList<CircuitChange> a, IReadOnlyList<CircuitChange> b) => a.Order(By).SequenceEqual(b.Order(By));

    private static readonly Comparer<CircuitChange> By = Comparer<CircuitChange>.Create((x, y) => string.CompareOrdinal(x.Component, y.Component));

    private static IEnumerable<string> Twice(IEnumerable<string> ids) => ids.GroupBy(i => i).Where(g => g.Count() > 1).Select(g => g.Key);
}
