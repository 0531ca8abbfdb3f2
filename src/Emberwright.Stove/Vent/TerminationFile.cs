using System.Text.Json;
using Emberwright.Stove.Patterns;
using Emberwright.Stove.Quantities;

namespace Emberwright.Stove.Vent;

/// <summary>
/// Reads a list of termination distances from JSON: those of local code or of a listing as the user wrote them down, each with
/// its source. It replaces the usual list whole; every problem is named with its path.
/// </summary>
public static class TerminationFile
{
    /// <summary>Format name such a file begins with.</summary>
    public const string Format = "emberwright-terminations";

    /// <summary>Reads a list.</summary>
    /// <param name="json">The file's text.</param>
    /// <param name="problems">Receives every problem found.</param>
    /// <returns>The distances, or null when there is any problem.</returns>
    public static IReadOnlyList<TerminationDistance>? Read(string json, out IReadOnlyList<FileProblem> problems)
    {
        try
        {
            using var document = JsonDocument.Parse(json);
            var found = new JsonProblems();
            var at = new JsonPlace(document.RootElement, "$", found);
            var list = at.IsObject() ? Distances(at, found) : [];
            problems = found.Found;
            return problems.Count == 0 ? list : null;
        }
        catch (JsonException e)
        {
            problems = [new FileProblem("$", $"not JSON at line {e.LineNumber + 1}", "Check brackets, commas and quotation marks there.")];
            return null;
        }
    }

    private static List<TerminationDistance> Distances(JsonPlace at, JsonProblems problems)
    {
        if (at.Needed("format") is { Length: > 0 } format && format != Format)
        {
            problems.Report("$.format", $"\"{format}\" is not a list of termination distances", $"It has \"format\": \"{Format}\".");
        }

        var source = at.Needed("source");
        var list = new List<TerminationDistance>();
        foreach (var item in at.Items("distances"))
        {
            _ = item.Needed("distance");
            var metres = item.Quantity("distance", Dimension.Length);
            if (metres is < 0 or > 30)
            {
                problems.Report(item.Path + ".distance", $"{metres:0.##} m is outside 0 to 30 m", "Check the number and its unit.");
            }

            var id = item.Needed("id");
            if (list.Any(d => d.Id == id))
            {
                problems.Report(item.Path + ".id", $"\"{id}\" is used twice", "Give each its own name.");
            }

            list.Add(new TerminationDistance(id, item.Needed("from"), metres ?? 0, new Origin(OriginKind.Entered, item.Text("source") ?? source)));
        }

        if (list.Count == 0)
        {
            problems.Report("$.distances", "the list is empty", "Give at least one distance.");
        }

        return list;
    }
}
