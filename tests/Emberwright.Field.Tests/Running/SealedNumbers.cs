using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Emberwright.Reports.FromVisit;
using Emberwright.Visits;
using Emberwright.Visits.Journal;
using Xunit;

namespace Emberwright.Field.Tests.Running;

/// <summary>The figures a browser sealed, beside those this process computes from the same journal.</summary>
internal static class SealedNumbers
{
    private const double Tolerance = 1e-9;

    /// <summary>Holds every word equal and every number within 1e-9, relative above 1 and absolute below.</summary>
    public static int HoldEqualHere(byte[] journal)
    {
        var file = VisitFile.Read(Encoding.UTF8.GetString(journal));
        var sealedThere = file.Journal.Entries.Select(e => e.Body).OfType<SealBody>().Last().Figures;
        var findings = Findings.Of(file)!;
        var here = SealedFigures.Of(findings.Beliefs, findings.Visit);
        Assert.Equal(here.Keys.Order(StringComparer.Ordinal), sealedThere.Keys.Order(StringComparer.Ordinal));
        return here.Sum(f => Compare(f.Key, JsonNode.Parse(f.Value)!.AsArray(), JsonNode.Parse(sealedThere[f.Key])!.AsArray()));
    }

    private static int Compare(string name, JsonArray here, JsonArray there)
    {
        Assert.Equal(here.Count, there.Count);
        var numbers = 0;
        foreach (var (a, b) in here.Zip(there))
        {
            if (a?.GetValueKind() != JsonValueKind.Number)
            {
                Assert.True(JsonNode.DeepEquals(a, b), $"{name}: {a} here, {b} in the browser");
                continue;
            }

            var (x, y) = (a.GetValue<double>(), b!.GetValue<double>());
            Assert.True(Math.Abs(x - y) <= Tolerance * Math.Max(1, Math.Abs(x)), $"{name}: {x:R} here, {y:R} in the browser");
            numbers++;
        }

        return numbers;
    }
}
