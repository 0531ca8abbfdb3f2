using System.Text.Json;
using Emberwright.Visits.Journal;
using Xunit;

namespace Emberwright.Visits.Tests;

/// <summary>
/// Single moments of a visit, each with what an experienced technician would do next and why (common practice, from
/// memory, no source). They were written down from the trade, not from what the planner says.
/// </summary>
public class SituationTests(ITestOutputHelper output)
{
    private const double Sensible = 0.85;

    private static readonly Dictionary<string, JsonElement> Situations =
        JsonDocument.Parse(Repository.Text("tests", "Emberwright.Visits.Tests", "Cases", "situations.json")).RootElement
            .EnumerateArray().ToDictionary(s => s.GetProperty("name").GetString()!);

    private static readonly Dictionary<string, Lazy<Findings>> Runs = Situations.ToDictionary(s => s.Key, s => new Lazy<Findings>(() => Run(s.Value)));

    public static TheoryData<string> Names => [.. Situations.Keys.Order(StringComparer.Ordinal)];

    [Theory, MemberData(nameof(Names))]
    public void What_a_technician_would_never_do_now_is_not_recommended(string name)
    {
        Assert.Empty(Runs[name].Value.Problems);
        Assert.Empty(Recommended(Runs[name].Value).Intersect(Words(name, "never")));
    }

    [Theory, MemberData(nameof(Names))]
    public void Every_id_expected_is_one_of_the_catalogue(string name)
    {
        var catalogue = Runs[name].Value.Catalogue;
        Assert.Contains(Words(name, "good"), id => catalogue.Check(id) is not null || catalogue.Action(id) is not null || Diagnosis.Safety.SafetyRules.Find(id) is not null);
        Assert.All(Words(name, "never"), id => Assert.True(catalogue.Check(id) is not null || catalogue.Action(id) is not null, id));
        Assert.NotEmpty(Situations[name].GetProperty("why").GetString()!);
    }

    [Fact]
    public void What_a_technician_would_do_next_is_among_the_first_three_nearly_always()
    {
        var missed = Situations.Keys.Where(name => !Recommended(Runs[name].Value).Intersect(Words(name, "good")).Any())
            .Select(name => $"{name}: {string.Join(", ", Recommended(Runs[name].Value))}").ToList();
        output.WriteLine($"{Situations.Count - missed.Count} of {Situations.Count}. {string.Join("; ", missed)}");
        Assert.True(missed.Count <= (1 - Sensible) * Situations.Count, string.Join("; ", missed));
    }

    [Fact]
    public void Nothing_opened_is_recommended_without_its_making_safe_step()
    {
        foreach (var findings in Runs.Values.Select(r => r.Value).Where(f => !f.Situation.MadeSafe && f.Beliefs.Stops.Count == 0))
        {
            if (findings.NextCheck.Best is not { } best) continue;
            Diagnosis.RecommendedCheck[] all = [best, .. findings.NextCheck.Alternatives];
            foreach (var check in all.Where(c => findings.Catalogue.Check(c.Check)?.Needs.HasFlag(Diagnosis.Checks.CheckNeeds.Unplugged) ?? findings.Catalogue.Action(c.Check)?.Cautions.Contains(Stove.Faults.Cautions.MakeSafe) ?? false))
            {
                if (findings.Situation.Concern) Assert.NotEqual(check.Check, best.Check);
                Assert.Equal(Stove.Faults.Cautions.MakeSafe, check.Cautions[0]);
            }
        }
    }

    private static Findings Run(JsonElement situation)
    {
        var lines = new List<string>
        {
            """{"format": "emberwright-visit", "version": 1, "visit": "situation"}""",
            $$"""{"at": "2026-01-14T09:00:00-05:00", "author": "R. Sorrel", "kind": "appliance", "body": {"pattern": "{{situation.GetProperty("pattern").GetString()}}"} }""",
        };
        lines.AddRange(situation.GetProperty("entries").EnumerateArray().Select(e => JsonSerializer.Serialize(e)));
        return Findings.Of(VisitFile.Read(string.Join('\n', lines) + "\n"))!;
    }

    private static List<string> Recommended(Findings findings) =>
        [.. (findings.NextCheck.Best is { } best ? [best, .. findings.NextCheck.Alternatives] : findings.NextCheck.Alternatives).Select(c => c.Check)];

    private static List<string> Words(string name, string member) => [.. Situations[name].GetProperty(member).EnumerateArray().Select(w => w.GetString()!)];
}
