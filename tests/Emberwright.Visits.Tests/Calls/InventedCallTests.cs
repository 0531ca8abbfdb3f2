using System.Text.Json;
using Emberwright.Diagnosis;
using Emberwright.Visits.Journal;
using Xunit;

namespace Emberwright.Visits.Tests.Calls;

/// <summary>
/// Ninety-seven calls over all patterns and families of faults, with scant evidence and with rich, wiring, hoses, safety and
/// two faults at once.
/// </summary>
public class InventedCallTests
{
    private const double FalseCertainty = 0.9;

    private static readonly Dictionary<string, JsonElement> Calls =
        JsonDocument.Parse(Repository.Text("tests", "Emberwright.Visits.Tests", "Calls", "calls.json")).RootElement.EnumerateArray()
            .ToDictionary(c => c.GetProperty("id").GetString()!);

    public static TheoryData<string> Ids => [.. Calls.Keys];

    [Theory, MemberData(nameof(Ids))]
    public void The_hidden_fault_is_among_the_first_three_no_other_is_certain_and_its_stop_stands(string id)
    {
        var call = new InventedCall(Calls[id]);
        var findings = Findings.Of(VisitFile.Read(call.File()))!;
        Assert.Empty(findings.Problems);

        var suspects = findings.Beliefs.Suspects;
        var first = suspects.Where(s => s.Fault != Suspect.Nothing || call.Accept.Contains(Suspect.Nothing))
            .OrderByDescending(s => Math.Max(s.Probability, s.AsFound)).Take(3).Select(s => s.Fault).ToList();
        Assert.True(first.Intersect(call.Accept).Any(), $"{id}: {string.Join(", ", first)}");
        Assert.True(call.Second.Count == 0 || first.Intersect(call.Second).Any(), $"{id}, second: {string.Join(", ", first)}");

        var certain = suspects.Where(s => s.Probability >= FalseCertainty).Select(s => s.Fault).Except([.. call.Accept, .. call.Second, .. call.Truth, Suspect.Nothing]);
        Assert.True(!certain.Any(), $"{id} is certain of {string.Join(", ", certain)}");

        if (call.Stop is { } stop) Assert.Contains(findings.Beliefs.Stops, s => s.Rule == stop);
        var next = findings.NextCheck.Alternatives.Append(findings.NextCheck.Best).OfType<RecommendedCheck>().Select(c => c.Check);
        Assert.Empty(next.Intersect(call.MustNot));
    }
}
