using System.Text.Json;
using Emberwright.Diagnosis;
using Emberwright.Stove.Faults;
using Emberwright.Visits.Journal;
using Xunit;

namespace Emberwright.Visits.Tests;

/// <summary>
/// Calls as they come: stove card, site, past, complaint and evidence in the words people type, each with what was truly
/// wrong. What is expected is trade knowledge written down before the engine saw the calls (common practice, from memory,
/// no source). Index −1 is the complaint alone, 0 the first entry after it.
/// </summary>
public class CaseTests
{
    private const double SensibleNext = 0.85;
    private const double Concluded = 0.5;

    private static readonly Dictionary<string, JsonElement> Expectations =
        JsonDocument.Parse(Repository.Text("tests", "Emberwright.Visits.Tests", "Cases", "expectations.json")).RootElement
            .EnumerateObject().ToDictionary(p => p.Name, p => p.Value);

    private static readonly Dictionary<string, Lazy<IReadOnlyList<Findings>>> Runs =
        Expectations.Keys.ToDictionary(id => id, id => new Lazy<IReadOnlyList<Findings>>(() => Prefixes(id)));

    public static TheoryData<string> Ids => [.. Expectations.Keys.Order(StringComparer.Ordinal)];

    [Theory, MemberData(nameof(Ids))]
    public void A_call_is_read_without_a_problem(string id)
    {
        var last = Runs[id].Value[^1];
        Assert.Empty(last.Problems);
    }

    [Theory, MemberData(nameof(Ids))]
    public void The_true_cause_is_among_the_first_three_suspects_at_the_end(string id)
    {
        var first = Ranked(Runs[id].Value[^1]);
        Assert.True(first.Intersect(Words(id, "acceptTop")).Any(), $"{id}: {string.Join(", ", first)}");
        if (!Expectations[id].TryGetProperty("acceptSecond", out _)) return;
        Assert.True(first.Intersect(Words(id, "acceptSecond")).Any(), $"{id}, second: {string.Join(", ", first)}");
        Assert.True(first.Intersect([.. Words(id, "acceptSecond"), .. Words(id, "acceptTop")]).Count() >= 2, $"{id}, both: {string.Join(", ", first)}");
    }

    [Theory, MemberData(nameof(Ids))]
    public void What_would_be_wrong_is_never_recommended_nor_concluded(string id)
    {
        foreach (var wrong in Expectations[id].GetProperty("mustNot").EnumerateArray())
        {
            var from = wrong.TryGetProperty("from", out var first) ? first.GetInt32() : -1;
            var to = wrong.TryGetProperty("to", out var last) ? last.GetInt32() : Runs[id].Value.Count - 2;
            for (var at = from; at <= to; at++)
            {
                var findings = Runs[id].Value[at + 1];
                if (wrong.TryGetProperty("recommended", out var deed))
                    Assert.False(Recommended(findings).Contains(deed.GetString()!), $"{id} at {at}: recommends {deed}");
                if (wrong.TryGetProperty("concluded", out var fault))
                    Assert.False(findings.Beliefs.Suspects.Any(s => s.Fault == fault.GetString() && s.Probability >= Concluded), $"{id} at {at}: concludes {fault}");
            }
        }
    }

    [Theory, MemberData(nameof(Ids))]
    public void A_safety_stop_stands_as_soon_as_the_evidence_calls_for_it(string id)
    {
        if (!Expectations[id].TryGetProperty("stopBy", out var by)) return;
        var stops = Runs[id].Value[by.GetInt32() + 1].Beliefs.Stops.Select(s => s.Rule).ToList();
        Assert.True(stops.Intersect(Words(id, "stop")).Any(), $"{id}: {string.Join(", ", stops)}");
    }

    [Fact]
    public void A_sensible_next_check_is_offered_in_most_calls()
    {
        var missed = Expectations.Keys.Where(id => !Recommended(Runs[id].Value[Expectations[id].GetProperty("askAfter").GetInt32() + 1]).Intersect(Words(id, "goodNext")).Any()).ToList();
        Assert.True(missed.Count <= (1 - SensibleNext) * Expectations.Count, $"missed: {string.Join(", ", missed)}");
    }

    [Theory, MemberData(nameof(Ids))]
    public void Every_id_expected_is_one_of_the_catalogue(string id)
    {
        var catalogue = Runs[id].Value[^1].Catalogue;
        Assert.All(Words(id, "acceptTop"), f => Assert.Contains(FaultList.All, known => known.Id == f));
        Assert.Contains(Words(id, "goodNext"), c => catalogue.Check(c) is not null || catalogue.Action(c) is not null);
    }

    private static List<Findings> Prefixes(string id)
    {
        var lines = Repository.Text("tests", "Emberwright.Visits.Tests", "Cases", id + ".jsonl").Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var complaint = Array.FindIndex(lines, l => l.Contains("\"kind\": \"complaint\"", StringComparison.Ordinal));
        return [.. Enumerable.Range(complaint + 1, lines.Length - complaint - 1 + 1).Select(n => Findings.Of(VisitFile.Read(string.Join('\n', lines.Take(n)) + "\n"))!)];
    }

    // What was found and cured on the visit counts as it was found.
    private static List<string> Ranked(Findings findings) =>
    [
        .. findings.Beliefs.Suspects.Where(s => s.Fault != Suspect.Nothing).OrderByDescending(s => Math.Max(s.Probability, s.AsFound)).Take(3).Select(s => s.Fault),
    ];

    private static List<string> Recommended(Findings findings) =>
        [.. (findings.NextCheck.Best is { } best ? [best, .. findings.NextCheck.Alternatives] : findings.NextCheck.Alternatives).Select(c => c.Check)];

    private static List<string> Words(string id, string member) => [.. Expectations[id].GetProperty(member).EnumerateArray().Select(w => w.GetString()!)];
}
